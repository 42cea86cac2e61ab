// Carriers of several M.2 drives, and whether their slot splits its lanes for them.
import type { Build } from '../../build/build';
import {
  between,
  copyWith,
  counted,
  derive,
  least,
  missing,
  number,
  readCount,
  type Figure,
} from '../../figures/figure';
import { wiringOf } from '../../figures/lanes';
import { sentence } from '../../figures/sentence';
import { filled, type Slot } from '../../figures/slots';
import { any, atMost, fits, given, lacking, type Truth } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';
import { cardMoves, cardsInSlots, type Card } from './slots-kit';

/** Lanes of one M.2 drive on a carrier. */
const lanesEach = 4;

export default check({
  id: 'slot-not-split',
  area: 'slots',
  grade: 'stop',
  what:
    'A carrier of several M.2 drives sits in a slot that splits its lanes for each of them, or divides them ' +
    'itself.',
  why:
    'A plain carrier only passes lanes on: where the firmware does not split the slot, the first drive alone ' +
    'is seen.',
  source: 'PCI Express Base Specification: a link has one device at each end; common practice',
  limits: ['Four lanes are counted for each drive.'],
  examples: [
    {
      faulty: `
parts:
  board: { slots: { PCIE_1: { kind: PCIe, length: x16, lanes: 16, splits: [8+8] } } }
  cards:
    - { model: Quad Carrier, edge: x16, slot: PCIE_1, carries: 4, own-switch: false }
#                                             ^^^^^^
`,
      instead: 'Put the carrier into a slot that splits into four, or choose one with a switch of its own.',
    },
  ],
  test(build, report) {
    for (const { card, seat } of cardsInSlots(build)) {
      const { carries } = card.part;
      if (card.role !== 'cards' || carries.value === undefined || carries.value < 2) continue;
      const drives = drivesOn(build, card, seat.name!);
      const own = fits(card.part['own-switch'], `switch of ${card.label}`, (has) => has);
      const enough = (slot: Slot): Truth => atMost(drives, linksOf(build, slot));
      report(
        outcome(
          at(card, card.at.slot),
          given(any(own, seat.slot ? enough(seat.slot) : lacking(seat.missingFacts)), carries, card.part.edge),
          {
            broken: () =>
              sentence`${card.label} carries ${drives} drives; ${card.at.slot} gives ${linksOf(build, seat.slot!)} of
                them a link. The others are never seen.`,
            fixes: () => cardMoves(build, card, (other) => enough(other).is === true),
          },
        ),
      );
    }
  },
});

/** The drives that share the carrier’s slot, or else as many as it takes. */
function drivesOn(build: Build, card: Card, name: string): Figure {
  const on = (filled(build).get(name) ?? []).filter(({ role }) => role === 'drives');
  const many = on.reduce((sum, one) => sum + (one.at.count.value ?? 1), 0);
  return many > 0
    ? number(many, `drives on ${card.label}`)
    : counted(card.part.carries, `drives that ${card.label} carries`);
}

/** Links of four lanes that a slot gives at most: by the lanes it is wired for, and by the best of its splits. */
function linksOf(build: Build, slot: Slot): Figure {
  const words = `links of ${slot.$.name}`;
  const wired = derive(words, 'count', [wiringOf(build, slot).lanes], 'lanes ÷ 4', (lanes) =>
    Math.floor(lanes / lanesEach),
  );
  const { splits } = slot;
  const read = splits.value?.flatMap(({ value }) =>
    value ? [value.filter((width) => width >= lanesEach).length] : [],
  );
  const isWhole = read !== undefined && read.length === splits.value!.length;
  const best = Math.max(1, ...(read ?? []));
  const bySplit = isWhole
    ? readCount(best, words, splits)
    : copyWith(between(best, Infinity, 'count', words, { source: 'a slot that is not split is one link' }), {
        missing: [missing(splits, `splits of ${slot.$.name}`)],
      });
  return least(words, [wired, bySplit]);
}
