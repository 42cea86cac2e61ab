// Data links inside and outside a case: what PCIe, SATA and USB carry, and how manuals spell them.
import { needCount } from './numbers';

/** A PCIe link of a generation (1–6) and a width; a chipset's uplink is one too. */
export interface PcieLink {
  readonly bus: 'PCIe';
  readonly generation: number;
  readonly lanes: number;
}

/** A SATA link; the generation is absent where the text only says `SATA`. */
export interface SataLink {
  readonly bus: 'SATA';
  readonly generation?: number;
}

/** A USB link, by the name of its rate. */
export interface UsbLink {
  readonly bus: 'USB';
  readonly rate: UsbRate;
}

export type Link = PcieLink | SataLink | UsbLink;

interface Coding {
  /** Transfers a second and lane, in 10⁹: one bit each, except where the coding says otherwise. */
  readonly gigatransfersPerSecond: number;
  /** Share of the transfers that is payload. */
  readonly payloadShare: number;
}

/** 8b/10b, 128b/130b and 128b/132b. */
const EIGHT_OF_TEN = { payloadShare: 8 / 10 };
const OF_130 = { payloadShare: 128 / 130 };
const OF_132 = { payloadShare: 128 / 132 };

/**
 * PCIe generations 1–6, a lane and direction.
 * Source: PCI Express Base Specification; codings as in the Linux kernel, drivers/pci/pci.h.
 * Generation 6 sends flits of 256 bytes, of which 236 are payload; the kernel's table leaves that out.
 */
export const PCIE_GENERATIONS: ReadonlyMap<number, Coding> = new Map([
  [1, { gigatransfersPerSecond: 2.5, ...EIGHT_OF_TEN }],
  [2, { gigatransfersPerSecond: 5, ...EIGHT_OF_TEN }],
  [3, { gigatransfersPerSecond: 8, ...OF_130 }],
  [4, { gigatransfersPerSecond: 16, ...OF_130 }],
  [5, { gigatransfersPerSecond: 32, ...OF_130 }],
  [6, { gigatransfersPerSecond: 64, payloadShare: 236 / 256 }],
]);

/** Widths of PCIe links that boards and cards use. Source: PCI Express Card Electromechanical Specification. */
export const PCIE_WIDTHS: readonly number[] = [1, 2, 4, 8, 16];

/** SATA 1–3. Source: Serial ATA Specification, revision 3: 1.5, 3 and 6 Gb/s, 8b/10b. */
export const SATA_GENERATIONS: ReadonlyMap<number, Coding> = new Map([
  [1, { gigatransfersPerSecond: 1.5, ...EIGHT_OF_TEN }],
  [2, { gigatransfersPerSecond: 3, ...EIGHT_OF_TEN }],
  [3, { gigatransfersPerSecond: 6, ...EIGHT_OF_TEN }],
]);

/**
 * USB rates by name.
 * Source: Universal Serial Bus Specification 2.0; Universal Serial Bus 3.2 Specification.
 * The three USB4 rows are from memory: 20 and 40 as two lanes at 128b/132b, 80 as the rate after its coding.
 */
const USB_RATES = {
  // Its bit stuffing is not deducted.
  'USB 2.0': { gigatransfersPerSecond: 0.48, payloadShare: 1 },
  'USB 3.2 Gen 1': { gigatransfersPerSecond: 5, ...EIGHT_OF_TEN },
  'USB 3.2 Gen 2': { gigatransfersPerSecond: 10, ...OF_132 },
  'USB 3.2 Gen 2x2': { gigatransfersPerSecond: 20, ...OF_132 },
  'USB4 20': { gigatransfersPerSecond: 20, ...OF_132 },
  'USB4 40': { gigatransfersPerSecond: 40, ...OF_132 },
  'USB4 80': { gigatransfersPerSecond: 80, payloadShare: 1 },
} as const satisfies Record<string, Coding>;

export type UsbRate = keyof typeof USB_RATES;

