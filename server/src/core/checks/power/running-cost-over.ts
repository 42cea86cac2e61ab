// What a year’s power costs against the promise.
import { figure, missing } from '../../figures/figure';
import { wallPower, yearlyCost } from '../../figures/mains';
import { sentence } from '../../figures/sentence';
import { atMost, lacking } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome, swap } from '../kit';

export default check({
  id: 'running-cost-over',
  area: 'power',
  grade: 'shortfall',
  what: 'A year’s power costs no more than is promised.',
  why: 'A machine that works all day pays its price again in power within a few years.',
  source: 'power × hours × price; a year of 365 days',
  examples: [
    {
      faulty: `
place:
  mains: { price-per-kwh: 0.40 EUR, hours-per-day: 10 h }
parts:
  processor: { power: { sustained: 450 W } }
  supply: { rating: 900 W, efficiency: [{ load: 50 %, percent: 90 % }] }
expect: { running-cost: 700 EUR }
#                       ^^^^^^^
`,
      mended: `
place:
  mains: { price-per-kwh: 0.40 EUR, hours-per-day: 10 h }
parts:
  processor: { power: { sustained: 450 W } }
  supply: { rating: 900 W, efficiency: [{ load: 50 %, percent: 90 % }] }
expect: { running-cost: 730 EUR }
`,
    },
  ],
  test(build, report) {
    const promise = build.file.expect['running-cost'];
    const wall = wallPower(build);
    if (!promise.entry || !wall) return;
    const cost = yearlyCost(build, wall);
    const wanted = figure(promise, 'running cost that is promised');
    const price = build.file.place.mains['price-per-kwh'];
    const comparable = !cost.currency || !wanted.currency || cost.currency === wanted.currency;
    report(
      outcome(
        atKey(build, promise),
        comparable
          ? atMost(cost, wanted)
          : lacking([missing(price, `price of a kilowatt-hour in ${wanted.currency!}`)], promise, price),
        {
          broken: () => sentence`A year’s power costs ${cost}; ${wanted} at most are promised.`,
          fixes: () => [
            swap(build.parts.supply!),
            Number.isFinite(cost.hi) && cost.currency
              ? change(
                  promise,
                  `${Math.ceil(cost.hi - 1e-9)} ${cost.currency}`,
                  `Raise the promise to ${Math.ceil(cost.hi - 1e-9)} ${cost.currency}`,
                )
              : undefined,
          ],
        },
      ),
    );
  },
});
