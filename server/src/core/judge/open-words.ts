// What is said where a check cannot be decided: by which number it would turn, and which facts no file states.
import type { Outcome } from '../checks/kit';
import { isBounded, type Missing } from '../figures/figure';
import type { Measure } from '../figures/measure';
import { join, sentence, type Sentence } from '../figures/sentence';

/** The check’s own words, or the number and its limit; then the facts by name. */
export function openWords({ truth: { missing, measure }, open }: Outcome): Sentence {
  const known = open?.() ?? (measure && (missing.length === 0 || isNarrow(measure)) ? rangeWords(measure) : undefined);
  if (missing.length === 0) return known ?? sentence`Cannot be decided.`;
  const names = namesOf(missing);
  return known
    ? join(known, sentence`No file states ${names}.`)
    : sentence`Cannot be decided: no file states ${names}.`;
}

/** At most so many facts are named; the rest are counted. */
const named = 3;

/** Each name is a piece by itself, so that every language tells it whole. */
function namesOf(missing: readonly Missing[]): Sentence {
  const names = [...new Set(missing.map((lack) => lack.what))];
  if (names.length <= named)
    return names.slice(1).reduce((said, name) => sentence`${said} or ${name}`, said(names[0]!));
  const listed = names.slice(1, named).reduce((said, name) => sentence`${said}, ${name}`, said(names[0]!));
  return sentence`${listed} and ${String(names.length - named)} more`;
}

const said = (name: string): Sentence => sentence`${name}`;

/** With facts missing, a quantity is worth saying where something else bounds it well on both sides. */
const isNarrow = ({ figure, limit }: Measure): boolean =>
  figure.dimension !== 'count' &&
  [figure, limit].every(({ lo, hi }) => lo > 0 && Number.isFinite(hi)) &&
  (figure.lo !== limit.lo || figure.hi !== limit.hi);

/** A range on both sides of its limit; undefined where nothing bounds the one or the other. */
function rangeWords({ figure, limit, worse, strict }: Measure): Sentence | undefined {
  if (!isBounded(figure) || !isBounded(limit)) return undefined;
  const label = figure.label.charAt(0).toUpperCase() + figure.label.slice(1);
  return worse === 'more'
    ? sentence`${label} may be over the limit: ${figure}, where ${strict ? 'less than ' : ''}${limit} is allowed.`
    : sentence`${label} may fall short: ${figure}, where ${strict ? 'more than ' : ''}${limit} is needed.`;
}
