// Figures of cost: what the parts cost in one currency, and how old their prices are.
import type { Build, Placed } from '../build/build';
import { currencyCodes, type CurrencyCode } from '../quantity';
import { copyWith, figure, missing, times, total, unknown, type Figure } from './figure';
import { ageOf } from './dates';
import { memo } from './memo';
import { howMany } from './power';

/** The parts that are paid for: all but the sticks, which are on hand. */
export const paidFor = memo((build: Build): readonly Placed[] =>
  build.all().filter((placed) => placed.role !== 'sticks'),
);

/** The currency of the cost promised; undefined where no cost is promised. */
export function promisedCurrency(build: Build): CurrencyCode | undefined {
  const written = build.file.expect.cost.value?.currency;
  return currencyCodes.find((code) => code === written);
}

/** What all of one entry cost; a price in another currency is not converted, and so not known in this one. */
export function costOf(placed: Placed, currency: CurrencyCode): Figure {
  const { price } = placed.part;
  const label = `price of ${placed.label}`;
  const own = price.value?.currency;
  const other = own !== undefined && own !== currency;
  const one = other
    ? copyWith(unknown('money', label, [missing(price, `${label} in ${currency}`)]), { unit: currency, currency })
    : figure(price, label);
  return times(one, howMany(placed));
}

/** How long ago each price was read. */
export const priceAges = memo((build: Build): readonly { readonly placed: Placed; readonly age: Figure }[] =>
  paidFor(build).map((placed) => ({
    placed,
    age: ageOf(build, placed.part['price-read'], `day on which the price of ${placed.label} was read`),
  })),
);

/** What all parts cost; a price that nobody states can only add to it. */
export const totalCost = memo((build: Build): Figure | undefined => {
  const currency = promisedCurrency(build);
  return currency && costIn(build, currency);
});

function costIn(build: Build, currency: CurrencyCode): Figure {
  return total(
    'cost of all parts',
    'money',
    paidFor(build).map((placed) => costOf(placed, currency)),
    { unit: currency, currency },
  );
}

/** The same in the currency in which all prices are stated, where no cost is promised; undefined where none is. */
export const statedCost = memo((build: Build): Figure | undefined => {
  const stated = new Set(paidFor(build).flatMap(({ part }) => part.price.value?.currency ?? []));
  const [currency] = currencyCodes.filter((code) => stated.has(code));
  return totalCost(build) ?? (stated.size === 1 && currency ? costIn(build, currency) : undefined);
});
