// The lanes a slot is wired for against those a card can use.
import type { Figure } from '../../figures/figure';
import { endOf, linkRate, wiringOf } from '../../figures/lanes';
import { sentence } from '../../figures/sentence';
import { atMost, given, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';
import { cardMoves, cardsInSlots, suffices } from './slots-kit';

export default check({
  id: 'card-lanes-fewer',
  area: 'slots',
  grade: 'shortfall',
  what: 'Each card’s slot is wired for as many lanes as the card can use.',
  why: 'A slot of full length is often wired for a quarter of its lanes: the card fits, starts, and is slow.',
  source: 'PCI Express Base Specification: line rate × coding ÷ 8',
  limits: [
    'Only how the slot is wired is judged; what other filled slots take away is judged by ' + '`slot-takes-lanes`.',
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
      const own = endOf(card.part.link, card.label);
      const wired = slot && wiringOf(build, slot);
      const truth = wired ? atMost(own.lanes, wired.lanes) : lacking(missingFacts);
      const now = (): Figure => linkRate(`link of ${card.label} in ${name}`, [own, { lanes: wired!.lanes }]);
      report(
        outcome(
          at(card, card.at.slot),
          given(truth, slot?.kind, 'rate-needed' in card.part ? card.part['rate-needed'] : undefined),
          {
            ...(truth.is === false && suffices(card, now()) ? { grade: 'note' as const } : {}),
            broken: () =>
              sentence`${card.label} can use ${own.lanes} lanes; ${card.at.slot} is wired for ${wired!.lanes}:
              ${sentence`${now()} of ${linkRate(`link of ${card.label}`, [own])}`}.`,
            fixes: () => cardMoves(build, card),
          },
        ),
      );
    }
  },
});
