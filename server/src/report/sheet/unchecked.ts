// What nobody has checked yet: facts that no file states, and what the checks of this build do not see.
import type { Missing } from '../../core/figures/figure';
import { worstOf, type Answer } from '../../core/judge/finding';
import { waiting } from '../../core/judge/waiting';
import { areas, type Area, type Check } from '../../core/checks/check';
import { listed } from '../../core/text';
import type { Context } from './context';
import { lines, oneLine, upperFirst, type Block, type Body, type Tick } from './model';

export function uncheckedBlock(context: Context): Block {
  return {
    id: 'unchecked',
    heading: 'Not checked: for a person to look at',
    level: 2,
    bodies: [...missingFacts(context), ...openRanges(context), ...failed(context), ...limitsOf(context)],
  };
}

/** Facts that no file states, with what each would decide, and a blank to write it in. */
function missingFacts({ judgement, build, places }: Context): readonly Body[] {
  const items = waiting(judgement.findings, build).map(({ lack, findings }): Tick => {
    const worst = worstOf(findings);
    const waits = [...new Set(findings.map(({ id }) => id))];
    return {
      text: `${upperFirst(oneLine(lack.what))}.`,
      detail: oneLine(
        printedIn(lack) +
          (worst === 'harm'
            ? `Decides ${listed(waits)}: could bring harm.`
            : `Decides ${listed(waits)}: could bring a ${worst}.`),
      ),
      place: places.key(lack),
      write: 'value',
    };
  });
  return items.length === 0
    ? [lines({ text: 'No answer waits for a fact.' })]
    : [{ type: 'ticks', title: 'No file states', items }];
}

const printedIn = ({ fact }: Missing): string => (fact?.field.printed ? `${fact.field.printed} ` : '');

/** What stays undecided though every fact is there: a range on both sides of its limit. */
function openRanges({ open, places }: Context): readonly Body[] {
  const items = open.map(
    ({ said, subject, id }): Tick => ({ text: oneLine(said.text), detail: id, place: places.ofSubject(subject) }),
  );
  return items.length === 0 ? [] : [{ type: 'ticks', title: 'Left open by a range', items }];
}

/** Checks that the house has switched off or that failed: nothing they would have said is on this sheet. */
function failed({ judgement: { off, failed: broken } }: Context): readonly Body[] {
  const items: Tick[] = [
    ...(off > 0 ? [{ text: `Findings left out since house settings switch their checks off: ${off}.` }] : []),
    ...broken.map(({ id }) => ({ text: `The check ${id} failed by a fault of its own.` })),
  ];
  return items.length === 0 ? [] : [{ type: 'ticks', title: 'Left out', items }];
}

/** What the checks that were asked do not see; it is another only where others were asked. */
function limitsOf({ judgement, kept }: Context): readonly Body[] {
  const asked = judgement.answers.filter(isAsked).map(({ check }) => check);
  return kept.ofText('limits', asked, () => limitsOfChecks(asked));
}

const isAsked = ({ counts: { held, broken, unknown, unasked } }: Answer): boolean =>
  held + broken + unknown + unasked > 0;

/** Area by area. */
function limitsOfChecks(asked: readonly Check[]): readonly Body[] {
  const byArea = new Map<Area, Map<string, string[]>>();
  for (const check of asked)
    for (const limit of check.limits ?? []) {
      const limits = byArea.get(check.area) ?? new Map<string, string[]>();
      byArea.set(check.area, limits.set(limit, [...(limits.get(limit) ?? []), check.id]));
    }
  return [...byArea].map(([area, limits]) => ({
    type: 'ticks',
    title: `Limits of the checks: ${areas[area]}`,
    items: [...limits].map(([limit, ids]) => ({ text: limit.replace(/`([^`]*)`/g, '“$1”'), detail: listed(ids) })),
    small: true,
  }));
}
