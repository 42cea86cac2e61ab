// A drive’s promised rate against what bus, lanes, generation and the drive itself let through.
import type { Build } from '../../build/build';
import { sentence } from '../../figures/sentence';
import { reachedIn } from '../../figures/lanes';
import { asksOfSharingAlone } from '../../figures/sharing';
import { carriesBus, freeSlots, linkBuses, seatOf } from '../../figures/slots';
import { binding, driveReach, type Drive } from '../../figures/storage';
import { figure, type Figure } from '../../figures/figure';
import { atLeast, given } from '../../figures/truth';
import { sataRateBytesPerSecond } from '../../trade/links';
import { check } from '../check';
import { assign, change, outcome, putOn, swap, takeOut, underlineOf, type FixIdea } from '../kit';
import { floorRate } from './storage-kit';

export default check({
  id: 'drive-slower-than-promised',
  area: 'storage',
  grade: 'shortfall',
  what: 'Each drive reaches the rates promised for it through its bus, lanes and generation.',
  why:
    'The form of a module tells no rate: the slowest of drive, bus, lanes and generation sets it, and the rest ' +
    'is paid for in vain.',
  source: 'PCI Express Base Specification and Serial ATA: line rates and coding',
  remarks: ['A slot that is switched off is judged by `slot-takes-ports`; the link is rated as if it were on.'],
  examples: [
    {
      faulty: `
parts:
  drives:
    - { name: scratch, bus: SATA, read: 7 GB/s }
#                           ^^^^
expect:
  drives: { scratch: { read: 5 GB/s } }
`,
      mended: `
parts:
  drives:
    - { name: scratch, bus: SATA, read: 7 GB/s }
expect:
  drives: { scratch: { read: 540 MB/s } }
`,
    },
  ],
  test(build, report) {
    for (const drive of build.parts.drives) {
      const promise = build.file.expect.drives.value?.get(drive.at.name.value ?? '');
      for (const way of ['read', 'write'] as const) {
        // A drive on a bus that its slot does not carry is not slow: drive-bus-not-carried says so.
        if (!promise?.[way].node || busNotCarried(build, drive)) continue;
        const wanted = figure(promise[way], `promised ${way} rate of ${drive.label}`);
        const reached = driveReach(build, drive, way);
        const bound = binding(reached);
        const { slot } = seatOf(build, drive);
        report(
          outcome(
            { subject: promise[way].path, underline: underlineOf(drive, drive.part.bus) },
            given(atLeast(reached, wanted), drive.at.name, drive.at.slot, slot?.kind, slot?.carries),
            {
              broken: () =>
                sentence`${drive.label} is to ${way} at ${wanted} and reaches ${reached}: the ${bound.label} sets the
                limit.`,
              fixes: () => fixes(build, drive, promise[way], reached),
              ...(reached.hi >= wanted.hi && asksOfSharingAlone(build, slot, reached.missing)
                ? { usual: () => `the other slots in use leave ${drive.label} its lanes` }
                : {}),
            },
          ),
        );
      }
    }
  },
});

/** Whether a drive plainly speaks a bus that its slot does not carry. */
function busNotCarried(build: Build, drive: Drive): boolean {
  const { slot } = seatOf(build, drive);
  const bus = drive.part.bus.value;
  return slot !== undefined && bus !== undefined && carriesBus(slot, linkBuses[bus]) === false;
}

function* fixes(
  build: Build,
  drive: Drive,
  promise: Parameters<typeof change>[0],
  reached: Figure,
): Iterable<FixIdea | undefined> {
  const { bus } = drive.part;
  if (bus.value !== 'NVMe' && bus.entry && bus.doc === drive.doc) {
    if (bus.replaced) yield takeOut(bus, `Take \`bus: ${bus.text}\` out; the part file says ${bus.replaced.text}`);
    else if (seemsNvme(drive)) yield change(bus, 'NVMe', 'Set the bus to NVMe');
  }
  yield* fasterSlots(build, drive, reached);
  // While facts are missing, the least it may be is no promise to make.
  if (reached.lo > 0 && Number.isFinite(reached.lo) && reached.missing.length === 0)
    yield change(promise, floorRate(reached.lo), `Lower the promise to ${floorRate(reached.lo)}`);
  yield swap(drive);
}

/**
 * Whether the bus may be a slip: all else that is stated of the drive is of an NVMe module, and something of none
 * else.
 */
function seemsNvme({ at: { port, bay }, part: { link, read, shape, key } }: Drive): boolean {
  if (port.node || bay.node || key.value === 'B+M' || key.value === 'B') return false;
  if (shape.value === '2.5 in' || shape.value === '3.5 in') return false;
  if (link.value) return link.value.bus === 'PCIe';
  return (read.value?.lo ?? 0) > sataRateBytesPerSecond(3);
}

/** Free sockets that would give a faster link, fastest first; where none does, drives may change places. */
function* fasterSlots(build: Build, drive: Drive, now: Figure): Iterable<FixIdea | undefined> {
  const rated = freeSlots(build)
    .filter(([, slot]) => slot.kind.value === 'M.2')
    .map(([name, slot]) => ({ name, rate: reachedIn(build, drive, { name, slot, missingFacts: [] }).link.lo }));
  for (const { name, rate } of rated.sort((a, b) => b.rate - a.rate))
    if (rate > 0) yield putOn(drive, 'slot', name, `Move ${drive.label} to ${name}`);
  if (drive.at.slot.value !== undefined && !rated.some(({ rate }) => rate > now.hi)) yield assign('drives', 'drives');
}
