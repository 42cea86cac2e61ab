// A riser's generation against what card, slot and processor would run without it.
import { least } from '../../figures/figure';
import { riserOf } from '../../figures/lanes';
import { sentence } from '../../figures/sentence';
import { atLeast, given, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn } from '../kit';
import { cardsInSlots, linkComesTo, linkInSlot, meets } from './slots-kit';

export default check({
  id: 'riser-slower',
  area: 'slots',
  grade: 'shortfall',
  what: 'A riser carries the generation that card and slot would run without it.',
  why:
    'On a riser for a lower generation the link falls back at best; at worst it trains at the higher one and ' +
    'drops out under load.',
  remarks: ['Where the card states a rate that it needs, and gets it, it is a note.'],
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
      const link = slot && linkInSlot(build, card, name, slot);
      const without =
        link && least(`generation of ${card.label} in ${name} without the riser`, [link.own.generation, link.runs]);
      const isEnough = link !== undefined && meets(card, link.reached) === true;
      report(
        outcome(
          at(card, card.at.riser),
          given(
            without ? atLeast(riser, without) : lacking(missingFacts),
            slot?.kind,
            card.part.edge,
            card.part['rate-needed'],
          ),
          {
            ...(isEnough ? { grade: 'note' as const } : {}),
            broken: () =>
              sentence`The riser is made for PCIe generation ${riser}; ${card.label} would run at ${without!} in
                ${card.at.slot}: ${linkComesTo(card, link!)}. Set the slot to generation ${riser} in the firmware, or
                use a faster riser.`,
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
