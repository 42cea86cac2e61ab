// Short peaks of the parts, by how long they last, and the start of disks, against what the supply rides out.
import type { Build, Placed } from '../../build/build';
import { allWait, startLasts, startTogether } from '../../figures/drive-start';
import { uniqueMissing } from '../../figures/missing-facts';
import { drawFor, peakTimes, riddenOut } from '../../figures/peaks';
import { sentence } from '../../figures/sentence';
import { ratingOf } from '../../figures/supply-rating';
import { all, atMost, given, lacking, sure } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap, type Reporter } from '../kit';

export default check({
  id: 'excursion-beyond-supply',
  area: 'power',
  grade: 'shortfall',
  what: 'Peaks of processor and cards together stay within what the supply rides out for as long as they last.',
  why:
    'A supply whose rating covers the sustained load still switches off when a card doubles its draw for a ' +
    'millisecond.',
  source: 'ATX Version 3 design guide, doc. 336521, table 3-3',
  limits: [
    'Peaks are held against what a design guide asks of a supply, not against what this one can do.',
    'Processor and cards are left out while disks start: they hardly work then.',
  ],
  examples: [
    {
      faulty: `
parts:
  processor: { power: { sustained: 100 W, peak: 100 W, peak-lasts: 10 s } }
  graphics: { power: { sustained: 250 W, peaks: [{ power: 500 W, lasts: 10 ms }] } }
  supply: { rating: 500 W, standard: ATX 2 }
# ^^^^^^
`,
      instead: 'Choose a supply that states the peaks it rides out, or follows version 3 of the design guide.',
    },
  ],
  test(build, report) {
    const { supply } = build.parts;
    if (!supply) return;
    diskStart(build, supply, report);
    const { times, missingFacts } = peakTimes(build);
    if (times.length === 0 && missingFacts.length === 0) return;
    const held = times.map((lasts) => {
      const drawn = drawFor(build, lasts.lo);
      const ridden = riddenOut(build, supply, lasts.lo);
      return { lasts, drawn, ridden, truth: atMost(drawn, ridden) };
    });
    // All peaks together, against what the supply delivers for as long as anyone likes: then no time matters.
    const together = drawFor(build, 0);
    const ever = atMost(together, ratingOf(build, supply));
    const open = lacking(uniqueMissing([{ missing: missingFacts }, together, riddenOut(build, supply, 0)]));
    report(
      outcome(
        at(supply),
        missingFacts.length > 0 && ever.is === true
          ? ever
          : all(...held.map(({ truth }) => truth), missingFacts.length > 0 ? open : sure(true)),
        {
          broken: () => {
            const { lasts, drawn, ridden } = held.find(({ truth }) => truth.is === false)!;
            return sentence`For ${lasts} the parts may draw ${drawn} together; the supply rides out ${ridden}.`;
          },
          fixes: () => [swap(supply)],
        },
      ),
    );
  },
});

/**
 * All disks start at once unless they wait for their host: for seconds, which no excursion covers that the supply does
 * not state itself.
 */
function diskStart(build: Build, supply: Placed<'supply'>, report: Reporter): void {
  const drawn = startTogether(build);
  if (!drawn) return;
  const lasts = startLasts(build);
  const stated = supply.part.excursions;
  const borne = lasts && stated.value ? riddenOut(build, supply, lasts.hi) : ratingOf(build, supply);
  const [disks, advice] = allWait(build)
    ? (['the disks start by turns', ''] as const)
    : (['all disks start', ' Let the disks start one after another.'] as const);
  report(
    outcome(
      at(supply, undefined, 'start of disks'),
      lasts ? given(atMost(drawn, borne), stated) : atMost(drawn, borne),
      {
        broken: () =>
          lasts
            ? sentence`While ${disks} the parts draw ${drawn} for ${lasts}; the supply delivers ${borne}.${advice}`
            : sentence`While ${disks} the parts draw ${drawn}; the supply delivers ${borne}.${advice}`,
        fixes: () => [swap(supply)],
      },
    ),
  );
}
