// Prices in another currency than the cost that is promised.
import { paidFor, promisedCurrency } from '../../figures/cost';
import { sentence } from '../../figures/sentence';
import { all, fits } from '../../figures/truth';
import { check } from '../check';
import { atKey, outcome } from '../kit';

export default check({
  id: 'currency-mixed',
  area: 'costs',
  grade: 'note',
  what: 'All prices are in the currency of the cost that is promised.',
  why: 'Prices are never converted: no rate is read from anywhere, so the sum stays open.',
  source: 'ISO 4217: currency codes; the format’s own rule',
  limits: ['It is judged only where a cost is promised.'],
  examples: [
    {
      faulty: `
parts:
  processor: { price: 320 EUR }
  case: { price: 110 USD }
expect:
  cost: 500 EUR
#       ^^^^^^^
`,
      instead: 'Read the price in the currency of the promise.',
    },
  ],
  test(build, report) {
    const promise = build.file.expect.cost;
    const currency = promisedCurrency(build);
    const parts = paidFor(build);
    if (currency === undefined || parts.length === 0) return;
    const odd = parts.filter(({ part: { price } }) => price.value !== undefined && price.value.currency !== currency);
    const truths = parts.map(({ label, part }) =>
      fits(part.price, `price of ${label}`, (price) => price.currency === currency),
    );
    report(
      outcome(atKey(build, promise), all(...truths), {
        broken: () =>
          sentence`${odd[0]!.label} is priced at ${odd[0]!.part.price}; the cost is promised as ${promise}. Prices are
            not converted: state both in one currency.`,
      }),
    );
  },
});
