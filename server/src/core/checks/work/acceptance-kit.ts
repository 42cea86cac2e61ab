// Places in a build’s acceptance and hand-over.
import type { Build } from '../../build/build';
import type { GroupMeta } from '../../parts/fact';
import { atPath, type SourceLocation } from '../kit';

/** The key of a group; where it is absent, the nearest above it that is stated. `path` says what of it is meant. */
export function atGroup(build: Build, group: { readonly $: GroupMeta }, path = group.$.path): SourceLocation {
  return { ...atPath(build, group.$.path), path };
}
