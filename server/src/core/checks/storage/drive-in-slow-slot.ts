// A drive in a slot that gives it less than a free one would.
import { reachedIn } from '../../figures/lanes';
import { figure, least, missing, type Figure } from '../../figures/figure';
import { memo, memoOf } from '../../figures/memo';
import { sentence } from '../../figures/sentence';
import { filled, freeSlots, seated, type Slot } from '../../figures/slots';
import { driveRate, type Drive } from '../../figures/storage';
import { all, any, atLeast, fits, given, lacking, not, sure, type Truth } from '../../figures/truth';
import type { Build } from '../../build/build';
import type { Fact } from '../../parts/fact';
import { check } from '../check';
import { at, outcome, putOn } from '../kit';
import { keyFits, modulesOf, sizeFits, sizeOf } from './storage-kit';

export default check({
  id: 'drive-in-slow-slot',
  area: 'storage',
  grade: 'note',
  what:
    'No free socket that takes an NVMe drive, and nothing from others, would let it read faster than the one ' +
    'it is in.',
  why: 'Sockets that look alike differ in lanes and generation; moving the drive later means taking the machine apart.',
  source: 'PCI Express Base Specification: line rate × coding ÷ 8',
  remarks: ['A drive on a bus that its slot does not carry is judged by `drive-bus-not-carried`.'],
  examples: [
    {
      faulty: `
parts:
  board:
    slots:
      M2_1: { kind: M.2, key: M, sizes: [2280], carries: [PCIe 4 x4], from: processor }
      M2_2: { kind: M.2, key: M, sizes: [2280], carries: [PCIe 4 x2], from: processor }
  drives:
    - { name: scratch, bus: NVMe, shape: M.2, key: M, size: 2280, link: PCIe 4 x4, read: 7 GB/s, slot: M2_2 }
#                                                                                                      ^^^^
`,
      mended: `
parts:
  board:
    slots:
      M2_1: { kind: M.2, key: M, sizes: [2280], carries: [PCIe 4 x4], from: processor }
      M2_2: { kind: M.2, key: M, sizes: [2280], carries: [PCIe 4 x2], from: processor }
  drives:
    - { name: scratch, bus: NVMe, shape: M.2, key: M, size: 2280, link: PCIe 4 x4, read: 7 GB/s, slot: M2_1 }
`,
    },
  ],
  test(build, report) {
    for (const { placed, seat } of modulesOf(build)) {
      const bus = placed.role === 'drives' ? (placed as Drive).part.bus : undefined;
      if (!bus || (bus.value !== undefined && bus.value !== 'NVMe')) continue;
      const drive = placed as Drive;
      const now = driveRate(build, drive, 'read');
      // A slot that carries no PCIe is not slow: drive-bus-not-carried says so.
      if (now.hi === 0) continue;
      const rivals = now.lo >= ownRate(drive).hi ? [] : rivalsOf(build, drive);
      const truth =
        bus.value === undefined
          ? lacking([missing(bus, `bus of ${drive.label}`)])
          : !seat.slot
            ? lacking(seat.missingFacts)
            : all(...rivals.map(({ truth }) => truth));
      const best = rivals.filter(({ truth }) => truth.is === false).sort((a, b) => b.rate.lo - a.rate.lo)[0];
      report(
        outcome(at(drive, drive.at.slot), given(truth, bus, drive.part.shape, ...fillingSockets(build)), {
          broken: () =>
            sentence`${drive.label} reads at ${now} in ${drive.at.slot}; in ${best!.name}, which is free, it would read
              at ${best!.rate}.`,
          fixes: () => [putOn(drive, 'slot', best!.name, `Move ${drive.label} to ${best!.name}`)],
        }),
      );
    }
  },
});

interface Rival {
  readonly name: string;
  readonly rate: Figure;
  readonly truth: Truth;
}

/** The free sockets, with what the drive would read at in each; `truth` says that it is no better place. */
const rivalsOf = memoOf((build: Build, drive: Drive): readonly Rival[] => {
  const own = ownRate(drive);
  const now = driveRate(build, drive, 'read');
  const used = usedBesides(build, drive);
  return freeSlots(build)
    .filter(([, slot]) => slot.kind.value !== 'PCIe')
    .map(([name, slot]) => {
      const { link, uplink } = reachedIn(build, drive, { name, slot, missingFacts: [] });
      const rate = least(`read rate of ${drive.label} in ${name}`, [own, link, ...(uplink ? [uplink] : [])], {
        unit: 'GB/s',
      });
      const noFaster = atLeast(now, rate);
      return {
        name,
        rate,
        truth: noFaster.is === true ? noFaster : any(noFaster, not(suits(drive, name, slot, used))),
      };
    });
});

/** What says that a socket is not free: the slot that a part in it names. */
const fillingSockets = memo((build: Build): readonly Fact<unknown>[] =>
  [...filled(build)].flatMap(([name, [first]]) => {
    const slot = build.parts.board?.part.slots.value?.get(name);
    return first && slot && slot.kind.value !== 'PCIe' ? [first.at.slot] : [];
  }),
);

const ownRate = (drive: Drive): Figure => figure(drive.part.read, `read rate of ${drive.label}`);

type Used = readonly (string | undefined)[];

/** The places that all other parts take. */
function usedBesides(build: Build, drive: Drive): Used {
  return seated(build).flatMap((one) =>
    one === drive ? [] : [one.at.slot.value, 'port' in one.at ? one.at.port.value : undefined],
  );
}

/** Whether a module could go into a free socket, and nothing in use would lose by it. */
function suits(drive: Drive, name: string, slot: Slot, used: Used): Truth {
  const {
    label,
    part: { key, link },
  } = drive;
  return all(
    fits(slot.kind, `kind of ${name}`, (kind) => kind === 'M.2'),
    keyFits(slot, name, key, label, link),
    sizeFits(slot, name, sizeOf(drive), label),
    spares(slot['takes-from'], `what ${name} switches off`, used),
    spares(slot.halves, `what ${name} halves`, used),
  );
}

/** Whether a list of places that a slot takes from names none that is in use. */
function spares(list: Slot['halves'], what: string, used: Used): Truth {
  const taken = list.value?.map((item) => item.value);
  if (taken?.some((name) => name !== undefined && used.includes(name))) return sure(false, list);
  return used.every((name) => name === undefined) || (taken && !taken.includes(undefined))
    ? sure(true, list)
    : lacking([missing(list, what)]);
}
