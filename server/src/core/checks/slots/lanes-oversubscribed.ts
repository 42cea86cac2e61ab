// What shares the processor's lanes, and what shares the chipset's link, against what there is.
import { counted } from '../../figures/figure';
import { chipsetDemand, processorLanes } from '../../figures/lane-budget';
import { uplink } from '../../figures/lanes';
import { sentence } from '../../figures/sentence';
import { freeSlots } from '../../figures/slots';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn, swap, type FixIdea } from '../kit';

export default check({
  id: 'lanes-oversubscribed',
  area: 'slots',
  grade: 'shortfall',
  what:
    'Slots on the processor use no more lanes than it brings, and what stands behind the chipset fits ' +
    'through its link.',
  why:
    'Everything behind the chipset shares one link: each part tests fast alone, and together they wait for ' +
    'each other.',
  source: 'PCI Express Base Specification: line rate × coding ÷ 8; common practice',
  limits: [
    'Drives are counted at reading only, since a link carries each direction by itself.',
    'Where nothing promised is at stake it is a note.',
  ],
  examples: [
    {
      faulty: `
parts:
  board:
# ^^^^^
    chipset-link: PCIe 4 x4
    slots:
      M2_2: { kind: M.2, carries: [PCIe 4 x4], from: chipset, halves: [] }
      M2_3: { kind: M.2, carries: [PCIe 4 x4], from: chipset, halves: [] }
  drives:
    - { name: scratch, bus: NVMe, link: PCIe 4 x4, read: 7 GB/s, slot: M2_2 }
    - { name: cache, bus: NVMe, link: PCIe 4 x4, read: 7 GB/s, slot: M2_3 }
expect:
  drives: { scratch: { read: 5 GB/s }, cache: { read: 5 GB/s } }
`,
      instead: 'Move one of the drives to a socket on the processor, or promise less.',
    },
  ],
  test(build, report) {
    const { board, processor } = build.parts;
    if (!board) return;
    const lanes = processorLanes(build);
    if (processor && lanes) {
      const brought = counted(processor.part.lanes, `lanes of ${processor.label}`);
      report(
        outcome(at(processor), atMost(lanes, brought), {
          broken: () => sentence`The slots on the processor use ${lanes} lanes; ${processor.label} brings ${brought}.`,
          fixes: () => [swap(processor)],
        }),
      );
    }
    const demand = chipsetDemand(build);
    const through = uplink(build);
    if (!demand || !through) return;
    const isPromised = atMost(demand.promised, through).is === false;
    report(
      outcome(at(board), atMost(demand.all, through), {
        ...(isPromised ? {} : { grade: 'note' as const }),
        broken: () =>
          sentence`What stands behind the chipset is to move ${demand.all} at once; its link to the processor carries
            ${through}.`,
        *fixes(): Iterable<FixIdea | undefined> {
          for (const placed of demand.movable) {
            for (const [name, slot] of freeSlots(build))
              if (slot.from.value === 'processor') yield putOn(placed, 'slot', name, `Move ${placed.label} to ${name}`);
          }
        },
      }),
    );
  },
});
