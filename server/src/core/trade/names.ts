// Names of sockets from an open standard, and what a socket's name says about its pins.

/**
 * Processor upgrade codes 01h to 57h, in order.
 * Source: DMTF DSP0134, SMBIOS Reference Specification 3.8, table of processor upgrade values.
 */
export const SMBIOS_PROCESSOR_UPGRADES: readonly string[] = [
  'Other',
  'Unknown',
  'Daughter Board',
  'ZIF Socket',
  'Replaceable Piggy Back',
  'None',
  'LIF Socket',
  'Slot 1',
  'Slot 2',
  '370-pin Socket',
  'Slot A',
  'Slot M',
  'Socket 423',
  'Socket A (Socket 462)',
  'Socket 478',
  'Socket 754',
  'Socket 940',
  'Socket 939',
  'Socket mPGA604',
  'Socket LGA771',
  'Socket LGA775',
  'Socket S1',
  'Socket AM2',
  'Socket F (1207)',
  'Socket LGA1366',
  'Socket G34',
  'Socket AM3',
  'Socket C32',
  'Socket LGA1156',
  'Socket LGA1567',
  'Socket PGA988A',
  'Socket BGA1288',
  'Socket rPGA988B',
  'Socket BGA1023',
  'Socket BGA1224',
  'Socket LGA1155',
  'Socket LGA1356',
  'Socket LGA2011',
  'Socket FS1',
  'Socket FS2',
  'Socket FM1',
  'Socket FM2',
  'Socket LGA2011-3',
  'Socket LGA1356-3',
  'Socket LGA1150',
  'Socket BGA1168',
  'Socket BGA1234',
  'Socket BGA1364',
  'Socket AM4',
  'Socket LGA1151',
  'Socket BGA1356',
  'Socket BGA1440',
  'Socket BGA1515',
  'Socket LGA3647-1',
  'Socket SP3',
  'Socket SP3r2',
  'Socket LGA2066',
  'Socket BGA1392',
  'Socket BGA1510',
  'Socket BGA1528',
  'Socket LGA4189',
  'Socket LGA1200',
  'Socket LGA4677',
  'Socket LGA1700',
  'Socket BGA1744',
  'Socket BGA1781',
  'Socket BGA1211',
  'Socket BGA2422',
  'Socket LGA1211',
  'Socket LGA2422',
  'Socket LGA5773',
  'Socket BGA5773',
  'Socket AM5',
  'Socket SP5',
  'Socket SP6',
  'Socket BGA883',
  'Socket BGA1190',
  'Socket BGA4129',
  'Socket LGA4710',
  'Socket LGA7529',
  'Socket BGA1964',
  'Socket BGA1792',
  'Socket BGA2049',
  'Socket BGA2551',
  'Socket LGA1851',
  'Socket BGA2114',
  'Socket BGA2833',
];

/** A socket as parts name it: without the word `Socket`, without blanks. */
function bareSocket(text: string): string {
  return text.replace(/^\s*socket\b/i, '').replace(/\s+/g, '');
}

/** Every socket of the standard, named as parts name it, for completion. */
export const SOCKET_NAMES: readonly string[] = SMBIOS_PROCESSOR_UPGRADES.filter((name) =>
  name.startsWith('Socket '),
).map(bareSocket);

/** Where a processor's pins stand: in the board's socket, under the processor, or nowhere (soldered balls). */
export type PinsOn = 'board' | 'processor' | 'none';

/** Source: common practice: LGA lands and PGA pins are on the processor's side, BGA is soldered. */
const PINS_BY_ARRAY: readonly [RegExp, PinsOn][] = [
  [/^(?:FC)?LGA-?\d/, 'board'],
  [/^[A-Z]?PGA-?\d/, 'processor'],
  [/^(?:FC)?BGA-?\d/, 'none'],
];

/** Sockets whose names do not say it. Source: common practice; from memory: F, G34, C32, FS1 and FS2. */
const PINS_BY_NAME: ReadonlyMap<string, PinsOn> = new Map([
  ...[
    'AM2',
    'AM2+',
    'AM3',
    'AM3+',
    'AM4',
    'FM1',
    'FM2',
    'FM2+',
    'FS1',
    'FS2',
    'S1',
    '478',
    '754',
    '939',
    '940',
    'A(SOCKET462)',
    '423',
  ].map((name): [string, PinsOn] => [name, 'processor']),
  ...['AM5', 'SP3', 'SP3R2', 'SP5', 'SP6', 'TR4', 'STRX4', 'SWRX8', 'STR5', 'F(1207)', 'G34', 'C32'].map(
    (name): [string, PinsOn] => [name, 'board'],
  ),
]);

/** Where the pins of a socket stand, by its name; undefined when neither its name nor the list tells. */
export function pinsOn(socket: string): PinsOn | undefined {
  const name = bareSocket(socket).toUpperCase();
  return PINS_BY_NAME.get(name) ?? PINS_BY_ARRAY.find(([pattern]) => pattern.test(name))?.[1];
}

/**
 * Sockets whose processor is clipped to a carrier under the heat sink, and set down together with it. Source:
 * processor makers' thermal and mechanical design guides for these sockets; from memory: LGA4710 and LGA7529.
 */
const CARRIED: ReadonlySet<string> = new Set(['LGA3647', 'LGA4189', 'LGA4677', 'LGA4710', 'LGA7529']);

/** Whether the processor goes in under its heat sink. */
export const carriedIn = (socket: string): boolean =>
  CARRIED.has(bareSocket(socket).toUpperCase().replace(/^FC/, '').replace('-', ''));
