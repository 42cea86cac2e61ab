// Accepting a finding: an item under `accept:` whose reason is left for a person to write.
import { weighedValue } from '../core/figures/measure';
import type { Finding } from '../core/judge/finding';
import { Doc } from '../core/parts/doc';
import { applyEdits, editsOverlap, type Edit } from '../core/text';
import { appendItem, insertEntry, insertTopLevel, setValue, type MapNode, type Node, type Value } from '../core/yaml';
import type { Position, View } from './shapes';

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
    ...(finding.measure ? { 'at-most': weighedValue(finding.measure) } : {}),
    because: '',
    ...(finding.grade === 'harm' ? { by: '' } : {}),
  };
  const entry = root.get('accept');
  const again = entry?.value.type === 'list' ? lineOf(entry.value.items, finding) : undefined;
  if (again) return weighedAnew(view, again, finding);
  if (!entry) return insertTopLevel(doc.parsed, 'accept', [line]);
  if (entry.value.type === 'list' && entry.value.items.length > 0) return appendItem(doc.parsed, entry.value, line);
  const isEmpty = entry.value.type === 'list' || (entry.value.type === 'scalar' && entry.value.style === 'empty');
  return isEmpty ? setValue(doc.parsed, entry.value, [line]) : undefined;
}

/** Where the reason is to be written once the edits are made. */
export function reasonAfter({ doc }: View, finding: Finding, edits: readonly Edit[]): Position | undefined {
  const after = new Doc(doc.name, doc.kind, applyEdits(doc.text, edits));
  const list = after.topValue('accept');
  const reason = list?.type === 'list' ? lineOf(list.items, finding)?.get('because')?.value : undefined;
  // Between its two quotes.
  return reason && after.lines.positionAt(Math.min(reason.span.start + 1, reason.span.end));
}

/** The line that accepted the finding before it got worse. */
function lineOf(items: readonly Node[], { id, subject }: Finding): MapNode | undefined {
  const says = (map: MapNode, key: string, text: string): boolean => {
    const value = map.get(key)?.value;
    return value?.type === 'scalar' && value.text === text;
  };
  return items.find(
    (item): item is MapNode => item.type === 'map' && says(item, 'finding', id) && says(item, 'at', subject),
  );
}

/** The amount as it is now; the old reason goes, since it was written for another. */
function weighedAnew({ doc }: View, line: MapNode, { measure }: Finding): readonly Edit[] | undefined {
  const atMost = line.get('at-most');
  const because = line.get('because');
  if (!measure || !because) return undefined;
  const value = weighedValue(measure);
  const edits = atMost ? setValue(doc.parsed, atMost.value, value) : insertEntry(doc.parsed, line, 'at-most', value);
  const reason = setValue(doc.parsed, because.value, '');
  return edits && reason && !editsOverlap([...edits, ...reason]) ? [...edits, ...reason] : undefined;
}
