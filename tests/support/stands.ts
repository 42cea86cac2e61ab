// Whether a fact that was read of a machine stands in the output, in the output’s own words: worked out from the line
// and from what the tools and standards mean by their words, not by what reads them.
import type { Fact } from '../../server/src/core/parts/fact';
import { holdsSize, parseHex } from './edid-bytes';

export interface ReadFact {
  readonly key: string;
  readonly text: string;
  /** The line, or lines, that it points at. */
  readonly line: string;
  /** The whole output. */
  readonly all: string;
  /** The output’s file. */
  readonly file: string;
}

const numbersIn = (text: string): number[] => (text.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);
const hasNumber = (text: string, value: number): boolean => numbersIn(text).includes(value);
const firstNumber = (text: string): number => numbersIn(text)[0] ?? Number.NaN;
/** A line, and what the texts in quotes on it come to. */
const plain = (line: string): string =>
  [line, ...(line.match(/"(?:[^"\\]|\\.)*"/g) ?? []).flatMap(unquoted)].join('\n');

function unquoted(text: string): string[] {
  try {
    return [JSON.parse(text) as string];
  } catch {
    return [];
  }
}

const has = (line: string, words: string): boolean => line.includes(words) || plain(line).includes(words);

const BINARY: Readonly<Record<string, number>> = { K: 2 ** 10, M: 2 ** 20, G: 2 ** 30, T: 2 ** 40, P: 2 ** 50 };

/** `32 GiB` as `32 GB` or `32768 MB` of memory; `2.0004 TB` as bytes; a range as a rounded size. */
function standsSize({ text, line, all }: ReadFact): boolean {
  const said = [...line.matchAll(/(\d+(?:[.,]\d)?) ?([kKMGTP]?)(?:i?B)?(?![\d.])/g)].flatMap(([, digits, prefix]) => {
    const value = Number(digits!.replace(',', '.'));
    return [value, value * (BINARY[prefix!.toUpperCase()] ?? 1)];
  });
  const [, low = '', high, prefix = '', binary] = /^([\d.]+)(?: to ([\d.]+))? ([KMGTP])(i?)B$/.exec(text) ?? [];
  const unit = binary ? BINARY[prefix]! : 1000 ** ('KMGTP'.indexOf(prefix) + 1);
  const [least, most] = [Number(low) * unit, Number(high ?? low) * unit];
  const slack = high === undefined ? 1e-5 : 0;
  return all !== '' && said.some((one) => one >= least * (1 - slack) && one <= most * (1 + slack));
}

/** Source: PCI Express Base Specification, transfer rates; Serial ATA Specification, 1.5, 3 and 6 Gb/s. */
function standsLink({ text, line, all }: ReadFact): boolean {
  const [, bus, generation, lanes] = /^(PCIe|SATA) (\d)(?: x(\d+))?$/.exec(text) ?? [];
  if (bus === 'SATA') return hasNumber(line, { 1: 1.5, 2: 3, 3: 6 }[generation!]!);
  const rate = { 1: 2.5, 2: 5, 3: 8, 4: 16, 5: 32, 6: 64 }[generation!];
  const [hasRate, hasWidth] = [`Speed ${rate}(?:\\.0)?GT/s`, `Width x0*${lanes}(?!\\d)`].map(
    (form) => new RegExp(form),
  );
  // Of the two ends of a link the lesser counts, in rate and in width: each stands at one of them.
  const isHere = hasRate!.test(line) || hasWidth!.test(line);
  return isHere && hasRate!.test(all) && hasWidth!.test(all);
}

/** `A2`: the letter of the channel, and the number or, counted from 0, the one before it. */
function standsSlot({ text, line, all }: ReadFact): boolean {
  const [, letter = '', digit = ''] = /^([A-H])(\d)$/.exec(text) ?? [];
  if (new RegExp(`${letter} ?${digit}\\b`, 'i').test(line)) return true;
  const isChannel = new RegExp(`channel ?-?${letter}`, 'i').test(all) || /Controller\d/i.test(line);
  return isChannel && new RegExp(`DIMM ?${Number(digit) - 1}(?!\\d)`, 'i').test(`${line}${all}`);
}

function standsDay({ text, line }: ReadFact): boolean {
  const ms = /Date\((\d+)/.exec(line)?.[1];
  if (ms !== undefined && Math.abs(Date.parse(text) - Number(ms)) < 86_400_000) return true;
  const [year, month, day] = text.split('-') as [string, string, string];
  return [`${month}/${day}/${year}`, text, year + month + day].some((one) => line.includes(one));
}

/** Letters by their codes, in the order of a list. */
const letters = (all: string): string =>
  [...all.matchAll(/\[([\d,\s]*)\]/g)]
    .map(([, list]) => String.fromCharCode(...numbersIn(list!).filter((code) => code >= 32)))
    .join('\n');

function standsDisplay({ key, text, all, file }: ReadFact): boolean {
  if (file.endsWith('.json')) {
    const named = letters(all)
      .split('\n')
      .map((one) => one.trim());
    return named.includes(text) || named.some((one) => text.startsWith(one) && named.includes(text.slice(one.length)));
  }
  const bytes = bytesOf(all);
  const latin = String.fromCharCode(...bytes);
  if (key === 'reports') return latin.includes(text);
  if (key === 'id') {
    const packed = (bytes[8]! << 8) | bytes[9]!;
    const maker = String.fromCharCode(...[10, 5, 0].map((shift) => ((packed >> shift) & 31) + 64));
    return text === maker + [11, 10].map((at) => bytes[at]!.toString(16).toUpperCase().padStart(2, '0')).join('');
  }
  return holdsSize(bytes, /^\d+x\d+/.exec(text)![0]);
}

/** The bytes of the text that was asked after last. */
let asked: { readonly text: string; readonly bytes: readonly number[] } = { text: '', bytes: [] };
function bytesOf(text: string): readonly number[] {
  if (asked.text !== text) asked = { text, bytes: parseHex(text) };
  return asked.bytes;
}

type Stands = (fact: ReadFact) => boolean;
const words: Stands = ({ text, line }) => has(line, text);
const oneOf =
  (said: Readonly<Record<string, RegExp>>): Stands =>
  ({ text, line }) =>
    said[text]?.test(line) ?? false;
const rate: Stands = ({ text, line }) => [1, 2].some((times) => hasNumber(line, Number.parseInt(text, 10) / times));
const number: Stands = ({ text, line }) => hasNumber(line, firstNumber(text));
/** What a chip or a file is called, each word of it. */
const eachWord: Stands = ({ text, all }) => text.split(/ (?:\/ )?/).every((word) => has(all, word));
const address: Stands = ({ text, line }) => line.toLowerCase().includes(text);

const byKey: Readonly<Record<string, Stands>> = {
  capacity: standsSize,
  standard: rate,
  running: rate,
  link: standsLink,
  able: standsLink,
  slot: standsSlot,
  locator: eachWord,
  dated: standsDay,
  'memory-ecc': oneOf({ false: /None|: *"?3\b/i, true: /ECC|CRC|: *"?[56]\b/i }),
  bus: oneOf({
    NVMe: /nvme|: *"?17\b|\[0108\]|Non-Volatile/i,
    SATA: /sata|ATA|: *"?11\b/,
    USB: /usb|: *"?7\b|ATA|NVMe/i,
    SAS: /sas|: *"?10\b/i,
  }),
  health: oneOf({ passed: /true|: *"?0\b|Healthy/i, failed: /false|: *"?2\b|Unhealthy/i }),
  warning: oneOf({ false: /: *0+\b/, true: /: *0*[1-9]/ }),
  hours: number,
  worn: number,
  // The sum of up to three counts.
  'media-errors': ({ text, line, all }) =>
    hasNumber(line, Number(text)) || (numbersIn(line).some((one) => one <= Number(text)) && numbersIn(all).length > 1),
  temperature: ({ text, line }) => numbersIn(line).some((one) => Math.abs(one - firstNumber(text)) <= 0.05),
  speed: ({ text, line }) => numbersIn(line).some((one) => Math.abs(one - firstNumber(text)) <= 0.05),
  sensor: eachWord,
  of: ({ text, all }) =>
    ({
      processor: /temp|cpu|zenpower/,
      drive: /nvme|drivetemp|Counter|Temperature/,
      graphics: /gpu|nouveau|radeon|xe|i915/,
    })[text]?.test(all) ?? false,
  address,
  // `PCIROOT(0)#PCI(0100)#PCI(0000)` is behind device 01, function 0.
  port: ({ text, line, ...more }) =>
    address({ text, line, ...more }) ||
    line.toUpperCase().includes(`#PCI(${text.slice(3, 5)}0${text.slice(6)})#`.toUpperCase()),
  id: ({ text, line }) =>
    address({ text, line } as ReadFact) ||
    text.split(':').every((half) => new RegExp(`(?:VEN|DEV)_${half}`, 'i').test(plain(line))),
  class: ({ text, line, file }) =>
    file.includes('VideoController') ||
    line.includes(`[${text}]`) ||
    /^\S+ (?:VGA|3D|Display|Non-Vol|SATA|PCI|Host|ISA|SMBus)/.test(line),
  connector: ({ text, file }) => file.includes(text),
  read: ({ text, file }) => (text === 'load') === file.includes('load'),
  // A version may stand as a list: `[7, 4]`.
  from: ({ text, all }) => {
    const version = /[\d.]+$/.exec(text)?.[0];
    return version === undefined || new RegExp(`(?<!\\d)${version.replaceAll('.', '[.,\\s]+')}(?!\\d)`).test(all);
  },
};

/** What displays say of themselves stands in bytes and codes. */
export const stands = (fact: ReadFact): boolean =>
  /edid|WmiMonitor/.test(fact.file) && ['reports', 'id', 'modes'].includes(fact.key)
    ? standsDisplay(fact)
    : (byKey[fact.key] ?? words)(fact);

export const readFact = ({ key, text, doc, node }: Fact<unknown>): ReadFact | undefined => {
  if (!node) return undefined;
  const { start, end } = node.span;
  const from = Math.max(doc.text.lastIndexOf('\n', start - 1), doc.text.lastIndexOf('\r', start - 1)) + 1;
  const to = /[\r\n]|$/.exec(doc.text.slice(end))!.index + end;
  return { key, text, line: doc.text.slice(from, to), all: doc.text, file: doc.name };
};