export const USB_RATE_NAMES: readonly UsbRate[] = Object.keys(USB_RATES) as UsbRate[];

/** Older names of the same rates. Source: common practice; the USB 3.2 specification renamed its forerunners. */
const USB_OLDER_NAMES: ReadonlyMap<string, UsbRate> = new Map([
  ['3.0', 'USB 3.2 Gen 1'],
  ['3.1 gen 1', 'USB 3.2 Gen 1'],
  ['3.1 gen 2', 'USB 3.2 Gen 2'],
]);

function bytesPerSecond(coding: Coding, lanes: number): number {
  return (coding.gigatransfersPerSecond * 1e9 * coding.payloadShare * lanes) / 8;
}

/** The generation whose lanes run at a rate, in 10⁹ transfers a second; undefined where none does. */
const generationAt = (of: ReadonlyMap<number, Coding>, gigatransfersPerSecond: number): number | undefined =>
  [...of].find(([, coding]) => coding.gigatransfersPerSecond === gigatransfersPerSecond)?.[0];

/** The PCIe generation that runs at a rate in GT/s, as tools print it; undefined where none does. */
export const pcieGenerationAt = (gigatransfersPerSecond: number): number | undefined =>
  generationAt(PCIE_GENERATIONS, gigatransfersPerSecond);

/** The SATA generation of a line rate in Gb/s, as tools print it; undefined where none has it. */
export const sataGenerationAt = (gbps: number): number | undefined => generationAt(SATA_GENERATIONS, gbps);

function pcieCoding(generation: number): Coding {
  const coding = PCIE_GENERATIONS.get(generation);
  if (!coding) throw new RangeError(`PCIe generation must be 1 to 6, not ${generation}`);
  return coding;
}

/**
 * Payload in bytes a second and direction: GT/s × coding ÷ 8 × lanes. Packet headers are not deducted.
 * Source: PCI Express Base Specification. Throws RangeError for an unknown generation or a lane count below 1.
 */
export function pcieRateBytesPerSecond(generation: number, lanes: number): number {
  needCount('lanes', lanes, 1);
  return bytesPerSecond(pcieCoding(generation), lanes);
}

function sataCoding(generation: number): Coding {
  const coding = SATA_GENERATIONS.get(generation);
  if (!coding) throw new RangeError(`SATA generation must be 1 to 3, not ${generation}`);
  return coding;
}

/**
 * Line rate of a link in Gb/s and direction, coding included: the figure that gets mistaken for gigabytes. Undefined
 * for SATA of unstated generation.
 */
export function lineRateGbps(link: Link): number | undefined {
  const coding = codingOf(link);
  return coding && coding.gigatransfersPerSecond * lanesOf(link);
}

/** Undefined for SATA of unstated generation. Throws RangeError for a generation that no table has. */
function codingOf(link: Link): Coding | undefined {
  switch (link.bus) {
    case 'PCIe':
      return pcieCoding(link.generation);
    case 'USB':
      return USB_RATES[link.rate];
    case 'SATA':
      return link.generation === undefined ? undefined : sataCoding(link.generation);
  }
}

const lanesOf = (link: Link): number => (link.bus === 'PCIe' ? link.lanes : 1);

/** Payload of SATA 1, 2 or 3 in bytes a second. Throws RangeError for another generation. */
export const sataRateBytesPerSecond = (generation: number): number => bytesPerSecond(sataCoding(generation), 1);

/** Payload of a USB rate in bytes a second and direction; an upper bound, packets are not deducted. */
export function usbRateBytesPerSecond(rate: UsbRate): number {
  return bytesPerSecond(USB_RATES[rate], 1);
}

/** Share of a link’s payload that data make up, beside the heads and tails of their packets. */
export interface DataShare {
  readonly least: number;
  readonly most: number;
  readonly source: string;
}

