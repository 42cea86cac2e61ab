// Amounts and torques in prose that stand without a unit.
import type { Span } from '../text';

/** What makes a number in its clause an amount or a torque. English only. */
const speaksOfOne = /\b(?:torques?|tighten(?:ed|ing)?|dose|amount|squeeze|apply|dispense|spread|fill)\b/i;

/** What stands right before such a number. */
const leadsTo = /(?:\b(?:to|of|with|about|is|at|exactly|torque|amount|dose|apply|squeeze|dispense)|[:=≈~])$/i;

/** What may stand behind a number that has no unit: the end of a clause, or a word that is none and counts nothing. */
const noUnit =
  /^[ \t]*(?:$|[;!?)\]*_]|[.,](?!\d)|(?:in|and|then|each|with|until|before|after|crosswise|evenly|on|at|of|for|or)\b)/i;

const furthest = 80;

/** The numbers of an amount in some prose that end without a unit. */
export function bareAmounts(text: string, { start, end }: Span): { readonly text: string; readonly span: Span }[] {
  const prose = text.slice(start, end);
  return [...prose.matchAll(/\d+(?:[.,]\d+)?/g)].flatMap(({ 0: number, index }) => {
    const before = prose.slice(Math.max(0, index - furthest), index);
    const clause = before
      .split(/[.;!?\n]/)
      .at(-1)!
      .trimEnd();
    const after = prose.slice(index + number.length, index + number.length + 12).split(/[\r\n]/, 1)[0]!;
    if (!speaksOfOne.test(clause) || !leadsTo.test(clause) || !noUnit.test(after)) return [];
    return [{ text: number, span: { start: start + index, end: start + index + number.length } }];
  });
}
