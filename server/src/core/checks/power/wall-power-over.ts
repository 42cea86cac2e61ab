// Power from the wall under full load against the promise.
import { figure } from '../../figures/figure';
import { wallPower } from '../../figures/mains';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome, swap } from '../kit';
import { wattsText } from './power-kit';

export default check({
  id: 'wall-power-over',
  area: 'power',
  grade: 'shortfall',
  what: 'Under full load no more comes from the wall than is promised.',
  why: 'What the parts draw is not what the meter shows: the supply’s own loss comes on top.',
  source:
    '80 PLUS programme, test levels for 115 V internal and 230 V EU internal supplies; measured points of the supply',
  examples: [
    {
      faulty: `
parts:
  processor: { power: { sustained: 450 W } }
  supply: { rating: 900 W, efficiency: [{ load: 50 %, percent: 90 % }] }
expect: { power: { wall: 450 W } }
#                        ^^^^^
`,
      mended: `
parts:
  processor: { power: { sustained: 450 W } }
  supply: { rating: 900 W, efficiency: [{ load: 50 %, percent: 90 % }] }
expect: { power: { wall: 500 W } }
`,
    },
  ],
  test(build, report) {
    const promise = build.file.expect.power.wall;
    const wall = wallPower(build);
    if (!promise.entry || !wall) return;
    const wanted = figure(promise, 'power from the wall that is promised');
    report(
      outcome(atKey(build, promise), atMost(wall, wanted), {
        broken: () =>
          sentence`The machine draws ${wall} from the wall under full load; ${wanted} at most are promised.`,
        fixes: () => [
          swap(build.parts.supply!),
          Number.isFinite(wall.hi)
            ? change(promise, wattsText(wall.hi), `Raise the promise to ${wattsText(wall.hi)}`)
            : undefined,
        ],
      }),
    );
  },
});
