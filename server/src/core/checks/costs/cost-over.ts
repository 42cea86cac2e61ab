// The prices of all parts against the cost promised.
import { costOf, paidFor, promisedCurrency, totalCost } from '../../figures/cost';
import { figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome, swap } from '../kit';

/** For how many of the dearest parts another one is looked for. */
const partsTried = 3;

export default check({
  id: 'cost-over',
  area: 'costs',
  grade: 'shortfall',
  what: 'All parts together cost no more than is promised.',
  why: 'A build is agreed on for a sum; what is over it comes out of someone’s pocket.',
  source: 'common practice',
  limits: ['A price in another currency is never converted.'],
  examples: [
    {
      faulty: `
parts:
  processor: { price: 320 EUR }
  memory: [{ price: 95 EUR, count: 2 }]
expect:
  cost: 500 EUR
#       ^^^^^^^
`,
      mended: `
parts:
  processor: { price: 320 EUR }
  memory: [{ price: 95 EUR, count: 2 }]
expect:
  cost: 510 EUR
`,
    },
  ],
  test(build, report) {
    const promise = build.file.expect.cost;
    const cost = totalCost(build);
    const currency = promisedCurrency(build);
    if (!cost || currency === undefined || paidFor(build).length === 0) return;
    report(
      outcome(atKey(build, promise), atMost(cost, figure(promise, 'cost promised')), {
        broken: () => sentence`The parts cost ${cost}; the build promises ${figure(promise, 'cost promised')}.`,
        *fixes() {
          const dearest = [...paidFor(build)]
            .filter((placed) => placed.used)
            .sort((a, b) => costOf(b, currency).lo - costOf(a, currency).lo);
          for (const placed of dearest.slice(0, partsTried)) yield swap(placed);
          const sum = `${Math.ceil(cost.hi - 1e-9)} ${currency}`;
          if (Number.isFinite(cost.hi)) yield change(promise, sum, `Raise the promise to ${sum}`);
        },
      }),
    );
  },
});
