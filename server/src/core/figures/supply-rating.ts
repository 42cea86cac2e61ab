// Figures of what a supply delivers for as long as asked, at the mains it stands on.
import type { Build, Placed } from '../build/build';
import { badgeMains } from '../trade/efficiency';
import { lowMainsOutputW, MARKED_VOLTAGE_TOLERANCE_PERCENT } from '../trade/mains';
import { copyWith, counted, decidedBy, derive, figure, least, most, times, type Figure } from './figure';
import { allowed } from './guard';
import { uniqueMissing } from './missing-facts';

type Supply = Placed<'supply'>;

const share = MARKED_VOLTAGE_TOLERANCE_PERCENT / 100;

/**
 * The supply’s rating: that of the mains it stands on where its label states several, and no more than the modules
 * that are fitted deliver.
 */
export function ratingOf(build: Build, supply: Supply): Figure {
  const rating = labelRating(build, supply);
  const { modules } = supply.at;
  const one = supply.part['module-rating'];
  if (!modules.entry || !one.value) return rating;
  const fitted = times(figure(one, `rating of a module of ${supply.label}`), counted(modules, 'modules fitted'));
  return least(rating.label, [rating, fitted]);
}

function labelRating(build: Build, supply: Supply): Figure {
  const label = `rating of ${supply.label}`;
  const { rating, ratings } = supply.part;
  if (!ratings.value || ratings.value.length === 0) return figure(rating, label);
  const rows = ratings.value.map((row) => ({
    lowest: figure(row.lowest, `lowest mains voltage of a rating of ${supply.label}`),
    highest: figure(row.highest, `highest mains voltage of a rating of ${supply.label}`),
    rating: figure(row.rating, label),
    fact: row.lowest,
  }));
  const { voltage } = build.file.place.mains;
  const mains = figure(voltage, 'mains voltage');
  const fits = rows.filter(
    ({ lowest, highest }) => !(mains.hi < lowest.lo * (1 - share)) && !(mains.lo > highest.hi * (1 + share)),
  );
  if (fits.length === 1) return decidedBy(fits[0]!.rating, voltage, fits[0]!.fact);
  const all = (fits.length > 0 ? fits : rows).map((row) => row.rating);
  const low = least(label, all);
  const high = most(label, all);
  return copyWith(low, { hi: high.hi, missing: uniqueMissing([mains, low, high]), inputs: [], work: undefined });
}

/**
 * What a supply on one plug of the lower mains voltage can deliver for hours, where nothing says that its rating holds
 * there and the rating is larger; undefined where that is no question.
 */
export function lowMainsLimit(build: Build, supply: Supply): Figure | undefined {
  const { ratings, rating, inlet } = supply.part;
  const { voltage } = build.file.place.mains;
  const mains = figure(voltage, 'mains voltage');
  if (ratings.value || !rating.value || mains.missing.length > 0 || !(mains.lo > 0)) return undefined;
  if (badgeMains(mains.lo) !== '115 V' || badgeMains(mains.hi) !== '115 V') return undefined;
  // A supply made for the lower voltage alone is rated there.
  if (!inlet.highest.value || badgeMains(Math.max(0, inlet.highest.value.lo)) === '115 V') return undefined;
  const limit = derive(
    'what one plug of this mains feeds',
    'power',
    [mains],
    'voltage × 12 A × 90 % efficiency',
    allowed((volts) => lowMainsOutputW(volts)),
    { unit: 'W', source: 'common practice: 12 A for hours from a plug made for 15 A' },
  );
  return rating.value.lo > limit.hi ? limit : undefined;
}
