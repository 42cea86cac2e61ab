// How long ago the prices were read on which a promised cost rests.
import { priceAges } from '../../figures/cost';
import { isRecent } from '../../figures/dates';
import { marginFigure } from '../../figures/margins';
import { sentence } from '../../figures/sentence';
import { check } from '../check';
import { at, outcome } from '../kit';

export default check({
  id: 'price-old',
  area: 'costs',
  grade: 'note',
  what: 'Where a cost is promised, each price was read within the time that the house allows.',
  why: 'Prices of memory and drives move within weeks; an old price makes a sum for which nobody can buy.',
  source: 'common practice; the house settings say after how long',
  limits: ['It is judged only where a cost is promised.'],
  examples: [
    {
      faulty: `
parts:
  processor: { price: 320 EUR, price-read: 2026-08-20 }
#                                          ^^^^^^^^^^
expect:
  cost: 500 EUR
`,
      instead: 'Read the price again and note the day.',
    },
  ],
  test(build, report) {
    if (!build.file.expect.cost.node) return;
    const limit = marginFigure(build, 'price-age', 'age at which prices are read again');
    for (const { placed, age } of priceAges(build)) {
      const read = placed.part['price-read'];
      report(
        outcome(at(placed, read), isRecent(age, limit), {
          broken: () =>
            age.hi < 0
              ? sentence`The price of ${placed.label} is dated ${read}, a day to come; note the day on which it was
                read.`
              : sentence`The price of ${placed.label} was read ${age} ago; this house reads prices again after
                ${limit}.`,
        }),
      );
    }
  },
});
