// The links that drives and cards of a finished machine run, against what their figures say they reach.
import type { Build } from '../../build/build';
import { cardPairs, drivePairs } from '../../figures/built-pairs';
import { copyWith, figure, known, least, readCount, writtenAt, type Figure } from '../../figures/figure';
import { linkRows, type Lanes } from '../../figures/link-rows';
import { many } from '../../figures/lists';
import { sentence, type Sentence } from '../../figures/sentence';
import type { Seated } from '../../figures/slots';
import { driveLinkRate, type Drive } from '../../figures/storage';
import { all, atLeast, given } from '../../figures/truth';
import type { BuiltDevice, BuiltDrive } from '../../manifest/as-built';
import type { Fact } from '../../parts/fact';
import { linkRateBytesPerSecond, type Link } from '../../trade/links';
import { isGraphicsClass } from '../../trade/reported';
import { check } from '../check';
import { at, atFact, outcome, type Reporter } from '../kit';
import { foundAs, notShown, undecided } from './built-kit';

export default check({
  id: 'built-link-slower',
  area: 'built',
  grade: 'shortfall',
  what: 'The link of each drive and card runs as wide and as fast as the build’s figures say it reaches.',
  why: 'A contact that does not meet, a riser or a setting of the firmware halves a link without a word.',
  source: 'PCI Express Base Specification: Link Capabilities and Link Status registers',
  limits: [
    'Graphics slow their link down while they are idle: a low generation at full width is only judged under load.',
    'Of several links on the way to a card, the narrowest counts; the chipset’s own is judged apart.',
  ],
  examples: [
    {
      faulty: `
parts:
  board: { slots: { M2_1: { kind: M.2, carries: [PCIe 4 x4], from: chipset } } }
  drives: [{ name: scratch, bus: NVMe, link: PCIe 4 x4, capacity: 2 TB, slot: M2_1 }]
#          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Switch off, unplug, take the drive out and seat it anew.',
      beside: {
        'example.asbuilt.yaml':
          '\nfrom: [lsblk, lspci]\ndrives: [{ bus: NVMe, capacity: 2 TB, link: PCIe 4 x2, able: PCIe 4 x4 }]\n',
      },
    },
  ],
  test(build, report) {
    if (!build.machine) return;
    for (const pair of [...drivePairs(build).pairs, ...cardPairs(build).pairs])
      for (const thing of pair.found) judge(build, pair.placed, foundAs(pair), thing, report);
  },
});

type Name = string | Sentence;

function judge(build: Build, placed: Seated, name: Name, thing: BuiltDevice | BuiltDrive, report: Reporter): void {
  const { link } = thing;
  if (placed.role === 'drives' && link.value) promised(build, placed as Drive, name, link, report);
  const isSata = placed.role === 'drives' && (thing as BuiltDrive).bus.value === 'SATA';
  if (isSata) return sata(build, placed as Drive, name, thing as BuiltDrive, report);
  if (placed.role === 'drives' && (thing as BuiltDrive).bus.value !== 'NVMe') return;
  const lanes = linkRows(build).find((row) => row.placed === placed)?.lanes;
  if (!lanes) return;
  const wants = { lanes: wanted(lanes, thing, 'lanes'), generation: wanted(lanes, thing, 'generation') };
  const broken = () => sentence`The link of ${name} runs as ${link}; it is to reach ${many(wants.lanes, 'lane')} of
    generation ${wants.generation}. Seat it anew, and look at the firmware’s setting of the slot.`;
  if (link.value?.bus !== 'PCIe')
    return report(notShown(at(placed), link, `the link that ${placed.label} runs`, { broken }));
  const wide = atLeast(readCount(link.value.lanes, `lanes that ${placed.label} runs`, link), wants.lanes);
  const fast = atLeast(
    readCount(link.value.generation, `generation that ${placed.label} runs`, link),
    wants.generation,
  );
  if (fast.is === false && wide.is !== false && isIdle(thing))
    return report(
      outcome(at(placed), undecided(link), {
        broken,
        open: () => sentence`The link of ${name} was read as ${link} while it was idle; read it under load.`,
      }),
    );
  report(outcome(at(placed), given(all(wide, fast), thing.able), { broken }));
}

/** The rate that is promised of a drive, against what its link carries at most. */
function promised(build: Build, drive: Drive, name: Name, link: Fact<Link>, report: Reporter): void {
  const promise = build.file.expect.drives.value?.get(drive.at.name.value ?? '');
  const rate = link.value && linkRateBytesPerSecond(link.value);
  // A plan that falls short of its promise by itself is found without a machine.
  if (!promise || rate === undefined || driveLinkRate(build, drive).hi <= rate) return;
  for (const way of ['read', 'write'] as const) {
    if (!promise[way].value) continue;
    const carries = copyWith(
      known(rate, 'data-rate', `link that ${drive.label} runs`, { unit: 'GB/s', source: 'line rate × coding ÷ 8' }),
      { from: writtenAt(link) },
    );
    const wants = figure(promise[way], `${way} rate promised`);
    report(
      outcome(atFact(promise[way]), atLeast(carries, wants), {
        broken: () => sentence`${name} is to ${way} at ${wants}; the link that it runs, ${link}, carries ${carries}.`,
      }),
    );
  }
}

/** What the build reaches; where that is not known in full, what both ends could run together bounds it. */
function wanted(lanes: Lanes, { able }: BuiltDevice | BuiltDrive, what: 'lanes' | 'generation'): Figure {
  const planned = what === 'lanes' ? lanes.got : lanes.generation;
  const ends = able.value;
  if (planned.lo === planned.hi || ends?.bus !== 'PCIe') return planned;
  const could = readCount(ends[what], `${what} that both ends can run`, able);
  const both = least(planned.label, [planned, could]);
  return copyWith(both, { lo: Math.max(both.lo, Math.min(could.lo, planned.hi)), missing: [] });
}

const isIdle = (thing: BuiltDevice | BuiltDrive): boolean =>
  'class' in thing && isGraphicsClass(thing.class.value ?? '') && thing.read.value !== 'load';

/** SATA: the generation that the drive and its port agreed on. */
function sata(build: Build, drive: Drive, name: Name, { link, able }: BuiltDrive, report: Reporter): void {
  if (drive.part.bus.value !== 'SATA') return;
  const wants = rateWanted(driveLinkRate(build, drive), able);
  const broken = () => sentence`The link of ${name} runs as ${link}; ${wants} is to be reached. Exchange its data
    cable, or its port.`;
  const rate = link.value && linkRateBytesPerSecond(link.value);
  if (rate === undefined) return report(notShown(at(drive), link, `the link that ${drive.label} runs`, { broken }));
  report(
    outcome(at(drive), given(atLeast(sataRate(rate, 'rate of the link that runs', link), wants), link), { broken }),
  );
}

const sataRate = (rate: number, label: string, fact: Fact<Link>): Figure =>
  copyWith(known(rate, 'data-rate', label, { unit: 'MB/s', source: 'Serial ATA: line rate × 8b/10b ÷ 8' }), {
    from: writtenAt(fact),
  });

/** What the build reaches; where that is not known in full, what the drive says it can run bounds it. */
function rateWanted(planned: Figure, able: Fact<Link>): Figure {
  const could = able.value && linkRateBytesPerSecond(able.value);
  return planned.lo === planned.hi || could === undefined
    ? planned
    : sataRate(Math.min(could, planned.hi), 'rate of the link that the drive can run', able);
}
