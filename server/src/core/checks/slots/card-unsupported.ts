// A heavy or long card that hangs in its slot without support.
import { copyWith, derive, figure, known, type Figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { any, atMost, fits, given } from '../../figures/truth';
import type { Build } from '../../build/build';
import { massHangingAtMostG } from '../../trade/lifting';
import { check } from '../check';
import { at, outcome, putOn } from '../kit';
import { cardsOf, type Card } from './slots-kit';

export default check({
  id: 'card-unsupported',
  area: 'slots',
  grade: 'note',
  what: 'A card as heavy and long as the house sets has a support under its far end.',
  why: 'A heavy card sags: its edge and the slot’s joints carry the bend, and years later the link drops out.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  graphics: { mass: 1900 g, length: 336 mm, support: false }
#                                                    ^^^^^
`,
      mended: `
parts:
  graphics: { mass: 1900 g, length: 336 mm, support: true }
`,
    },
  ],
  test(build, report) {
    for (const card of cardsOf(build)) {
      if (card.at.riser.entry) continue;
      const mass = figure(card.part.mass, `mass of ${card.label}`);
      const limit = hanging(build, card);
      report(
        outcome(
          at(card, card.at.support),
          given(
            any(
              fits(card.at.support, `support of ${card.label}`, (is) => is),
              atMost(mass, limit),
            ),
            card.part.edge,
          ),
          {
            broken: () =>
              sentence`${card.label} weighs ${mass} and hangs without support; at
                ${figure(card.part.length, 'length')} of length the house lets ${limit} hang. Put a support under its
                end.`,
            fixes: () => [putOn(card, 'support', true, 'Put a support under its end')],
          },
        ),
      );
    }
  },
});

/** The mass that may hang at this card’s length. */
function hanging(build: Build, card: Card): Figure {
  const margin = build.house.margin('hanging-card');
  const at300 =
    'fact' in margin
      ? figure(margin.fact, 'mass of a hanging card')
      : known(margin.standard, 'mass', 'mass of a hanging card', { unit: 'g', source: 'default of the house' });
  const length = figure(card.part.length, `length of ${card.label}`);
  return derive(
    `mass that may hang at the length of ${card.label}`,
    'mass',
    [at300, copyWith(length, { lo: Math.max(0, length.lo) })],
    'mass × 300 mm ÷ length',
    (massG, lengthMm) => massHangingAtMostG(massG, lengthMm),
    { unit: 'g' },
  );
}
