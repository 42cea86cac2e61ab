// The part of the supply’s rating that the house wants to keep free.
import { derive } from '../../figures/figure';
import { marginFigure } from '../../figures/margins';
import { sustainedDraw } from '../../figures/power';
import { sentence } from '../../figures/sentence';
import { ratingOf } from '../../figures/supply-rating';
import { atMost, lessThan } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';
import { limitProcessor } from './power-kit';

export default check({
  id: 'supply-headroom-thin',
  area: 'power',
  grade: 'shortfall',
  what: 'Under sustained load the house’s share of the supply’s rating stays free.',
  why: 'A supply near its limit runs hot and loud, ages fast, and leaves no room for the next card.',
  source: 'common practice; the share is the house’s own',
  remarks: ['It is not asked where `supply-overloaded` says it already.'],
  examples: [
    {
      faulty: `
parts:
  processor: { power: { sustained: 125 W } }
  graphics: { power: { sustained: 320 W } }
  supply: { rating: 550 W }
# ^^^^^^
`,
      mended: `
parts:
  processor: { power: { sustained: 125 W }, power-limit: 120 W }
  graphics: { power: { sustained: 320 W } }
  supply: { rating: 550 W }
`,
    },
  ],
  test(build, report) {
    const { supply } = build.parts;
    if (!supply) return;
    const rating = ratingOf(build, supply);
    const free = marginFigure(build, 'supply-headroom', 'headroom of the house');
    const limit = derive(
      'rating less headroom',
      'power',
      [rating, free],
      'rating × (100 % − headroom)',
      (watts, percent) => (watts * (100 - percent)) / 100,
      { unit: 'W' },
    );
    const drawn = sustainedDraw(build);
    // A sum beyond the rating itself is the finding of another check; one that only may be is thin at the least.
    if (lessThan(rating, drawn).is === true) return;
    report(
      outcome(at(supply), atMost(drawn, limit), {
        broken: () =>
          sentence`The parts draw ${drawn}; the supply of ${rating} is to carry ${limit}, so that ${free} stay free.`,
        fixes: () => [swap(supply), limitProcessor(build, drawn, limit)],
      }),
    );
  },
});