/**
 * PCIe: a packet brings 24 bytes of its own, and holds at least 128 bytes where it is full; the most is not deducted.
 * SATA and the lower ends of USB: common practice, from drives that state what they read at. USB 2.0 at most: 13
 * packets of 512 bytes in 125 µs. USB 3.2 at most: 1024 of 1056 bytes of a data packet. USB4 tunnels: from memory.
 */
export function dataShare(link: Link['bus'], rate?: UsbRate): DataShare {
  if (link === 'PCIe')
    return {
      least: 128 / (128 + 24),
      most: 1,
      source: 'PCI Express Base Specification: packets of 128 bytes and more',
    };
  if (link === 'SATA') return { least: 0.9, most: 1, source: 'common practice' };
  if (rate === 'USB 2.0')
    return {
      least: 0.55,
      most: (13 * 512 * 8000) / usbRateBytesPerSecond('USB 2.0'),
      source: 'Universal Serial Bus Specification 2.0, table 5-10: bulk transfers; common practice',
    };
  return {
    least: rate?.startsWith('USB4') ? 0.5 : 0.825,
    most: 1024 / (1024 + 32),
    source: 'Universal Serial Bus 3.2 Specification: data packets; common practice',
  };
}

/** Payload of any link in bytes a second and direction; undefined for SATA of unstated generation. */
export function linkRateBytesPerSecond(link: Link): number | undefined {
  const coding = codingOf(link);
  return coding && bytesPerSecond(coding, lanesOf(link));
}

/**
 * Payload in bytes a second of a link whose ends and way allow these generations and widths: the lowest and the fewest.
 * Without lanes nothing is carried: 0. NaN where no limit is finite or the generation has no row in the table.
 * Source: PCI Express Base Specification, link initialisation.
 */
export function trainedRateBytesPerSecond(generations: readonly number[], lanes: readonly number[]): number {
  const generation = Math.max(1, Math.min(...generations));
  const width = Math.max(0, Math.min(...lanes));
  if (width === 0) return 0;
  return Number.isInteger(width) && PCIE_GENERATIONS.has(generation) ? pcieRateBytesPerSecond(generation, width) : NaN;
}

const PCIE_TEXT = /^(?:pcie ?(?:gen ?)?|gen ?)([1-6])(?:\.0)? ?(?:x ?(\d{1,2})|(\d{1,2})x)$/;
/** The lanes before the generation. */
const PCIE_REVERSED = /^pcie ?x ?(\d{1,2})[ ,]{1,2}(?:gen ?)?([1-6])(?:\.0)?$/;
const SATA_TEXT = /^sata(?: ?([1-3])(?:\.0)?)?$/;
const USB4_TEXT = /^usb ?4 (20|40|80)(?: ?(?:gb\/s|gbps))?$/;
const USB_TEXT = /^usb ?(\d\.\d(?: gen ?\d(?:x\d)?)?)$/;

function plain(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/[®™]/g, '')
    .replace(/×/g, 'x')
    .replace(/\s+/g, ' ')
    .replace(/^pci[ -]?e(?:xpress)? ?/, 'pcie ')
    .replace(/ x ?16 \(x ?(1|2|4|8)(?: (?:mode|electrical|lanes))?\)$/, ' x$1')
    .replace(/^(sata [^()]{1,12}) \((?:sata )?[^()]{1,10}\)$/, '$1');
}

/**
 * What a text with one half of a PCIe link may mean: the generations, or the widths, that it leaves open; and the link
 * of a text that names the protocol beside it, which is no part of a link.
 */
export function linksMeant(text: string): readonly string[] | undefined {
  const alone = plain(text).replace(/^nvme (?=p)|,? nvme(?: \d\.\d[a-c]?)?$/g, '');
  const link = alone === plain(text) ? undefined : parseLink(alone);
  if (link?.bus === 'PCIe') return [`PCIe ${link.generation} x${link.lanes}`];
  const [, generation] = /^(?:pcie ?(?:gen ?)?|gen ?)([1-6])(?:\.0)?$/.exec(plain(text)) ?? [];
  if (generation) return [4, 8, 16].map((lanes) => `PCIe ${generation} x${lanes}`);
  const [, lanes] = /^(?:pcie )?x ?(1|2|4|8|16)$/.exec(plain(text)) ?? [];
  return lanes ? [3, 4, 5].map((one) => `PCIe ${one} x${lanes}`) : undefined;
}

