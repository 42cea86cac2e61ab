// Places in a build’s acceptance and hand-over.
import type { Build } from '../../build/build';
import type { GroupMeta } from '../../parts/fact';
import { atPath, type Target } from '../kit';

/** The key of a group; where it is absent, the nearest above it that is stated. `subject` says what of it is meant. */
export function atGroup(build: Build, group: { readonly $: GroupMeta }, subject = group.$.path): Target {
  return atPath(build, group.$.path, subject);
}
