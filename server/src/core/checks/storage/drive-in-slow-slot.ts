// A drive in a slot that gives it less than a free one would.
import { reachedIn } from '../../figures/lanes';
import { figure, least, missing, type Figure } from '../../figures/figure';
import { say } from '../../figures/say';
import { freeSlots, type Slot } from '../../figures/slots';
import { driveRate, type Drive } from '../../figures/storage';
import { all, atLeast, lacking, type Truth } from '../../figures/truth';
import type { Build } from '../../build/build';
import { check } from '../check';
import { at, outcome, putOn } from '../kit';
import { modulesOf } from './storage-kit';

export default check({
  id: 'drive-in-slow-slot',
  area: 'storage',
  grade: 'note',
  what: 'No free socket of the board would let an NVMe drive read faster than the one it is in.',
  why: 'Sockets that look alike differ in lanes and generation; moving the drive later means taking the machine apart.',
  source: 'PCI Express Base Specification: line rate × coding ÷ 8',
  examples: [{
    faulty: `
parts:
  board:
    slots:
      M2_1: { kind: M.2, carries: [PCIe 4 x4], from: processor }
      M2_2: { kind: M.2, carries: [PCIe 4 x2], from: processor }
  drives:
    - { name: scratch, bus: NVMe, shape: M.2, link: PCIe 4 x4, read: 7 GB/s, slot: M2_2 }
#                                                                                  ^^^^
`,
    mended: `
parts:
  board:
    slots:
      M2_1: { kind: M.2, carries: [PCIe 4 x4], from: processor }
      M2_2: { kind: M.2, carries: [PCIe 4 x2], from: processor }
  drives:
    - { name: scratch, bus: NVMe, shape: M.2, link: PCIe 4 x4, read: 7 GB/s, slot: M2_1 }
`,
  }],
  *test(build) {
    for (const { placed, seat } of modulesOf(build)) {
      const bus = placed.role === 'drives' ? (placed as Drive).part.bus : undefined;
      if (!bus || (bus.value !== undefined && bus.value !== 'NVMe')) continue;
      const drive = placed as Drive;
      const now = driveRate(build, drive, 'read');
      // A slot that carries no PCIe is not slow: drive-bus-not-carried says so.
      if (now.hi === 0) continue;
      const own = figure(drive.part.read, `read rate of ${drive.label}`);
      const rivals = now.lo >= own.hi ? [] : rivalsOf(build, drive, own);
      const truth = bus.value === undefined ? lacking([missing(bus, `bus of ${drive.label}`)]) : !seat.slot ? lacking(seat.lacks)
        : all(...rivals.map(({ name, slot, rate }) => noFaster(now, rate, name, slot)));
      const best = rivals.filter(({ name, slot, rate }) => noFaster(now, rate, name, slot).is === false).sort((a, b) => b.rate.lo - a.rate.lo)[0];
      yield outcome(at(drive, drive.at.slot), truth, {
        broken: () => say`${drive.label} reads at ${now} in ${drive.at.slot}; in ${best!.name}, which is free, it would read at ${best!.rate}.`,
        fixes: () => [putOn(drive, 'slot', best!.name, `Move ${drive.label} to ${best!.name}`)],
      });
    }
  },
});

interface Rival { readonly name: string; readonly slot: Slot; readonly rate: Figure }

/** The free sockets, with what the drive would read at in each. */
function rivalsOf(build: Build, drive: Drive, own: Figure): readonly Rival[] {
  return freeSlots(build).filter(([, slot]) => slot.kind.value !== 'PCIe').map(([name, slot]) => {
    const { link, uplink } = reachedIn(build, drive, { name, slot, lacks: [] });
    return { name, slot, rate: least(`read rate of ${drive.label} in ${name}`, [own, link, ...(uplink ? [uplink] : [])], { unit: 'GB/s' }) };
  });
}

/** A slot that may be a PCIe slot is a rival only if it is none. */
function noFaster(now: Figure, rate: Figure, name: string, { kind }: Slot): Truth {
  const truth = atLeast(now, rate);
  return kind.value === undefined && truth.is === false ? lacking([missing(kind, `kind of ${name}`)]) : truth;
}
