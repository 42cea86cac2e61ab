// The data block by which a display names itself, read from its bytes or from a print of them in hexadecimal.
// Source: VESA E-EDID Standard, release A2; CTA-861-H; VESA DisplayID Standard 2.0. Serial numbers are never read.
import { CTA_MODES } from '../trade/cta-modes';
import { displayIdTimings } from './display-id';
import { reading, type Reading } from './reading';

export interface EdidMode {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly refreshHz: number;
}

export interface Edid {
  /** Three letters that stand for the maker. */
  readonly maker?: Reading<string>;
  readonly name?: Reading<string>;
  /** What this block is read through; a display has one for each of its inputs. */
  readonly input?: Reading<'HDMI' | 'DisplayPort' | 'DVI' | 'VGA'>;
  /** The link of an HDMI input, as our files spell it, where its data state one of the standard’s own steps. */
  readonly link?: Reading<string>;
  /** Whether an HDMI input takes a compressed picture. */
  readonly compression?: Reading<boolean>;
  /** Progressive modes, in the order in which the block names them, the preferred one first; none twice. */
  readonly modes: readonly Reading<EdidMode>[];
  /** What could not be read, each in a sentence’s words. */
  readonly problems: readonly string[];
}

const BLOCK = 128;
const HEADER = [0, 255, 255, 255, 255, 255, 255, 0] as const;

export const isEdid = (bytes: Uint8Array): boolean => HEADER.every((byte, at) => bytes[at] === byte);

/** No print of an EDID is longer; past it nothing is tried. */
const longestPrint = 200_000;

/**
 * The bytes that a text prints in hexadecimal: a bare string of them, `xxd`, `hexdump -C`, or the head of what
 * `edid-decode` prints. Undefined where the text is no such print.
 */
export function edidBytes(text: string): Uint8Array | undefined {
  if (text.length > longestPrint) return undefined;
  const found: number[] = [];
  for (const line of text.split(/\r\n?|\n/)) {
    const digits = hexOf(line);
    if (digits === undefined) {
      if (found.length > 0 && line.trim() !== '') break;
      continue;
    }
    for (let at = 0; at + 1 < digits.length; at += 2) found.push(Number.parseInt(digits.slice(at, at + 2), 16));
  }
  const bytes = Uint8Array.from(found);
  return isEdid(bytes) ? bytes : undefined;
}

/** The digits of a line that prints bytes: an address before them and their letters behind are left out. */
function hexOf(line: string): string | undefined {
  const bare = line
    .replace(/\|[^|]{0,16}\|\s*$/, '')
    .replace(/^\s*[0-9a-f]{4,8}(?:: ?| {2})/i, '')
    .replace(/ {2}[\x20-\x7e]{1,16}$/, (tail) => (/^[0-9a-f\s]+$/i.test(tail) ? tail : ''))
    .replace(/0x|,/gi, ' ')
    .trim();
  const digits = bare.replace(/\s+/g, '');
  return digits !== '' && digits.length % 2 === 0 && /^[0-9a-f]+$/i.test(digits) ? digits : undefined;
}

const hasSum = (block: Uint8Array): boolean =>
  block.length === BLOCK && block.reduce((sum, byte) => sum + byte, 0) % 256 === 0;

/** Reads a display’s block and its extensions. A block whose check sum fails is left out and told. */
export function readEdid(bytes: Uint8Array): Edid {
  const base = bytes.slice(0, BLOCK);
  if (!isEdid(bytes)) return { modes: [], problems: ['it does not begin as an EDID does'] };
  if (!hasSum(base)) return { modes: [], problems: ['the check sum of its first block fails'] };
  const problems: string[] = [];
  const modes = new Modes();
  const extensions = extensionsOf(bytes, problems);
  const known = { ...identity(base), ...inputOf(base) };
  detailed(base, 54, 'byte', modes);
  const hdmi = extensions.map(({ block, where }) => extension(block, where, modes));
  standard(base, modes);
  return { ...known, ...Object.assign({}, ...hdmi), modes: modes.found, problems };
}

