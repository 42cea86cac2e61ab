// The PCIe generation that slot and processor allow against the card's.
import { sentence } from '../../figures/sentence';
import { atMost, given, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';
import { cardMoves, cardsInSlots, linkComesTo, linkInSlot } from './slots-kit';

export default check({
  id: 'link-generation-lower',
  area: 'slots',
  grade: 'note',
  what: 'Slot and processor run the generation that each card can run.',
  why: 'Each generation halves or doubles the rate; a card with few lanes feels it most.',
  source: 'PCI Express Base Specification: line rate × coding ÷ 8',
  remarks: [
    'Slot and processor are judged; a riser is judged by `riser-slower`.',
    'Where the slot has fewer lanes too, `card-lanes-fewer` tells of both.',
    'It is a shortfall where the card states a rate that it needs and does not get for want of the generation.',
  ],
  examples: [
    {
      faulty: `
parts:
  board: { slots: { PCIE_1: { kind: PCIe, lanes: 16, generation: 3, from: processor } } }
  graphics: { link: PCIe 4 x8, slot: PCIE_1 }
#                                    ^^^^^^
`,
      instead: 'Put the card into a faster slot, or accept the rate that this one gives.',
    },
  ],
  test(build, report) {
    for (const {
      card,
      seat: { name, slot, missingFacts },
    } of cardsInSlots(build)) {
      const link = slot && linkInSlot(build, card, name, slot);
      const isBlamed = link?.blamed === 'generation';
      // The finding about lanes tells of the generation too.
      if (link && !isBlamed && atMost(link.own.lanes, link.wired.lanes).is === false) continue;
      report(
        outcome(
          at(card, card.at.slot),
          given(
            link ? atMost(link.own.generation, link.runs) : lacking(missingFacts),
            slot?.kind,
            card.part.edge,
            card.part['rate-needed'],
          ),
          {
            ...(isBlamed ? { grade: 'shortfall' as const } : {}),
            broken: () =>
              sentence`${card.label} is of PCIe generation ${link!.own.generation}; in ${card.at.slot} it runs at
                ${link!.runs}: ${linkComesTo(card, link!)}.`,
            fixes: () => cardMoves(build, card),
          },
        ),
      );
    }
  },
});
