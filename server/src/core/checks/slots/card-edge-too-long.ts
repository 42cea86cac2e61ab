// The length of a card's edge against the slot's.
import { sentence } from '../../figures/sentence';
import { agree, any, fits, given, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';
import { cardMoves, cardsInSlots } from './slots-kit';

const contacts = (length: string): number => Number(length.slice(1));

export default check({
  id: 'card-edge-too-long',
  area: 'slots',
  grade: 'stop',
  what: 'Each card’s edge is no longer than its slot, or the slot is open at its end.',
  why: 'A long edge does not go into a short slot that is closed; filing the slot open ruins the board.',
  source: 'PCI Express Card Electromechanical Specification: x1, x4, x8 and x16 edges',
  examples: [
    {
      faulty: `
parts:
  board: { slots: { PCIE_1: { kind: PCIe, length: x16 }, PCIE_2: { kind: PCIe, length: x1, open-ended: false } } }
  cards:
    - { model: Capture Two, edge: x4, slot: PCIE_2 }
#                                           ^^^^^^
`,
      instead: 'Put the card into a slot that is as long as its edge.',
    },
  ],
  test(build, report) {
    for (const {
      card,
      seat: { name, slot, missingFacts },
    } of cardsInSlots(build)) {
      const { edge } = card.part;
      const short = (other: NonNullable<typeof slot>) =>
        any(
          agree(
            edge,
            `edge of ${card.label}`,
            other.length,
            `length of ${name}`,
            (own, room) => contacts(own) <= contacts(room),
          ),
          fits(other['open-ended'], `open end of ${name}`, (open) => open),
        );
      report(
        outcome(at(card, card.at.slot), slot ? given(short(slot), slot.kind, card.part.edge) : lacking(missingFacts), {
          broken: () =>
            sentence`${card.label} has an edge of ${edge}; ${card.at.slot} is ${slot!.length} long and closed.
              Use a longer slot.`,
          fixes: () => cardMoves(build, card, (other) => short(other).is === true),
        }),
      );
    }
  },
});
