// What checks of what is bought share: one thing more on a list of parts.
import type { Build } from '../../build/build';
import type { RoleName } from '../../manifest/places';
import { appendItem, type Value } from '../../yaml';
import { put, type TextFix } from '../kit';

/** Adds an item to a role that holds several; undefined where that is not safe. */
export function addToList(
  build: Build,
  role: RoleName,
  item: { readonly [key: string]: Value },
  title: string,
): TextFix | undefined {
  const { doc } = build;
  const parts = doc.topValue('parts');
  const list = parts?.type === 'map' ? parts.get(role)?.value : undefined;
  if (list?.type !== 'list') return list ? undefined : put(doc, ['parts', role], [item], title);
  const edits = appendItem(doc.parsed, list, item);
  return edits && { type: 'text', title, doc, edits };
}