/**
 * Other names on data sheets, without blanks and hyphens, each with the plainest spelling. Source: common practice; the
 * USB 3.2 specification for its rates; from memory: that Thunderbolt 3 and 4 run at 40 Gb/s.
 */
const OTHER_SPELLINGS: ReadonlyMap<string, string> = new Map([
  ...[
    'sataiii',
    'sata6gb/s',
    'sata6.0gb/s',
    'sata600',
    'sata6gbps',
    'sataiii6gb/s',
    'sata36gb/s',
    'serialata3',
    'serialataiii',
    'serialata6gb/s',
    'serialata6gbps',
    'sata6.0gbps',
  ].map((one): [string, string] => [one, 'sata 3']),
  ...['sataii', 'sata3gb/s', 'sata300', 'sata3.0gb/s', 'sata3gbps', 'serialataii', 'serialata3gb/s'].map(
    (one): [string, string] => [one, 'sata 2'],
  ),
  ...['serialata', 'sata'].map((one): [string, string] => [one, 'sata']),
  ...['usb3.2gen1x1', 'usb5gbps', 'usb5gb/s'].map((one): [string, string] => [one, 'usb 3.2 gen 1']),
  ...['usb3.2gen2x1', 'usb10gbps', 'usb10gb/s'].map((one): [string, string] => [one, 'usb 3.2 gen 2']),
  ...['usb20gbps', 'usb20gb/s'].map((one): [string, string] => [one, 'usb 3.2 gen 2x2']),
  ...['thunderbolt4', 'thunderbolt3', 'usb40gbps'].map((one): [string, string] => [one, 'usb4 40']),
  ['usb480mbps', 'usb 2.0'],
]);

function readPcie(text: string): PcieLink | undefined {
  const [, first, ahead, behind] = PCIE_TEXT.exec(text) ?? [];
  const [, reversed, second] = PCIE_REVERSED.exec(text) ?? [];
  const generation = first ?? second;
  const lanes = Number(ahead ?? behind ?? reversed);
  if (!PCIE_WIDTHS.includes(lanes)) return undefined;
  return { bus: 'PCIe', generation: Number(generation), lanes };
}

function readSata(text: string): SataLink | undefined {
  const match = SATA_TEXT.exec(text);
  if (!match) return undefined;
  return match[1] === undefined ? { bus: 'SATA' } : { bus: 'SATA', generation: Number(match[1]) };
}

function readUsb(text: string): UsbLink | undefined {
  const usb4 = USB4_TEXT.exec(text)?.[1];
  if (usb4) return { bus: 'USB', rate: `USB4 ${usb4}` as UsbRate };
  const name = USB_TEXT.exec(text)?.[1]?.replace(/gen(?=\d)/, 'gen ');
  if (name === undefined) return undefined;
  const rate = USB_OLDER_NAMES.get(name) ?? USB_RATE_NAMES.find((known) => known.toLowerCase() === `usb ${name}`);
  return rate && { bus: 'USB', rate };
}

/**
 * Reads a link as manuals spell it: `PCIe 5 x4`, `PCIe 4.0 x16`, `SATA`, `SATA 3`, `USB 3.2 Gen 2`.
 * Case, `×` for `x` and single spaces do not matter. Anything else is undefined: nothing is guessed.
 */
export function parseLink(text: string): Link | undefined {
  const spelled = OTHER_SPELLINGS.get(plain(text).replaceAll(' ', '').replaceAll('-', '')) ?? plain(text);
  return readPcie(spelled) ?? readSata(spelled) ?? readUsb(spelled);
}