interface Extension {
  readonly block: Uint8Array;
  /** `block 1, byte`, before an offset within it. */
  readonly where: string;
}

function extensionsOf(bytes: Uint8Array, problems: string[]): Extension[] {
  const found: Extension[] = [];
  for (let index = 1; index <= bytes[126]!; index++) {
    const block = bytes.slice(index * BLOCK, (index + 1) * BLOCK);
    if (hasSum(block)) found.push({ block, where: `block ${index}, byte` });
    else problems.push(block.length < BLOCK ? `block ${index} is cut off` : `the check sum of block ${index} fails`);
  }
  return found;
}

/** Modes as they are found: progressive ones, none twice. */
class Modes {
  readonly found: Reading<EdidMode>[] = [];
  private readonly seen = new Set<string>();

  add(widthPx: number, heightPx: number, refreshHz: number, where: string): void {
    const hz = Number(refreshHz.toFixed(2));
    const key = `${widthPx}x${heightPx}@${hz}`;
    if (!(widthPx > 0 && heightPx > 0 && hz >= 1 && hz <= 1000) || this.seen.has(key)) return;
    this.seen.add(key);
    this.found.push(reading({ widthPx, heightPx, refreshHz: hz }, `${widthPx}x${heightPx} at ${hz} Hz, ${where}`));
  }
}

function identity(base: Uint8Array): Pick<Edid, 'maker' | 'name'> {
  const packed = (base[8]! << 8) | base[9]!;
  const letters = [10, 5, 0].map((shift) => ((packed >> shift) & 31) + 64);
  const maker = letters.every((code) => code > 64 && code <= 90) ? String.fromCharCode(...letters) : undefined;
  const name = [54, 72, 90, 108].map((at) => nameAt(base, at)).find((one) => one !== undefined);
  return {
    ...(maker === undefined ? {} : { maker: reading(maker, `${maker}, byte 8`) }),
    ...(name === undefined ? {} : { name }),
  };
}

/** The display’s name, where this descriptor holds it: printable letters up to a line feed. */
function nameAt(base: Uint8Array, at: number): Reading<string> | undefined {
  if (base[at] !== 0 || base[at + 1] !== 0 || base[at + 3] !== 0xfc) return undefined;
  const end = base.indexOf(0x0a, at + 5);
  const letters = base.slice(at + 5, end < 0 || end > at + 18 ? at + 18 : end);
  const name = String.fromCharCode(...letters).trim();
  return /^[\x20-\x7e]+$/.test(name) ? reading(name, `${name}, byte ${at}`) : undefined;
}

const INTERFACES: Readonly<Record<number, 'HDMI' | 'DisplayPort' | 'DVI'>> = {
  1: 'DVI',
  2: 'HDMI',
  3: 'HDMI',
  5: 'DisplayPort',
};

/** A digital input says what it is from release 1.4 on. */
function inputOf(base: Uint8Array): Pick<Edid, 'input'> {
  const byte = base[20]!;
  if ((byte & 0x80) === 0) return { input: reading('VGA', 'an analogue input, byte 20') };
  if (base[18] !== 1 || base[19]! < 4) return {};
  const input = INTERFACES[byte & 15];
  return input ? { input: reading(input, `${input}, byte 20`) } : {};
}

/** Detailed timings stand in pieces of 18 bytes; a piece that begins with zeros is something else. */
function detailed(block: Uint8Array, from: number, where: string, modes: Modes, end = 126): void {
  for (let at = from; at + 18 <= end; at += 18) {
    const clockHz = (block[at]! | (block[at + 1]! << 8)) * 10_000;
    if (clockHz === 0) continue;
    const twelve = (low: number, high: number, shift: number): number =>
      block[at + low]! | (((block[at + high]! >> shift) & 15) << 8);
    const [width, widthBlank] = [twelve(2, 4, 4), twelve(3, 4, 0)];
    const [height, heightBlank] = [twelve(5, 7, 4), twelve(6, 7, 0)];
    const isInterlaced = (block[at + 17]! & 0x80) !== 0;
    const hz = clockHz / ((width + widthBlank) * (height + heightBlank));
    if (!isInterlaced) modes.add(width, height, hz, `${where} ${at}`);
  }
}

