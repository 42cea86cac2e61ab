// The lanes a slot is wired for against those a card can use.
import { sentence } from '../../figures/sentence';
import { atMost, given, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';
import { cardMoves, cardsInSlots, linkComesTo, linkInSlot } from './slots-kit';

export default check({
  id: 'card-lanes-fewer',
  area: 'slots',
  grade: 'note',
  what: 'Each card’s slot is wired for as many lanes as the card can use.',
  why:
    'A slot of full length is often wired for a quarter of its lanes: the card fits and starts, and moves ' +
    'less than it can.',
  source: 'PCI Express Base Specification: line rate × coding ÷ 8',
  remarks: [
    'Only how the slot is wired is judged; what other filled slots take away is judged by `slot-takes-lanes`.',
    'It is a shortfall where the card states a rate that it needs and does not get for want of lanes.',
  ],
  examples: [
    {
      faulty: `
parts:
  board: { slots: { PCIE_2: { kind: PCIe, length: x16, lanes: 4, generation: 4 } } }
  graphics: { link: PCIe 4 x16, slot: PCIE_2 }
#                                     ^^^^^^
`,
      instead: 'Put the card into a slot that is wired for its lanes.',
    },
  ],
  test(build, report) {
    for (const {
      card,
      seat: { name, slot, missingFacts },
    } of cardsInSlots(build)) {
      const link = slot && linkInSlot(build, card, name, slot);
      // The finding about the generation tells what is missing.
      if (link?.blamed === 'generation') continue;
      const slower = link && atMost(link.own.generation, link.runs).is === false;
      const need = card.part['rate-needed'];
      report(
        outcome(
          at(card, card.at.slot),
          given(
            link ? atMost(link.own.lanes, link.wired.lanes) : lacking(missingFacts),
            slot?.kind,
            card.part.edge,
            need,
          ),
          {
            ...(link?.blamed === 'lanes' ? { grade: 'shortfall' as const } : {}),
            broken: () =>
              sentence`${card.label} can use ${link!.own.lanes} lanes; ${card.at.slot} is wired for
                ${link!.wired.lanes}${slower ? sentence`, at PCIe generation ${link.runs}` : ''}:
                ${linkComesTo(card, link!)}.`,
            fixes: () => cardMoves(build, card),
          },
        ),
      );
    }
  },
});
