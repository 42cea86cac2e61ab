// The PCIe generation that slot and processor allow against the card's.
import { least, type Figure } from '../../figures/figure';
import { endOf, linkRate, sourceGeneration, wiringOf } from '../../figures/lanes';
import { sentence } from '../../figures/sentence';
import { atMost, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';
import { cardMoves, cardsInSlots, suffices } from './slots-kit';

export default check({
  id: 'link-generation-lower',
  area: 'slots',
  grade: 'shortfall',
  what: 'Slot and processor run the generation that each card can run.',
  why: 'Each generation halves or doubles the rate; a card with few lanes feels it most.',
  source: 'PCI Express Base Specification: line rate × coding ÷ 8',
  limits: ['Slot and processor are judged; a riser is judged by `riser-slower`.'],
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
      const own = endOf(card.part.link, card.label);
      const source = slot && sourceGeneration(build, slot, name!);
      const wired = slot && wiringOf(build, slot).generation;
      const runs = wired && (source ? least(`generation in ${name}`, [wired, source]) : wired);
      const truth = runs ? atMost(own.generation, runs) : lacking(missingFacts);
      const now = (): Figure => linkRate(`link of ${card.label} in ${name}`, [own, { generation: runs! }]);
      report(
        outcome(at(card, card.at.slot), truth, {
          ...(truth.is === false && suffices(card, now()) ? { grade: 'note' as const } : {}),
          broken: () =>
            sentence`${card.label} is of PCIe generation ${own.generation}; in ${card.at.slot} it runs at ${runs!}:
              ${sentence`${now()} of ${linkRate(`link of ${card.label}`, [own])}`}.`,
          fixes: () => cardMoves(build, card),
        }),
      );
    }
  },
});
