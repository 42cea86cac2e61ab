// Heat given to the room under full load against the promise.
import { copyWith, derive, figure } from '../../figures/figure';
import { wallPower } from '../../figures/mains';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome, swap } from '../kit';
import { wattsText } from './power-kit';

export default check({
  id: 'heat-into-room',
  area: 'power',
  grade: 'note',
  what: 'Under full load the machine gives the room no more heat than is promised.',
  why:
    'All that comes from the wall ends as heat in the room; a small room or its air conditioning has to ' +
    'carry it off.',
  source: 'conservation of energy; GNU units for BTU/h',
  examples: [
    {
      faulty: `
parts:
  processor: { power: { sustained: 450 W } }
  supply: { rating: 900 W, efficiency: [{ load: 50 %, percent: 90 % }] }
expect: { heat: 400 W }
#               ^^^^^
`,
      mended: `
parts:
  processor: { power: { sustained: 450 W } }
  supply: { rating: 900 W, efficiency: [{ load: 50 %, percent: 90 % }] }
expect: { heat: 500 W }
`,
    },
  ],
  test(build, report) {
    const promise = build.file.expect.heat;
    const wall = wallPower(build);
    if (!promise.entry || !wall) return;
    const heat = derive(
      'heat given to the room',
      'power',
      [wall],
      'all power from the wall becomes heat',
      (watts) => watts,
      { unit: 'W' },
    );
    const wanted = figure(promise, 'heat that is promised at most');
    report(
      outcome(atKey(build, promise), atMost(heat, wanted), {
        // Pieces of their own, since the figures of one sentence share their unit.
        broken: () =>
          sentence`The room gets ${heat} (${sentence`${copyWith(heat, { unit: 'BTU/h' })}`}) under full load; at most
            ${sentence`${wanted}`} are promised.`,
        fixes: () => [
          swap(build.parts.supply!),
          Number.isFinite(heat.hi)
            ? change(promise, wattsText(heat.hi), `Raise the promise to ${wattsText(heat.hi)}`)
            : undefined,
        ],
      }),
    );
  },
});
