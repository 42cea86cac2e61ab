// `dmidecode`: the tables that the firmware gives, as structures with their lines, and what the record takes of them.
import type { Doc } from '../parts/doc';
import { linesOf, said, saidAs, saysNothing, type Printed } from './said';
import type { Said, Told } from './as-built';

/** One structure: its type, and its lines by their label. Serial numbers, tags and identifiers are not read. */
export interface Structure {
  readonly type: number;
  /** `0x0040`, by which other structures name it. */
  readonly handle: string;
  readonly values: ReadonlyMap<string, Printed>;
}

const HANDLE = /^Handle (0x[0-9A-Fa-f]{1,8}), DMI type (\d{1,3}),/;
/** A tab within a value is the next line’s, and what follows it another value. */
const VALUE = /^\t([A-Z][^:\t]{0,60}):([^\t]*)$/;
const PRIVATE = /serial|uuid|asset|tag|contact|sku/i;

export function structuresOf(doc: Doc): readonly Structure[] {
  const found: { type: number; handle: string; values: Map<string, Printed> }[] = [];
  let current: Map<string, Printed> | undefined;
  for (const { text, start } of linesOf(doc.text)) {
    const handle = HANDLE.exec(text);
    if (handle) {
      current = new Map();
      found.push({ type: Number(handle[2]), handle: handle[1]!, values: current });
      continue;
    }
    const [, label, value] = VALUE.exec(text) ?? [];
    if (!current || label === undefined || value === undefined || PRIVATE.test(label) || current.has(label)) continue;
    if (value.trim() === '') continue;
    const at = start + text.length - value.trimStart().length;
    current.set(label, { text: value.trim(), doc, span: { start: at, end: at + value.trim().length } });
  }
  return found;
}

/** The program’s version, from its first line. */
export const dmidecodeVersion = (text: string): string | undefined =>
  /^# dmidecode (\d{1,2}(?:\.\d{1,3}){1,2})\r?\n/m.exec(text)?.[1];

/** A maker’s name in words: some firmwares print its number in JEDEC’s list instead, `80CE000080CE`. */
export const makerOf = (text: string): string | undefined =>
  /\p{L}{2}/u.test(text) && !/^(?:0x)?[0-9A-F]{4,}$/i.test(text) ? text : undefined;

export function boardOf(structures: readonly Structure[]): Told {
  const [bios] = ofType(structures, 0);
  const boards = ofType(structures, 2);
  // Servers list risers and backplanes as boards too.
  const board = boards.find((one) => /^Motherboard$/i.test(one.get('Type')?.text ?? '')) ?? boards[0];
  const system = ofType(structures, 1)[0];
  const own = said(board?.get('Product Name'), 'type 2, Product Name');
  return {
    // A board’s own name is left unfilled by some: the system’s then stands for it, with the system’s maker.
    maker:
      said(board?.get('Manufacturer'), 'type 2, Manufacturer', makerOf) ??
      (own ? undefined : said(system?.get('Manufacturer'), 'type 1, Manufacturer', makerOf)),
    reports: own ?? said(system?.get('Product Name'), 'type 1, Product Name'),
    firmware: said(bios?.get('Version'), 'type 0, Version'),
    dated: said(bios?.get('Release Date'), 'type 0, Release Date', dayOf),
  };
}

/** `01/12/2026`, the month first. Source: DMTF DSP0134, SMBIOS, type 0. */
export function dayOf(text: string): string | undefined {
  const [, month = '', day = '', year = ''] = /^(\d{2})\/(\d{2})\/(\d{4})$/.exec(text) ?? [];
  return Number(month) >= 1 && Number(month) <= 12 && Number(day) >= 1 && Number(day) <= 31
    ? `${year}-${month}-${day}`
    : undefined;
}

/** The first socket that holds one. */
export const processorSaid = (structures: readonly Structure[]): Said | undefined =>
  ofType(structures, 4).flatMap((one) => said(one.get('Version'), 'type 4, Version') ?? [])[0];

