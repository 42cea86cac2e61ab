// `lspci -vvnn`: devices with their numbers, names, links and buses. What is broken in the middle is skipped.
import type { Doc } from '../parts/doc';
import { pcieGenerationAt } from '../trade/links';
import { linesOf, type Printed } from './said';

/** One end of a link, as LnkCap or LnkSta prints it. */
export interface LinkEnd extends Printed {
  readonly generation: number;
  readonly lanes: number;
}

export interface Device {
  /** With the domain where that is not 0000, in small letters: `03:00.0`. */
  readonly address: string;
  readonly at: Printed;
  /** Four hexadecimal digits. */
  readonly classCode?: string;
  /** `vendor:device`. */
  readonly id?: Printed;
  /** The bus behind a bridge, with its domain, and the last one below it. */
  readonly secondary?: string;
  /** What kind of port or endpoint it is, in the words behind “Express (v2)”. */
  readonly express?: string;
  readonly able?: LinkEnd;
  readonly trained?: LinkEnd;
  /** Who made the card, where the line that says it gives the card no name behind the maker’s. */
  readonly maker?: Printed;
  /** A port to what is built into the processor: it has no slot, and its name says so. */
  readonly isInternal: boolean;
}

const HEAD = /^((?:[0-9a-f]{4,8}:)?[0-9a-f]{2}:[0-9a-f]{2}\.[0-7]) (\S.*)$/i;

export function devicesOf(doc: Doc): readonly Device[] {
  const found: Draft[] = [];
  let current: Draft | undefined;
  for (const { text, start } of linesOf(doc.text)) {
    const head = HEAD.exec(text);
    if (head) found.push((current = headOf(doc, head[1]!, head[2]!, start)));
    else if (text === '' || !/^\s/.test(text)) current = text === '' ? undefined : current;
    else if (current) lineOf(doc, current, text, start);
  }
  return found;
}

type Draft = { -readonly [K in keyof Device]: Device[K] };

/** Without `-nn` a class stands in words alone. Source: the PCI ID Repository’s names of classes. */
const CLASS_WORDS: readonly (readonly [string, string])[] = [
  ['VGA compatible controller', '0300'],
  ['3D controller', '0302'],
  ['Display controller', '0380'],
  ['Non-Volatile memory controller', '0108'],
  ['SATA controller', '0106'],
  ['PCI bridge', '0604'],
  ['Host bridge', '0600'],
  ['ISA bridge', '0601'],
  ['SMBus', '0c05'],
];

const classByWords = (rest: string): string | undefined =>
  CLASS_WORDS.find(([words]) => rest.startsWith(`${words}:`))?.[1];

const plainAddress = (address: string): string => address.toLowerCase().replace(/^0000:/, '');

/** The domain and bus that an address lies on. */
export const busOf = (address: string): string => address.slice(0, address.lastIndexOf(':'));

/** Older boards have no slot, `Slot-`, at ports of cards either: the port’s name has to say it too. */
const INTERNAL = /\bInternal\b.{0,40}\bBridge\b/;

function headOf(doc: Doc, address: string, rest: string, start: number): Draft {
  const at = { text: plainAddress(address), doc, span: { start, end: start + address.length } };
  // The last number in brackets before a revision is the device’s own; the first is its class.
  const classCode = /^[^[\]:]*\[([0-9a-f]{4})\]:/i.exec(rest)?.[1]?.toLowerCase() ?? classByWords(rest);
  const numbers = [...rest.matchAll(/\[([0-9a-f]{4}:[0-9a-f]{4})\]/gi)].at(-1);
  const offset = start + address.length + 1;
  return {
    address: at.text,
    at,
    isInternal: INTERNAL.test(rest),
    ...(classCode === undefined ? {} : { classCode }),
    ...(numbers
      ? {
          id: {
            text: numbers[1]!.toLowerCase(),
            doc,
            span: { start: offset + numbers.index + 1, end: offset + numbers.index + 10 },
          },
        }
      : {}),
  };
}

function lineOf(doc: Doc, device: Draft, text: string, start: number): void {
  const buses = /^\tBus: primary=[0-9a-f]{2}, secondary=([0-9a-f]{2}), subordinate=[0-9a-f]{2}/i.exec(text);
  if (buses) device.secondary ??= `${domainOf(device.address)}${buses[1]!.toLowerCase()}`;
  const express = /^\tCapabilities: \[[0-9a-f]{2,3}\] Express (?:\(v\d\) )?([A-Z][A-Za-z -]{0,40})/.exec(text);
  if (express) device.express ??= express[1]!.trim();
  const [, before = '', maker] = /^(\tSubsystem: )(\S.{0,80}?) Device \[[0-9a-f]{4}:[0-9a-f]{4}\]$/i.exec(text) ?? [];
  if (maker !== undefined) {
    const at = start + before.length;
    device.maker ??= { text: maker, doc, span: { start: at, end: at + maker.length } };
  }
  if (express) device.isInternal &&= /\(Slot-\)/.test(text);
  const able = /^\t\tLnkCap:\t/.test(text) ? endOf(doc, text, start) : undefined;
  if (able) device.able ??= able;
  const trained = /^\t\tLnkSta:\t/.test(text) ? endOf(doc, text, start) : undefined;
  if (trained) device.trained ??= trained;
}

const domainOf = (address: string): string => /^[0-9a-f]{4,8}:(?=[0-9a-f]{2}:)/.exec(address)?.[0] ?? '';

function endOf(doc: Doc, text: string, start: number): LinkEnd | undefined {
  const read = /Speed (\d{1,2}(?:\.\d)?)GT\/s(?: \([a-z]+\))?, Width x(\d{1,2})(?!\.?\d)/.exec(text);
  const generation = pcieGenerationAt(Number(read?.[1]));
  const lanes = Number(read?.[2] ?? 0);
  if (!read || generation === undefined || lanes === 0) return undefined;
  return {
    text: read[0],
    doc,
    span: { start: start + read.index, end: start + read.index + read[0].length },
    generation,
    lanes,
  };
}
