// Places in a build’s acceptance and hand-over.
import type { Build } from '../../build/build';
import type { GroupMeta } from '../../parts/fact';
import { atBuild, type Place } from '../kit';

/** The key of a group; where it is absent, the build’s name. `path` says what of it is meant. */
export function atGroup(build: Build, group: { readonly $: GroupMeta }, path = group.$.path): Place {
  const { entry } = group.$;
  return { ...(entry ? { doc: build.doc, span: entry.keySpan } : atBuild(build)), path };
}
