// A riser's generation against what card, slot and processor would run without it.
import { least } from '../../figures/figure';
import { endOf, riserOf, sourceGeneration, wiringOf } from '../../figures/lanes';
import { sentence } from '../../figures/sentence';
import { atLeast, given, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn } from '../kit';
import { cardsInSlots } from './slots-kit';

export default check({
  id: 'riser-slower',
  area: 'slots',
  grade: 'shortfall',
  what: 'A riser carries the generation that card and slot would run without it.',
  why:
    'On a riser for a lower generation the link falls back at best; at worst it trains at the higher one and ' +
    'drops out under load.',
  source: 'PCI Express Base Specification, link initialisation; common practice',
  examples: [
    {
      faulty: `
parts:
  board: { slots: { PCIE_1: { kind: PCIe, lanes: 16, generation: 5, from: processor } } }
  graphics: { link: PCIe 4 x16, slot: PCIE_1, riser: PCIe 3 }
#                                                    ^^^^^^
`,
      mended: `
parts:
  board: { slots: { PCIE_1: { kind: PCIe, lanes: 16, generation: 5, from: processor } } }
  graphics: { link: PCIe 4 x16, slot: PCIE_1, riser: PCIe 4 }
`,
    },
  ],
  test(build, report) {
    for (const {
      card,
      seat: { name, slot, missingFacts },
    } of cardsInSlots(build)) {
      const riser = riserOf(card);
      if (!riser) continue;
      const source = slot && sourceGeneration(build, slot, name!);
      const without =
        slot &&
        least(`generation of ${card.label} in ${name} without the riser`, [
          endOf(card.part.link, card.label).generation,
          wiringOf(build, slot).generation,
          ...(source ? [source] : []),
        ]);
      report(
        outcome(
          at(card, card.at.riser),
          without ? given(atLeast(riser, without), card.part.edge, slot?.kind) : lacking(missingFacts),
          {
            broken: () =>
              sentence`The riser is made for PCIe generation ${riser}; ${card.label} would run at ${without!} in
              ${card.at.slot}.`,
            fixes: () =>
              without && without.lo === without.hi
                ? [putOn(card, 'riser', `PCIe ${without.lo}`, `Use a riser for PCIe ${without.lo}`)]
                : [],
          },
        ),
      );
    }
  },
});
