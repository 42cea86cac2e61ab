// Accepting a finding: an item under `accept:` whose reason is left for a person to write.
import type { Finding } from '../core/judge/finding';
import type { Edit } from '../core/text';
import { appendItem, insertTopLevel, setValue, type Value } from '../core/yaml';
import type { View } from './shapes';

/**
 * The edits that add the item; undefined where the file is no build, or where they would not be safe. The reason, and
 * for harm the name of who accepts it, stay empty: until they are written the finding is not accepted.
 */
export function acceptEdits(view: View, finding: Finding): readonly Edit[] | undefined {
  const { doc, build } = view;
  const root = doc.parsed.root;
  if (!build || finding.check.unread || finding.subject === '' || root?.type !== 'map') return undefined;
  const line: Value = {
    finding: finding.id,
    at: finding.subject,
    because: '',
    ...(finding.grade === 'harm' ? { by: '' } : {}),
  };
  const entry = root.get('accept');
  if (!entry) return insertTopLevel(doc.parsed, 'accept', [line]);
  if (entry.value.type === 'list' && entry.value.items.length > 0) return appendItem(doc.parsed, entry.value, line);
  const isEmpty = entry.value.type === 'list' || (entry.value.type === 'scalar' && entry.value.style === 'empty');
  return isEmpty ? setValue(doc.parsed, entry.value, [line]) : undefined;
}
