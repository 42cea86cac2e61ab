// Two or three measures in one value, `305 x 137 x 61 mm`: in millimetres, with their axes where they are named.
import { toBase, type UnitName } from '../quantity';
import { axesOf } from './label-index';
import { withDots } from './take-quantity';

export interface Measures {
  readonly mm: readonly number[];
  /** One letter a measure, `LWH`; absent where nothing names them. */
  readonly axes?: string;
  /** Whether words stand beside them that were not understood. */
  readonly isUnsure: boolean;
}

const UNIT_OF: Readonly<Record<string, UnitName>> = {
  'in.': 'in',
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  in: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '”': 'in',
  '″': 'in',
  zoll: 'in',
};
const ITEM =
  /^(?:\(?([lwhdbt])\)?=?:? ?)?(\d{1,4}(?:\.\d{1,3})?) ?(mm|cm|inch(?:es)?|in\.?|m|zoll|["”″])? ?\(?([lwhdbt])?\)?$/;
/** `158 (H) mm`. */
const UNIT_BEHIND_AXIS = /^([\d.]{1,8}) ?\(([lwhdbt])\) ?(mm|cm|in)$/;
const HARMLESS = /\b(?:with fans?|mit lüfter|incl\.? fans?|inkl\.? lüfter|approx\.?|atx|form factor|standard)\b/g;

/** `label` is what the label names of axes and unit; undefined where the value holds no such measures. */
export function measuresOf(value: string, label: { axes?: string; unit?: string } = {}): Measures | undefined {
  const text = withDots(value)
    .toLowerCase()
    .replace(/[×*]/g, 'x')
    .replace(/(?<=\d)-(?=(?:in|mm|cm)\b)/g, ' ')
    .replace(/(?<=[\d)a-z"”]) by (?=[\d(a-z])/g, ' x ')
    .replace(/(?:±|\+\/-) ?\d+(?:\.\d+)? ?(?:mm)?/g, '')
    .trim();
  const found = text
    .split(/ ?[;/|•] ?|,(?= )|\s?[([](?=[^()]{4})|(?<!\([lwhdbt])[)\]]/)
    .map((piece) => groupOf(piece.trim(), label))
    .filter((one) => one !== undefined);
  const best = found.find(({ isMetric }) => isMetric) ?? found[0];
  if (!best) return undefined;
  const axes = best.axes ?? axesIn(text) ?? label.axes;
  const isNamed = axes !== undefined && axes.length === best.mm.length;
  return { mm: best.mm, ...(isNamed ? { axes } : {}), isUnsure: hasMore(text) };
}

/** `(L x W x H)` anywhere in the value. */
function axesIn(text: string): string | undefined {
  const found = /(?:^|[ (])([lwhdbt] ?x ?[lwhdbt](?: ?x ?[lwhdbt])?)(?:[) ]|$)/.exec(text)?.[1];
  return found && axesOf(found);
}

function groupOf(
  piece: string,
  label: { unit?: string },
): { mm: number[]; axes?: string; isMetric: boolean } | undefined {
  const bare = piece
    .replace(/^(?![lwhdbt] \d)[a-zäöü ]{1,30}:? (?=\d)/, '')
    .replace(/\(?[lwhdbt] ?x ?[lwhdbt](?: ?x ?[lwhdbt])?\)?$/, '')
    .trim();
  const pieces = /\dx\d| x |\dx \d|\d x|mmx|cmx|x\(?[lwhdbt]/.test(bare)
    ? bare.split(/ ?x ?/)
    : bare.split(/ (?=\(?[lwhdbt]\)?[=:]? ?\d)/);
  const items = pieces.map((one) => ITEM.exec(one.trim().replace(UNIT_BEHIND_AXIS, '$1 $3 ($2)')));
  if (items.length < 2 || items.length > 3 || items.some((one) => !one)) return undefined;
  const last = items.findLast((one) => one![3] !== undefined)?.[3] ?? label.unit?.toLowerCase();
  const unit = last === undefined ? undefined : UNIT_OF[last];
  if (!unit) return undefined;
  const mm = items.map((one) => {
    const own = one![3] === undefined ? unit : UNIT_OF[one![3]]!;
    return Number((Number(one![2]) * toBase(1, own)).toFixed(2));
  });
  const letters = items.map((one) => one![1] ?? one![4]);
  const axes = letters.every(Boolean) ? axesOf(letters.join(' x ')) : undefined;
  return { mm, ...(axes ? { axes } : {}), isMetric: unit !== 'in' };
}

/** Words that are neither axes nor units. */
function hasMore(text: string): boolean {
  return /[a-zäöüß]{3,}/.test(text.replace(HARMLESS, '').replace(/inch(?:es)?|zoll/g, ''));
}

/** The measure on an axis; of a brick’s depth, its length stands for it where no depth is named. */
export const onAxis = ({ mm, axes }: Measures, axis: string): number | undefined =>
  axes === undefined ? undefined : mm[axes.indexOf(axis)];

/** The only one that is left when those that a standard fixes are taken away; undefined where they are not there. */
export function leftOver({ mm }: Measures, fixed: readonly number[], withinMm: number): number | undefined {
  const rest = [...mm];
  for (const edge of fixed) {
    const at = rest.findIndex((one) => Math.abs(one - edge) <= withinMm);
    if (at < 0) return undefined;
    rest.splice(at, 1);
  }
  return rest.length === 1 ? rest[0] : undefined;
}