export const processorMaker = (structures: readonly Structure[]): Said | undefined =>
  ofType(structures, 4).flatMap((one) => said(one.get('Manufacturer'), 'type 4, Manufacturer', makerOf) ?? [])[0];

/**
 * Whether errors of the main memory are corrected. Arrays of caches and of video memory have a line of the same name.
 * Source: DMTF DSP0134, SMBIOS, types 16 and 7.
 */
export function eccOf(structures: readonly Structure[]): Said | undefined {
  const arrays = ofType(structures, 16).filter((one) => /^System Memory$/i.test(one.get('Use')?.text ?? ''));
  const told = arrays.map((one) => eccSaid(one.get('Error Correction Type')));
  const [first] = told;
  return first && told.every((one) => one?.text === first.text) ? first : undefined;
}

function eccSaid(printed: Printed | undefined): Said | undefined {
  // “None” is an answer here.
  if (!printed) return undefined;
  const what = 'type 16, Error Correction Type';
  if (/^None$/i.test(printed.text)) return saidAs(printed, 'false', what);
  return /\bECC\b|^CRC$/i.test(printed.text) ? saidAs(printed, 'true', what) : undefined;
}

const ofType = (structures: readonly Structure[], type: number): ReadonlyMap<string, Printed>[] =>
  structures.filter((one) => one.type === type).map(({ values }) => values);

/** What arrays that are no main memory are for. Source: DMTF DSP0134, SMBIOS, type 16, Use. */
const OTHER_USE = /^(?:Video Memory|Flash Memory|Non-volatile RAM|Cache Memory)$/i;

/** The modules of the main memory; empty slots are none, and what stores the firmware or pictures is none. */
export function modulesOf(structures: readonly Structure[]): readonly Told[] {
  const others = structures
    .filter(({ type, values }) => type === 16 && OTHER_USE.test(values.get('Use')?.text ?? ''))
    .map(({ handle }) => handle);
  const fitted = ofType(structures, 17).filter(
    (one) =>
      sizeOf(one.get('Size')?.text ?? '') !== undefined &&
      !others.includes(one.get('Array Handle')?.text ?? '') &&
      !/^(?:Flash|VRAM|(?:F?E?E?P)?ROM)$/i.test(one.get('Type')?.text ?? ''),
  );
  const channels = twoControllers(fitted.map((one) => one.get('Locator')?.text ?? ''));
  const told = fitted.map((one) => {
    const locator = one.get('Locator');
    const bank = one.get('Bank Locator');
    const words = [bank?.text, locator?.text].filter((text) => text !== undefined && !saysNothing(text)).join(' / ');
    const slot = locator && slotOf(locator.text, bank?.text ?? '', channels);
    const type = one.get('Type')?.text;
    const standard = rateOf(one, ['Speed'], undefined, type);
    return {
      slot: locator && slot !== undefined ? saidAs(locator, slot, 'type 17, Locator') : undefined,
      locator: locator && words !== '' ? saidAs(locator, words, 'type 17, Bank Locator and Locator') : undefined,
      maker: said(one.get('Manufacturer'), 'type 17, Manufacturer', makerOf),
      reports: said(one.get('Part Number'), 'type 17, Part Number'),
      capacity: said(one.get('Size'), 'type 17, Size', sizeOf),
      standard,
      running: rateOf(one, ['Configured Memory Speed', 'Configured Clock Speed'], standard, type),
    };
  });
  return eachInItsSlot(told);
}

/** Two processors’ slots may bear the same names: what two modules would sit in is neither’s. */
export const eachInItsSlot = <T extends { readonly slot: Said | undefined }>(modules: readonly T[]): readonly T[] =>
  modules.map((one) => {
    const same = modules.filter(({ slot }) => one.slot !== undefined && slot?.text === one.slot.text);
    return same.length > 1 ? { ...one, slot: undefined } : one;
  });

