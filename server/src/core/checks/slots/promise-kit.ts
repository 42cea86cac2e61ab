// Fixes inside one item of a list of promises.
import type { Build } from '../../build/build';
import type { GroupMeta } from '../../parts/fact';
import { insertEntry, setValue, type Value } from '../../yaml';
import type { TextFix } from '../kit';

/** Sets a key of an item, or adds it; undefined where that is not safe. */
export function putIn(
  build: Build,
  item: { readonly $: GroupMeta },
  key: string,
  value: Value,
  title: string,
): TextFix | undefined {
  const { map } = item.$;
  const entry = map?.get(key);
  const edits =
    map && (entry ? setValue(build.doc.parsed, entry.value, value) : insertEntry(build.doc.parsed, map, key, value));
  return edits && { type: 'text', title, doc: build.doc, edits };
}
