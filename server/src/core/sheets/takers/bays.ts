// Drive bays of a case: by shape, counted, or each for one of two shapes.
import type { NamedField } from '../../parts/field';
import { BAY_WORDS } from '../../trade/drive-words';
import { wordOf } from '../../trade/vocabulary';
import { trimEnds } from '../clean';
import { doubtful, nothing, plain, together, type Place, type Take, type Taken, type Taker } from '../taken';
import { withDots } from '../take-quantity';
import { countedIn } from './connectors';

/** `2x 3.5" or 2x 2.5"`: bays that each hold one of either; where the numbers differ, what they hold is not plain. */
const BEFORE_OR = /(\d) ?[x×*] ?([23]\.5) ?(?:["”″]|-?in(?:ch)?|-?zoll)$/i;
const BEHIND_OR = /^(\d) ?[x×*] ?([23]\.5) ?(?:["”″]|-?in(?:ch)?\b|-?zoll\b)/i;
function eitherIn(text: string): readonly [text: string, ...(readonly string[])] | undefined {
  const [before = '', behind] = text.split(/ (?:or|oder) /i);
  const [one, other] = [BEFORE_OR.exec(before), BEHIND_OR.exec(behind ?? '')];
  const joint = text.slice(before.length, text.length - (behind ?? '').length);
  return one && other ? [`${one[0]}${joint}${other[0]}`, one[1]!, one[2]!, other[1]!, other[2]!] : undefined;
}

/** `2 x 3.5", 4 x 2.5"`; a line whose label names the shape holds the number alone. */
export const bays: Taker = (value, place) => {
  const [either, one, shape, other, otherShape] = eitherIn(withDots(value)) ?? [];
  if (either === undefined)
    return /\d ?[x×*]? ?\S{1,8} (?:or|oder) \d/i.test(value) ? nothing : countedBays(value, place);
  if (shape === otherShape || /\(|inkl|incl/i.test(value)) return nothing;
  const rest = trimEnds(withDots(value).replace(either, ''), ' ,;+•');
  const fact: Taken = { path: [...place.path, '3.5 or 2.5 in'], value: (shape === '3.5' ? one : other)! };
  const own = one === other ? plain(fact) : doubtful(fact);
  return together([own, rest === '' ? nothing : countedBays(rest, place)]);
};

function countedBays(value: string, { path, label, field }: Place): Take {
  const { names } = field as NamedField;
  const of = names ?? BAY_WORDS;
  const [, one, more] = /^(\d{1,2}) ?x?(?: ?\+ ?(\d{1,2}))?$/.exec(value.trim()) ?? [];
  const alone = one && String(Number(one) + Number(more ?? 0));
  const pieces = alone
    ? [{ count: Number(alone), name: withDots(label) }]
    : countedIn(
        withDots(value)
          .replace(/\s?\([^()]{0,40}\)/g, '')
          .replace(SUMMED, '$1: $2'),
      );
  const read = pieces.map(({ count, name }) => ({
    count,
    kind:
      wordOf(of, name.replace(/\b(?:internal|intern|drive|bays?|schächte|einschübe)\b/gi, ' ').trim()) ??
      wordOf(of, name),
  }));
  if (read.some(({ count, kind }) => count === undefined || kind === undefined)) return nothing;
  const facts = read.map(({ count, kind }): Taken => ({ path: [...path, kind!], value: String(count) }));
  if (!SUMMED_IN.test(value)) return plain(...facts);
  // The line holds several shapes, and one of them a sum: of what places, the line does not say.
  const sums = new Set<string | undefined>([...withDots(value).matchAll(SUMMED)].map(([, name]) => wordOf(of, name!)));
  return plain(...facts.filter(({ path: own }) => !sums.has(own.at(-1))));
}

/** `2.5": 2+1`: places of two kinds, of which one may be that of another shape. */
const SUMMED = /([23]\.5 ?["”″]): ?(\d{1,2}) ?\+ ?\d{1,2}(?= ?(?:[,;/]|$))/g;
const SUMMED_IN = /: ?\d{1,2} ?\+ ?\d/;

export const isBayLabel = (label: string): boolean =>
  /\d/.test(label) &&
  (wordOf(BAY_WORDS, withDots(label)) ??
    wordOf(
      BAY_WORDS,
      withDots(label)
        .replace(/\b(?:internal|intern|drive|bays?|schächte)\b/gi, ' ')
        .trim(),
    )) !== undefined;
