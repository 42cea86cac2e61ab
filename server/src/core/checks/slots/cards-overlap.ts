// Cards that cover the slot of another card.
import { counted, derive, number, type Figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { all, any, lacking, lessThan, type Truth } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';
import { cardMoves, cardsInSlots, type Card } from './slots-kit';
import type { Seat } from '../../figures/slots';

export default check({
  id: 'cards-overlap',
  area: 'slots',
  grade: 'stop',
  what: 'No card is so thick that it covers the slot in which another card sits.',
  why: 'Slots stand one opening apart; a card of three openings leaves the next two slots dead.',
  source: 'PCI Express Card Electromechanical Specification: slot pitch; common practice',
  examples: [
    {
      faulty: `
parts:
  board: { slots: { PCIE_1: { kind: PCIe, position: 1 }, PCIE_2: { kind: PCIe, position: 3 } } }
  graphics: { openings: 3, slot: PCIE_1 }
#                                ^^^^^^
  cards:
    - { openings: 1, slot: PCIE_2 }
`,
      instead: 'Put the other card below, or choose a thinner one.',
    },
  ],
  test(build, report) {
    const cards = [...cardsInSlots(build)].map(({ card, seat }) => measure(card, seat));
    if (cards.length < 2) return;
    for (const own of cards) {
      const others = cards.filter((other) => other !== own).map((other) => ({ ...other, truth: clear(own, other) }));
      const hit = others.find(({ truth }) => truth.is === false);
      report(
        outcome(at(own.card, own.card.at.slot), all(...others.map(({ truth }) => truth)), {
          broken: () =>
            sentence`${own.card.label} covers the openings ${own.first} to ${own.last}; ${hit!.card.label} in
              ${hit!.card.at.slot} is at ${hit!.first}.`,
          *fixes() {
            yield* cardMoves(build, hit!.card);
            yield* cardMoves(build, own.card);
          },
        }),
      );
    }
  },
});

interface Measured {
  readonly card: Card;
  readonly seat: Seat;
  readonly first: Figure;
  readonly last: Figure;
}

function measure(card: Card, seat: Seat): Measured {
  const first = seat.slot ? counted(seat.slot.position, `position of ${seat.name}`) : number(NaN, '');
  const openings = counted(card.part.openings, `openings of ${card.label}`);
  return {
    card,
    seat,
    first,
    last: derive(
      `last opening of ${card.label}`,
      'count',
      [first, openings],
      'position + openings − 1',
      (at, n) => at + n - 1,
    ),
  };
}

/** A card is clear of one that sits before it, or past its last opening. */
function clear(own: Measured, other: Measured): Truth {
  const missingFacts = [...own.seat.missingFacts, ...other.seat.missingFacts];
  if (missingFacts.length > 0) return lacking(missingFacts);
  return any(lessThan(other.first, own.first), lessThan(own.last, other.first));
}
