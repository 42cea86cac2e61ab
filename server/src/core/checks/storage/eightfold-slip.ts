// A promised rate in bytes that repeats the link's rate in bits.
import { copyWith, known, missing, writtenAt, type Figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { linkBuses, seatOf } from '../../figures/slots';
import type { Drive } from '../../figures/storage';
import { given, lacking, sure, type Truth } from '../../figures/truth';
import type { Build } from '../../build/build';
import type { Fact } from '../../parts/fact';
import { inUnit, toBase, type Quantity } from '../../quantity';
import { lineRateGbps, linkRateBytesPerSecond, SATA_GENERATIONS, type Link } from '../../trade/links';
import { check } from '../check';
import { atKey, change, outcome, type Outcome } from '../kit';
import { floorRate } from './storage-kit';

export default check({
  id: 'eightfold-slip',
  area: 'storage',
  grade: 'shortfall',
  what: 'No promised rate in bytes a second is the link’s rate in bits a second.',
  why:
    'Links are sold in gigabits, drives in gigabytes: read for each other, the promise is eight times and ' +
    'more what anything can keep.',
  source: 'PCI Express Base Specification and Serial ATA: line rate × coding ÷ 8',
  examples: [
    {
      faulty: `
parts:
  drives:
    - { name: archive, bus: SATA, link: SATA 3 }
expect:
  drives: { archive: { read: 6 GB/s } }
#                            ^^^^^^
`,
      mended: `
parts:
  drives:
    - { name: archive, bus: SATA, link: SATA 3 }
expect:
  drives: { archive: { read: 600 MB/s } }
`,
    },
  ],
  test(build, report) {
    for (const drive of build.parts.drives) {
      const promise = build.file.expect.drives.value?.get(drive.at.name.value ?? '');
      for (const way of ['read', 'write'] as const) if (promise?.[way].value) report(judge(build, drive, promise[way]));
    }
  },
});

/** How near a promise must be to a link’s line rate to be taken for it. */
const near = 0.01;

interface Carried {
  readonly link: Link;
  readonly fact: Fact<unknown>;
}

/**
 * The links a drive could be meant to run: its own, and those of its bus that its slot carries; SATA of unstated
 * generation is any. A socket’s other buses say nothing of it: 3 GB/s is no slip of an NVMe drive where SATA is wired
 * too.
 */
function linksOf(build: Build, drive: Drive): Carried[] {
  const { bus, link } = drive.part;
  const { slot } = seatOf(build, drive);
  const wired = (slot?.carries.value ?? []).filter(
    ({ value }) => bus.value !== undefined && value?.bus === linkBuses[bus.value],
  );
  const stated = [link, ...wired].flatMap((fact): Carried[] => (fact.value ? [{ link: fact.value, fact }] : []));
  if (bus.value === 'SATA') stated.push({ link: { bus: 'SATA' }, fact: bus });
  return stated.flatMap((one) =>
    one.link.bus === 'SATA' && one.link.generation === undefined
      ? [...SATA_GENERATIONS.keys()].map(
          (generation): Carried => ({ link: { bus: 'SATA', generation }, fact: one.fact }),
        )
      : [one],
  );
}

/** Whether a promise repeats some link’s gigabits as gigabytes. */
function judge(build: Build, drive: Drive, promise: Fact<Quantity>): Outcome {
  const gigabytes = inUnit(promise.value!.lo, 'GB/s');
  const slip = linksOf(build, drive).find(({ link }) => Math.abs(gigabytes / lineRateGbps(link)! - 1) <= near);
  const truth = slip ? sure(false, promise, slip.fact) : openOr(build, drive, promise);
  return outcome(atKey(build, promise), given(truth, drive.part.bus, drive.part.link, drive.at.slot, drive.at.name), {
    broken: () =>
      sentence`${drive.label} is promised ${promise}; its link runs at ${lineOf(slip!)} and carries
        ${sentence`${payloadOf(slip!)}`}: bits were read as bytes.`,
    *fixes() {
      const rate = floorRate(linkRateBytesPerSecond(slip!.link)!);
      yield change(promise, rate, `Set the promise to ${rate}`);
    },
  });
}

/** Without its bus, for NVMe its link, and what its socket carries, nobody can say that a promise is no slip. */
function openOr(build: Build, drive: Drive, promise: Fact<Quantity>): Truth {
  const {
    part: { bus, link },
    label,
  } = drive;
  const { name, slot, missingFacts } = seatOf(build, drive);
  if (bus.value === undefined) return lacking([missing(bus, `bus of ${label}`)]);
  if (name !== undefined && missingFacts.length > 0) return lacking(missingFacts);
  if (slot && slot.kind.value !== 'PCIe' && !slot.carries.value)
    return lacking([missing(slot.carries, `the buses ${name} carries`)]);
  return link.value || bus.value === 'SATA' ? sure(true, promise) : lacking([missing(link, `link of ${label}`)]);
}

function lineOf({ link, fact }: Carried): Figure {
  return copyWith(
    known(toBase(lineRateGbps(link)!, 'Gb/s'), 'data-rate', 'line rate', {
      unit: 'Gb/s',
      source: 'PCI Express Base Specification; Serial ATA',
    }),
    { from: writtenAt(fact) },
  );
}

function payloadOf({ link, fact }: Carried): Figure {
  const rate = linkRateBytesPerSecond(link)!;
  return copyWith(
    known(rate, 'data-rate', 'payload of the link', {
      unit: rate < 1e9 ? 'MB/s' : 'GB/s',
      source: 'line rate × coding ÷ 8',
    }),
    { from: writtenAt(fact) },
  );
}