/** `32 GB` and `32768 MB` count in units of 1024. Source: DMTF DSP0134, SMBIOS, type 17, Size. */
export function sizeOf(text: string): string | undefined {
  const [, digits = '', prefix = ''] = /^(\d{1,9}) ?([kMGT])i?B$/.exec(text.trim()) ?? [];
  const size = Number(digits);
  if (!(size > 0)) return undefined;
  if (prefix === 'M' && size % 1024 === 0) return `${size / 1024} GiB`;
  return `${size} ${prefix === 'k' ? 'K' : prefix}iB`;
}

/** Lowest rates of memory generations in MT/s. Source: JEDEC JESD79-3, JESD79-4, JESD79-5. */
const LOWEST_MTS: Readonly<Record<string, number>> = { DDR3: 800, DDR4: 1600, DDR5: 3200 };

/**
 * A rate in MT/s. Some firmware prints the clock, which is half of it: plain where it is half of the module’s own
 * rate, or below what its generation can run.
 */
function rateOf(
  one: ReadonlyMap<string, Printed>,
  labels: readonly string[],
  standard: Said | undefined,
  type = '',
): Said | undefined {
  const label = labels.find((name) => one.has(name));
  if (label === undefined) return undefined;
  return said(one.get(label), `type 17, ${label}`, (text) => {
    const rate = Number(/^(\d{2,5}) ?(?:MT\/s|MHz)$/.exec(text)?.[1] ?? 0);
    if (rate === 0) return undefined;
    const own = standard ? Number.parseInt(standard.text, 10) : 0;
    const isClock = Math.abs(rate * 2 - own) <= 2 || rate < (LOWEST_MTS[type] ?? 0);
    return `${isClock ? rate * 2 : rate} MT/s`;
  });
}

const CONTROLLER = /^Controller(\d)-?Channel([A-H])-?DIMM(\d)$/i;

/** Whether two controllers have one channel each, both called A: the controller is then the channel. */
export function twoControllers(locators: readonly string[]): boolean {
  const read = locators.map((one) => CONTROLLER.exec(one));
  return read.every((one) => one?.[2]?.toUpperCase() === 'A') && new Set(read.map((one) => one?.[1])).size > 1;
}

/**
 * The slot that a board prints, from the firmware’s words: `DIMM n` of `CHANNEL X` counts from 0; `DIMM_A2` and `A2`
 * are the slot itself. Source: common practice; undefined for any other words.
 */
export function slotOf(locator: string, bank: string, byController = false): string | undefined {
  const plain = /^(?:DIMM[_ -]?)?([A-P]) ?([1-9]\d?)$/i.exec(locator.trim());
  if (plain) return `${plain[1]!.toUpperCase()}${plain[2]!}`;
  const controlled = CONTROLLER.exec(locator.trim());
  if (controlled) {
    const letter = byController ? 'ABCDEFGH'[Number(controlled[1])] : controlled[2]!.toUpperCase();
    return letter && `${letter}${Number(controlled[3]) + 1}`;
  }
  const channel = /\bCHANNEL ?([A-H])\b/i.exec(`${bank} ${locator}`)?.[1];
  const number = /\bDIMM ?(\d)\b/i.exec(locator)?.[1] ?? /\bDIMM ?(\d)\b/i.exec(bank)?.[1];
  return channel && number ? `${channel.toUpperCase()}${Number(number) + 1}` : undefined;
}

/** A row of the table of slots: its name on the board, and the PCI address beside it. */
export interface SlotRow {
  readonly name: Said;
  readonly address: string;
  readonly inUse: boolean;
}

export function slotRows(structures: readonly Structure[]): readonly SlotRow[] {
  return ofType(structures, 9).flatMap((one) => {
    const name = said(one.get('Designation'), 'type 9, Designation and Bus Address');
    const address = /^(?:0000:)?([0-9a-f]{2}:[0-9a-f]{2}\.[0-7])$/i.exec(one.get('Bus Address')?.text ?? '')?.[1];
    const inUse = /^In Use$/i.test(one.get('Current Usage')?.text ?? '');
    return name && address !== undefined ? [{ name, address: address.toLowerCase(), inUse }] : [];
  });
}
