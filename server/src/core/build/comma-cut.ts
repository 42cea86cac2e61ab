// Values that YAML ends at a comma within braces: `{ mass: 1,2 kg }` has the value `1` and a key `2 kg`.
import type { Doc } from '../parts/doc';
import { isDeep, type Field, type ListField, type ScalarField } from '../parts/field';
import { readScalar } from '../parts/scalar';
import { quoted } from '../text';
import type { Entry, MapNode } from '../yaml';
import type { TextProblem } from './text-problem';

/** The field that a key of the map has, and whether a key is one that the map may have. */
export type CutBy = readonly [fieldOf: (key: string) => Field | undefined, isKey: (key: string) => unknown];

type CutValue = Pick<TextProblem, 'code' | 'message' | 'span' | 'mends'>;

/** Of each entry that is cut the value as it was meant; of those that hold its rest, `rest`. */
export function cutAtComma(
  doc: Doc,
  map: MapNode,
  ...[fieldOf, isKey]: CutBy
): ReadonlyMap<Entry, CutValue | 'rest'> | undefined {
  if (map.style !== 'flow' || !map.entries.some(isBare)) return undefined;
  const found = new Map<Entry, CutValue | 'rest'>();
  map.entries.forEach((entry, i) => {
    const field = fieldOf(entry.key);
    const isCut = field && (!isDeep(field) || isPlainList(field));
    if (found.has(entry) || !isCut || entry.value.type !== 'scalar' || entry.value.style !== 'plain') return;
    const rest: Entry[] = [];
    for (
      let last = entry, next = map.entries[i + 1];
      next && !names(isKey, next) && continues(doc, field, last, next);
    ) {
      rest.push(next);
      [last, next] = [next, map.entries[i + 1 + rest.length]];
    }
    const last = rest.at(-1);
    if (!last) return;
    found.set(entry, wholeValue(doc, field, { start: entry.value.span.start, end: last.keySpan.end }));
    for (const one of rest) found.set(one, 'rest');
  });
  return found;
}

/** Whether it is a key of the map, or begins with one whose colon is missing: `slot M2_1`. */
const names = (isKey: CutBy[1], { key }: Entry): boolean => !!isKey(key) || !!isKey(key.replace(/ .*/, ''));

/** A key by itself: what stands behind a comma where no colon follows. */
const isBare = ({ value }: Entry): boolean => value.type === 'scalar' && value.style === 'empty';

/** A list of values that each stand on one line. */
const isPlainList = (field: Field): field is ListField => field.type === 'list' && !isDeep(field.of);

/**
 * Whether a key is the rest of what stands before it: digits behind digits, words behind words of a free text, or an
 * item behind an item of a list.
 */
function continues({ text }: Doc, field: Field, last: Entry, next: Entry): boolean {
  if (!isBare(next) || next.merged) return false;
  const end = isBare(last) ? last.keySpan.end : last.value.span.end;
  const between = text.slice(end, next.keySpan.start);
  if (text.slice(next.keySpan.start, next.keySpan.end) !== next.key) return false;
  if (isPlainList(field)) return between.trim() === ',';
  if (between === ',' && /\d/.test(text[end - 1] ?? '') && /^\d/.test(next.key)) return true;
  return field.type === 'text' && !field.spellings && between === ', ' && next.key.includes(' ');
}

function wholeValue(doc: Doc, field: ScalarField | ListField, span: CutValue['span']): CutValue {
  const whole = doc.text.slice(span.start, span.end);
  if (field.type === 'list') {
    const mends = [{ title: 'Put it in brackets', edits: [{ span, text: `[${whole}]` }] }];
    const message = `Within braces a comma ends a value; put ${quoted(whole)} in brackets.`;
    return { code: 'wrong-kind-of-value', message, span, mends };
  }
  const inQuotes = JSON.stringify(whole);
  if (field.type === 'text') {
    const mends = [{ title: 'Put it in quotes', edits: [{ span, text: inQuotes }] }];
    const message = `Within braces a comma ends a value; put ${quoted(whole)} in quotes.`;
    return { code: 'wrong-kind-of-value', message, span, mends };
  }
  // In quotes it is one value; where that is in doubt in itself, what may be meant is written instead.
  const { slip } = readScalar(field, whole);
  const texts = slip ? slip.instead : [inQuotes];
  const rather = texts.map((one) => quoted(one)).join(' or ');
  const message = `Within braces a comma ends a value; write ${rather} for ${quoted(whole)}.`;
  const mends = texts.map((text) => ({ title: `Write ${quoted(text)}`, edits: [{ span, text }] }));
  return { code: 'number-odd', message: slip && texts.length === 0 ? slip.message : message, span, mends };
}
