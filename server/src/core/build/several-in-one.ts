// Several values written as one where a list belongs, the way sheets do: `2242/2260/2280`, `120 / 140 mm`.
import type { Doc } from '../parts/doc';
import { isDeep, type Field, type ListField, type ScalarField } from '../parts/field';
import { readNode, readScalar } from '../parts/scalar';
import { quoted, type Edit } from '../text';
import { insertItem, setValue, type ListNode, type ScalarNode } from '../yaml';

/** What parts values of one line. A comma between digits may be a decimal one. */
const BETWEEN = /[;|/]|,(?=\D)| (?:and|und|or|oder|&|\+) /;
const longest = 200;
/** Names such as `AM5` and `M2_1`: what a free text may be cut into at more than commas. */
const CODE = /^[A-Za-z]{1,5}_?\d{1,4}(?:_\d{1,2})?$/;
const most = 20;

export const SEVERAL = 'Several values stand in one; each is an item of its own.';

type Mend = { readonly title: string; readonly edits: readonly Edit[] };

/** The list that a text by itself stands for: of several values, else of one. */
export function asList(doc: Doc, field: ListField, node: ScalarNode): Mend | undefined {
  const several = severalIn(field.of, node.text);
  const edits = setValue(doc.parsed, node, several?.map((one) => put(field.of, one)) ?? [node.text]);
  return edits && { title: several ? titleOf(several) : 'Make it a list of one', edits };
}

/** An item of a list that holds several values, as so many items; undefined where it plainly holds one. */
export function asItems(doc: Doc, field: Field, list: ListNode, index: number): Mend | undefined {
  const item = list.items[index];
  if (item?.type !== 'scalar' || isDeep(field)) return undefined;
  if (!readNode(doc, field, item).slip && !areCodes(item.text)) return undefined;
  const [first, ...others] = severalIn(field, item.text) ?? [];
  if (first === undefined) return undefined;
  const replaced = setValue(doc.parsed, item, put(field, first));
  const behind = others.map((one) => insertItem(doc.parsed, list, index + 1, put(field, one))?.[0]);
  const [next] = behind;
  if (!replaced || !next || !behind.every((one) => one !== undefined)) return undefined;
  // One change: several at one place have no order.
  const inserted = { ...next, text: behind.map(({ text }) => text).join('') };
  return { title: titleOf([first, ...others]), edits: [...replaced, inserted] };
}

/** Sizes and counts stand bare; a version or a name of digits needs its quotes. */
const put = ({ type }: Field, text: string): string | number =>
  (type === 'form' || type === 'count') && /^[1-9]\d{0,8}$/.test(text) ? Number(text) : text;

const titleOf = (values: readonly string[]): string => `Write ${values.map((one) => quoted(one)).join(', ')}`;

/** Each value whole, with the unit or the letters that it shares; undefined where one of them does not read. */
function severalIn(field: Field, text: string): readonly string[] | undefined {
  if (isDeep(field) || text.length > longest) return undefined;
  const line = text.replace(/\s/g, ' ');
  const apart = line.split(BETWEEN).map((one) => one.trim());
  const pieces = apart.length === 1 && isParted(field, line) ? line.split(' ').filter((one) => one !== '') : apart;
  if (pieces.length < 2 || pieces.length > most || pieces.includes('')) return undefined;
  const whole = field.type === 'quantity' ? withUnit(pieces) : withLetters(pieces);
  if (new Set(whole).size < whole.length || whole.some((one) => readScalar(field, one).slip)) return undefined;
  const isFree = field.type === 'version' || (field.type === 'text' && !field.spellings);
  return isFree && /[/|]/.test(text) && !whole.every((one) => CODE.test(one)) ? undefined : whole;
}

/** Names such as `A1 A2`, which no maker prints as one. */
const areCodes = (text: string): boolean => {
  const words = text.split(/\s+/);
  return words.length > 1 && words.every((one) => CODE.test(one));
};

/** Whether blanks alone part values: names, or words that are none together. */
const isParted = (field: ScalarField, line: string): boolean =>
  field.type !== 'quantity' && (areCodes(line) || readScalar(field, line).slip !== undefined);

/** `120 / 140 mm`: the unit stands once, behind the last. */
function withUnit(pieces: readonly string[]): readonly string[] {
  const last = pieces.at(-1)!;
  const unit = last.slice(/^[\d.,\s]*/.exec(last)![0].length);
  return pieces.map((one) => (unit !== '' && /^[\d.,]+$/.test(one) ? `${one} ${unit}` : one));
}

/** `LGA1700/1851`: the letters stand once, before the first. */
function withLetters(pieces: readonly string[]): readonly string[] {
  const letters = /^[A-Za-z]+(?=\d+$)/.exec(pieces[0]!)?.[0];
  return pieces.map((one) => (letters !== undefined && /^\d+$/.test(one) ? letters + one : one));
}