const SHAPES: readonly (readonly [number, number])[] = [
  [16, 10],
  [4, 3],
  [5, 4],
  [16, 9],
];

/** Standard timings: width by eight, shape and rate; before release 1.3 the first shape was another. */
function standard(base: Uint8Array, modes: Modes): void {
  for (let at = 38; at < 54; at += 2) {
    const [wide, rest] = [base[at]!, base[at + 1]!];
    if (wide <= 1 && rest <= 1) continue;
    const shape = SHAPES[rest >> 6]!;
    if (rest >> 6 === 0 && base[19]! < 3) continue;
    const width = (wide + 31) * 8;
    modes.add(width, Math.round((width * shape[1]) / shape[0]), (rest & 63) + 60, `byte ${at}`);
  }
}

type Hdmi = Pick<Edid, 'input' | 'link' | 'compression'>;

function extension(block: Uint8Array, where: string, modes: Modes): Hdmi {
  if (block[0] === 0x70) {
    for (const one of displayIdTimings(block))
      modes.add(one.widthPx, one.heightPx, one.refreshHz, `${where} ${one.at}`);
    return {};
  }
  if (block[0] !== 2) return {};
  const timings = block[2]!;
  let hdmi: Hdmi = {};
  if (block[1]! >= 3 && timings >= 4 && timings <= 127) {
    for (let at = 4; at < timings; at += (block[at]! & 31) + 1) {
      hdmi = { ...hdmi, ...dataBlock(block.slice(at, at + (block[at]! & 31) + 1), `${where} ${at}`, modes) };
    }
  }
  if (timings >= 4) detailed(block, timings, where, modes, 127);
  return hdmi;
}

/** A display states an HDMI input by the data block of that standard’s licensor. */
function dataBlock(data: Uint8Array, where: string, modes: Modes): Hdmi {
  const tag = data[0]! >> 5;
  if (tag === 2) {
    for (const code of data.slice(1)) addCode(code > 128 && code < 193 ? code & 127 : code, where, modes);
    return {};
  }
  const licensor = tag === 3 ? ((data[3]! << 16) | (data[2]! << 8) | data[1]!) >>> 0 : 0;
  if (licensor === 0x000c03) return { input: reading('HDMI', `HDMI, ${where}`) };
  return licensor === 0xc45dd8 && data.length >= 7 ? forum(data, where) : {};
}

function addCode(code: number, where: string, modes: Modes): void {
  const [, width, height, hz] = /^(\d+)x(\d+)@([\d.]+)$/.exec(CTA_MODES.get(code) ?? '') ?? [];
  if (hz !== undefined) modes.add(Number(width), Number(height), Number(hz), `${where}, code ${code}`);
}

/** Gb/s of the fixed-rate steps that are named in our files. Source: HDMI Specification 2.1a, sink capabilities. */
const FIXED_RATES: Readonly<Record<number, number>> = { 3: 24, 4: 32, 5: 40, 6: 48 };

function forum(data: Uint8Array, where: string): Hdmi {
  const rate = data.length > 7 ? FIXED_RATES[data[7]! >> 4] : undefined;
  const clockMHz = data[5]! * 5;
  const link = rate ? `HDMI 2.1 FRL ${rate}` : clockMHz === 600 && !(data[7]! >> 4) ? 'HDMI 2.0' : undefined;
  const takesCompressed = data.length > 11 ? (data[11]! & 0x80) !== 0 : undefined;
  return {
    ...(link ? { link: reading(link, `${link}, ${where}`) } : {}),
    ...(takesCompressed === true ? { compression: reading(true, `a compressed picture, ${where}`) } : {}),
  };
}
