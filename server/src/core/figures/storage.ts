// Figures of drives: the link each one gets, and the rates it reaches.
import type { Build, Placed } from '../build/build';
import type { Fact, Group } from '../parts/fact';
import type { board } from '../parts/board';
import { linkRateBytesPerSecond, linkSpelling, negotiatedLink, sataRateBytesPerSecond, type Link, type PcieLink } from '../trade/links';
import { between, derive, figure, known, least, missing, unknown, type Figure } from './figure';

export type Drive = Placed<'drives'>;
export type Slot = Group<(typeof board)['slots']['of']['fields']>;

const linkSource = 'PCI Express Base Specification: line rate × coding ÷ 8';
const sataSource = 'Serial ATA: line rate × 8b/10b ÷ 8';

/** The slot of the board that a placed part names; undefined when it names none or the board has none of that name. */
export function slotOf(build: Build, placed: { readonly at: { readonly slot: Fact<string> } }): Slot | undefined {
  const name = placed.at.slot.value;
  return name === undefined ? undefined : build.parts.board?.part.slots.value?.get(name);
}

/** The link that a drive and its slot or port agree on, as a rate in bytes a second. */
export function driveLinkRate(build: Build, drive: Drive): Figure {
  const label = `link of ${drive.label}`;
  const bus = drive.part.bus;
  if (bus.value === undefined) return unknown('data-rate', label, [missing(bus, `bus of ${drive.label}`)]);
  if (bus.value === 'SATA') return sataRate(drive, label);
  if (bus.value !== 'NVMe') return unknown('data-rate', label, [missing(drive.part.link, `link of ${drive.label}`)]);
  return pcieRate(build, drive, label);
}

/** SATA runs at the generation the drive states; where none is stated, at one of the three. */
function sataRate(drive: Drive, label: string): Figure {
  const link = drive.part.link.value;
  if (link?.bus === 'SATA' && link.generation !== undefined) return { ...rateOf(link, label, sataSource), ...writtenAt(drive.part.link) };
  return between(sataRateBytesPerSecond(1), sataRateBytesPerSecond(3), 'data-rate', `SATA link of ${drive.label}`, { unit: 'MB/s', source: sataSource });
}

function pcieRate(build: Build, drive: Drive, label: string): Figure {
  const own = drive.part.link;
  if (own.value === undefined) return unknown('data-rate', label, [missing(own, label)]);
  if (own.value.bus !== 'PCIe') return unknown('data-rate', label, [missing(own, `PCIe link of ${drive.label}`)]);
  const ownRate = { ...rateOf(own.value, `${linkSpelling(own.value)} of ${drive.label}`, linkSource), ...writtenAt(own) };
  const place = drive.at.slot;
  if (!build.parts.board) return ownRate;
  const slot = slotOf(build, drive);
  if (!slot) return unknown('data-rate', label, [missing(place, `slot of ${drive.label}`)]);
  const carried = slotLink(slot);
  if (!carried.link) return carried.lacks ? unknown('data-rate', label, [missing(carried.lacks, `${carried.lacks.key} of ${place.text}`)]) : known(0, 'data-rate', `${place.text} carries no PCIe`, { source: 'the board’s facts' });
  const slotRate = { ...rateOf(carried.link, `${linkSpelling(carried.link)} of ${place.text}`, linkSource), ...writtenAt(carried.fact) };
  const agreed = negotiatedLink(own.value, carried.link);
  return derive(`link of ${drive.label} in ${place.text}`, 'data-rate', [ownRate, slotRate], 'the lower generation on the fewer lanes', () => linkRateBytesPerSecond(agreed)!, { unit: 'GB/s', source: linkSource });
}

/** The PCIe link a slot carries; or the fact that would say it; or neither, where it plainly carries none. */
export function slotLink(slot: Slot): { link?: PcieLink; fact: Fact<unknown>; lacks?: Fact<unknown> } {
  if (slot.kind.value === 'M.2') {
    if (slot.carries.value === undefined) return { fact: slot.carries, lacks: slot.carries };
    for (const one of slot.carries.value) if (one.value?.bus === 'PCIe') return { link: one.value, fact: one };
    return { fact: slot.carries };
  }
  const { lanes, generation } = slot;
  if (lanes.value === undefined) return { fact: lanes, lacks: lanes };
  if (generation.value === undefined) return { fact: generation, lacks: generation };
  return { link: { bus: 'PCIe', generation: generation.value, lanes: lanes.value }, fact: lanes };
}

function rateOf(link: Link, label: string, source: string): Figure {
  return known(linkRateBytesPerSecond(link)!, 'data-rate', label, { unit: link.bus === 'SATA' ? 'MB/s' : 'GB/s', source });
}

function writtenAt(fact: Fact<unknown>): Pick<Figure, 'from'> {
  return fact.node ? { from: { doc: fact.doc, span: fact.node.span, path: fact.path } } : {};
}

/** The rate a drive reaches, reading or writing: its own, or its link’s where that is lower. */
export function driveRate(build: Build, drive: Drive, way: 'read' | 'write'): Figure {
  const own = figure(drive.part[way], `${way} rate of ${drive.label}`);
  return least(`${way} rate reached by ${drive.label}`, [own, driveLinkRate(build, drive)], { unit: 'GB/s' });
}

/** Which of a figure’s inputs binds it: the one with the lowest upper bound. */
export function binding(of: Figure): Figure {
  return of.inputs.reduce((a, b) => (b.hi < a.hi ? b : a), of.inputs[0] ?? of);
}
