// The height of a card's bracket against the case's openings.
import { boxHas } from '../../figures/box-contents';
import type { Placed } from '../../build/build';
import type { Fact } from '../../parts/fact';
import { figure, type Figure } from '../../figures/figure';
import { cardRoom, isUnwalled } from '../../figures/fit';
import { sentence } from '../../figures/sentence';
import { agree, all, any, given, sure, type Truth } from '../../figures/truth';
import { FULL_HEIGHT_MM, LOW_PROFILE_MM } from '../../trade/forms';
import { check } from '../check';
import { at, outcome, swap } from '../kit';
import { cardsOf, type Card } from './slots-kit';

export default check({
  id: 'bracket-wrong',
  area: 'slots',
  grade: 'stop',
  what: 'Each card has, on it or in its box, a bracket of the height of the case’s openings.',
  why: 'A full-height bracket keeps a low case from closing; a low one leaves the card unfastened.',
  source: 'PCI Express Card Electromechanical Specification: full height 111.15 mm, low profile 68.90 mm',
  examples: [
    {
      faulty: `
parts:
  graphics: { bracket: full height, in-the-box: [] }
#           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
  case: { bracket: low profile }
`,
      instead: 'Order the low-profile bracket that its maker sells for the card, or choose a case for full height.',
    },
  ],
  test(build, report) {
    const box = build.parts.case;
    if (!box || isUnwalled(box, box.part.bracket)) return;
    for (const card of cardsOf(build)) {
      const wants = box.part.bracket;
      const own = card.part.bracket;
      const on = bothFull(card, box)
        ? sure(true, own, card.part.height, wants, box.part['card-height'], box.part['cooler-height'])
        : agree(own, `bracket of ${card.label}`, wants, `bracket height of ${box.label}`, (a, b) => a === b);
      // The height that another bracket in the card’s box would have to have.
      const other = wants.value ?? (own.value && heights.find((height) => height !== own.value));
      report(
        outcome(at(card), given(on.is === true ? on : any(on, inBox(card, other)), card.part.edge), {
          broken: () =>
            sentence`${card.label} has a ${own} bracket; the openings of ${box.label} take ${wants}, and no such
              bracket is in its box. Order one, or take another card.`,
          fixes: () => [swap(card), swap(box)],
        }),
      );
    }
  },
});

/**
 * Whether both are of full height: as stated, else the card by being higher than a low one may be, and the case by room
 * for a card of full height beside its openings. Source: heights as above; the case, common practice.
 */
const bothFull = (card: Card, box: Placed<'case'>): boolean =>
  isFull(card.part.bracket, figure(card.part.height, 'height'), LOW_PROFILE_MM) &&
  isFull(box.part.bracket, cardRoom(box), FULL_HEIGHT_MM);

const isFull = (stated: Fact<string>, height: Figure, aboveMm: number): boolean =>
  stated.node ? stated.value === 'full height' : height.lo > aboveMm;

const heights = ['full height', 'low profile'] as const;

/** Whether the card’s box holds a bracket of this height; where none is known, of either. */
function inBox(card: Card, height: string | undefined): Truth {
  if (height === undefined) return all(...heights.map((one) => inBox(card, one)));
  return boxHas(card, height === 'full height' ? 'full-height bracket' : 'low-profile bracket');
}
