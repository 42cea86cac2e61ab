// M.2: which module goes into which socket by key and size, and what a socket may carry at most.
import { parseLink, type Link } from './links';
import { needCount } from './numbers';

export type M2Key = 'A' | 'B' | 'E' | 'M';

export const M2_KEYS: readonly M2Key[] = ['A', 'B', 'E', 'M'];

function isKey(text: string): text is M2Key {
  return (M2_KEYS as readonly string[]).includes(text);
}

/** The pairs of notches that modules carry. Source: drive makers' M.2 module manuals. */
const DOUBLE_NOTCHES: readonly string[] = ['A+E', 'B+M'];

/** Reads a module's keys, `M` or `B+M`, in any case and order; undefined when no module is cut that way. */
export function parseM2Keys(text: string): readonly M2Key[] | undefined {
  const keys = text
    .toUpperCase()
    .split('+')
    .map((part) => part.trim())
    .sort();
  if (!keys.every(isKey)) return undefined;
  return keys.length === 1 || DOUBLE_NOTCHES.includes(keys.join('+')) ? keys : undefined;
}

/** True when one of the module's notches meets the socket's only key. Says nothing about the bus. */
export function m2KeyFits(moduleKeys: readonly M2Key[], socketKey: M2Key): boolean {
  return moduleKeys.includes(socketKey);
}

/** How far components stand out from a module at most, a side. Source: drive makers' M.2 module manuals. */
export const M2_COMPONENTS_MM = 1.5;

/** Thickness of a module's own board. From memory: 0.8 mm. */
export const M2_BOARD_MM = 0.8;

/**
 * The least that a module measures over all: its board, and the lowest components that the standard has a code for.
 * From memory: 1.2 mm.
 */
export const M2_THINNEST_MM = M2_BOARD_MM + 1.2;

/** A module's board: `2280` is 22 × 80 mm. */
export interface M2Size {
  readonly widthMm: number;
  readonly lengthMm: number;
}

/** Widths and lengths of the standard. Source: drive makers' M.2 module manuals. */
export const M2_WIDTHS_MM: readonly number[] = [12, 16, 22, 30];
export const M2_LENGTHS_MM: readonly number[] = [16, 26, 30, 38, 42, 60, 80, 110];

/**
 * A size as sheets print it: with or without the shape before it, and the code of its heights and notches behind it.
 * Source: drive makers’ data sheets.
 */
const SIZE_TEXT = /^(?:(?:type|m\.?2|ngff)[ -]?)?\(?(\d{2}) ?[x×]? ?([1-9]\d{1,2})(?: ?mm)?\)?$/i;
/** Sides with parts on them, and keys, behind the size: `-D2-B-M`. */
const SIZE_SUFFIX = /[ -][sd][1-5](?:[ -][abem](?:[+-][abem])?)?$/i;

/** Reads a size: two digits of width, two or three of length; undefined when the standard has no such size. */
export function parseM2Size(text: string): M2Size | undefined {
  const [, width, length] = SIZE_TEXT.exec(text.trim().replace(SIZE_SUFFIX, '')) ?? [];
  const size = { widthMm: Number(width), lengthMm: Number(length) };
  return M2_WIDTHS_MM.includes(size.widthMm) && M2_LENGTHS_MM.includes(size.lengthMm) ? size : undefined;
}

/** The code of a size in millimetres. Throws RangeError unless both are whole numbers of at least 1. */
export function m2SizeCode(size: M2Size): string {
  needCount('widthMm', size.widthMm, 1);
  needCount('lengthMm', size.lengthMm, 1);
  return `${size.widthMm}${size.lengthMm}`;
}

/**
 * What an M.2 socket carries: a link, or plain `USB`, which the keys A and E have as USB 2.0.
 * Source: PCI Express M.2 Specification, sockets of keys A and E.
 */
export const parseCarried = (text: string): Link | undefined =>
  parseLink(text) ?? (text.trim().toLowerCase() === 'usb' ? { bus: 'USB', rate: 'USB 2.0' } : undefined);
