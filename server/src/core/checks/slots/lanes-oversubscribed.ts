// What shares the processor's lanes, and what shares the chipset's link, against what there is.
import type { Build } from '../../build/build';
import { copyWith, counted, figure, least } from '../../figures/figure';
import { chipsetDemand, processorLanes } from '../../figures/lane-budget';
import { reached, uplink } from '../../figures/lanes';
import { sentence } from '../../figures/sentence';
import { freeSlots, seatOf } from '../../figures/slots';
import type { Direction } from '../../figures/storage';
import { atMost, given } from '../../figures/truth';
import { check } from '../check';
import { aspectOf, at, outcome, putOn, swap, type FixIdea, type Reporter } from '../kit';
import { cardsOf, linkInSlot, type Card } from './slots-kit';

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
    'A link carries each direction by itself: writing is counted where it is promised, reading always.',
    'Only a card that states a rate it needs is held against its own link.',
  ],
  remarks: ['Where neither a promise nor a rate that a card needs is at stake it is a note.'],
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
    for (const card of cardsOf(build)) judgeNeed(build, card, report);
    for (const way of ['read', 'write'] as const) judgeUplink(build, way, report);
  },
});

/** What a card needs against its own link and the chipset’s, where neither slot nor riser is to blame. */
function judgeNeed(build: Build, card: Card, report: Reporter): void {
  const need = card.part['rate-needed'];
  const seat = seatOf(build, card);
  if (!need.value || seat.name === undefined) return;
  const blamed = seat.slot && linkInSlot(build, card, seat.name, seat.slot).blamed;
  if (blamed !== undefined && blamed !== 'own') return;
  const { link, uplink: shared } = reached(build, card);
  const within = shared ? least(`rate of ${card.label} in ${seat.name}`, [link, shared], { unit: 'GB/s' }) : link;
  report(
    outcome(
      aspectOf(at(card, card.at.slot), 'need'),
      given(atMost(figure(need, `rate needed by ${card.label}`), within), need, card.at.slot),
      {
        broken: () => sentence`${card.label} needs ${need}; its link in ${card.at.slot} carries ${within}.`,
        fixes: () => [swap(card)],
      },
    ),
  );
}

/** Drives and cards behind the chipset, in one direction: a link carries each by itself. */
function judgeUplink(build: Build, way: Direction, report: Reporter): void {
  const demand = chipsetDemand(build, way);
  const through = uplink(build);
  if (!demand || !through) return;
  const place = at(build.parts.board!);
  const promised = atMost(demand.promised, through);
  const isPromised = promised.is === false;
  const shown = through.lo > 0 ? through : copyWith(through, { lo: -Infinity });
  if (way === 'write' && !isPromised) return;
  report(
    outcome(way === 'read' ? place : aspectOf(place, way), isPromised ? promised : atMost(demand.all, through), {
      ...(isPromised ? {} : { grade: 'note' as const }),
      broken: () =>
        isPromised
          ? sentence`Behind the chipset the build is to ${way} ${demand.promised} at once; the chipset’s link to the
            processor carries ${shown}. Move one of them to a slot on the processor.`
          : sentence`Behind the chipset drives and cards can move ${demand.all} at once; the chipset’s link to the
            processor carries ${shown}, which they share.`,
      *fixes(): Iterable<FixIdea | undefined> {
        for (const placed of demand.movable) {
          for (const [name, slot] of freeSlots(build))
            if (slot.from.value === 'processor') yield putOn(placed, 'slot', name, `Move ${placed.label} to ${name}`);
        }
      },
    }),
  );
}
