// A promised rate in bytes that repeats another figure of the link: its bits, its transfers, both its directions.
import { copyWith, known, missing, writtenAt, type Figure } from '../../figures/figure';
import { sentence, type Sentence } from '../../figures/sentence';
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
  what:
    'No promised rate in bytes a second is the link’s rate in bits or transfers a second, nor that of both ' +
    'directions together.',
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
/** Both directions are often printed rounded: 16 GB/s for twice 7.877. */
const nearBoth = 0.02;

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

/** A figure of a link that is taken for its rate: how it reads in GB/s, and what was mixed up. */
interface Slip extends Carried {
  readonly gigabytes: number;
  readonly near: number;
  readonly figure: (slip: Slip) => Sentence;
  readonly confused: string;
}

function slipsOf(carried: Carried): Slip[] {
  const { link } = carried;
  const payload = inUnit(linkRateBytesPerSecond(link)!, 'GB/s');
  const bits: Slip = {
    ...carried,
    gigabytes: lineRateGbps(link)!,
    near,
    figure: (slip) => sentence`its link runs at ${lineOf(slip)}`,
    confused: 'bits were read as bytes',
  };
  if (link.bus !== 'PCIe') return [bits];
  const both: Slip = {
    ...carried,
    gigabytes: 2 * payload,
    near: nearBoth,
    figure: (slip) => sentence`its link moves ${bothOf(slip)} in both directions together`,
    confused: 'a drive reads in one',
  };
  const transfers: Slip = {
    ...carried,
    gigabytes: lineRateGbps({ ...link, lanes: 1 })!,
    near,
    figure: (slip) => sentence`its link runs at ${lineOf({ ...slip, link: { ...link, lanes: 1 } })} a lane`,
    confused: 'bits were read as bytes',
  };
  return transfers.gigabytes > payload ? [bits, both, transfers] : [bits, both];
}

/** Whether a promise repeats some link’s gigabits as gigabytes, or twice its payload. */
function judge(build: Build, drive: Drive, promise: Fact<Quantity>): Outcome {
  const gigabytes = inUnit(promise.value!.lo, 'GB/s');
  const slip = linksOf(build, drive)
    .flatMap(slipsOf)
    .find((one) => Math.abs(gigabytes / one.gigabytes - 1) <= one.near);
  const truth = slip ? sure(false, promise, slip.fact) : openOr(build, drive, promise);
  return outcome(atKey(build, promise), given(truth, drive.part.bus, drive.part.link, drive.at.slot, drive.at.name), {
    broken: () =>
      sentence`${drive.label} is promised ${promise}; ${slip!.figure(slip!)} and carries
        ${sentence`${payloadOf(slip!)}`}: ${slip!.confused}.`,
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

function bothOf({ link, fact }: Carried): Figure {
  return copyWith(
    known(2 * linkRateBytesPerSecond(link)!, 'data-rate', 'payload of both directions', {
      unit: 'GB/s',
      source: 'PCI Express Base Specification: line rate × coding ÷ 8, twice',
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
