// Several parts written as a map of names, where a list belongs: how the same text reads as a list.
import type { Doc } from '../parts/doc';
import type { Table } from '../parts/field';
import type { Edit } from '../text';
import type { Entry, MapNode } from '../yaml';

/** True when none of the keys is one of the part's and each holds a part of its own: `{ ssd: { use: … } }`. */
export function isMapOfParts(map: MapNode, table: Table): boolean {
  return (
    map.entries.length > 0 &&
    map.entries.every(
      ({ key, value, merged }) =>
        !merged &&
        !Object.hasOwn(table, key) &&
        (value.type === 'map' || (value.type === 'scalar' && value.text.includes('/'))),
    )
  );
}

/** Edits that make the map a list and each key a `name`; undefined where the layout leaves that unsafe. */
export function asListOfParts({ text }: Doc, map: MapNode): readonly Edit[] | undefined {
  if (!map.fixable) return undefined;
  const edits: Edit[] = [];
  for (const entry of map.entries) {
    const own = entry.fixable ? asItem(text, map, entry) : undefined;
    if (!own) return undefined;
    edits.push(...own);
  }
  if (map.style === 'block') return edits;
  const { start, end } = map.span;
  return [swap(start, start + 1, '['), ...edits, swap(end - 1, end, ']')];
}

const swap = (start: number, end: number, text: string): Edit => ({ span: { start, end }, text });

function asItem(text: string, map: MapNode, { key, keySpan, value }: Entry): Edit[] | undefined {
  const dash = map.style === 'block' ? '- ' : '';
  const name = `name: ${text.slice(keySpan.start, keySpan.end)}`;
  if (value.type === 'scalar') {
    const use = text.slice(value.span.start, value.span.end);
    return [swap(keySpan.start, value.span.end, `${dash}{ ${name}, use: ${use} }`)];
  }
  if (value.type !== 'map' || key.includes('\n')) return undefined;
  if (value.style === 'flow')
    return value.entries.length > 0
      ? [swap(keySpan.start, value.span.start + 1, `${dash}{ ${name},`)]
      : [swap(keySpan.start, value.span.end, `${dash}{ ${name} }`)];
  return blockItem(text, keySpan, value, name);
}

/** The lines below a key stay where they are: `- ` and `name` must then stand in the same columns as before. */
function blockItem(text: string, key: Entry['keySpan'], value: MapNode, name: string): Edit[] | undefined {
  const columnOf = (offset: number): number => offset - (text.lastIndexOf('\n', offset - 1) + 1);
  const colon = text.indexOf(':', key.end);
  const isBelow = columnOf(value.span.start) === columnOf(key.start) + 2;
  return isBelow && colon >= 0 ? [swap(key.start, colon + 1, `- ${name}`)] : undefined;
}
