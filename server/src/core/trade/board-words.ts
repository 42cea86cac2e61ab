// How data sheets spell the sizes of boards, and their slots and notches. Source: common practice throughout.
import { eitherWay, vocabulary, type Vocabulary } from './vocabulary';

/** Names of outlines; of the larger ones the outline itself is not told by the name. */
export const BOARD_SIZE_WORDS = vocabulary('a board size', {
  ATX: ['standard ATX', 'full ATX', 'full-size ATX', 'ATX full size'],
  microATX: ['micro ATX', 'mATX', 'm-ATX', 'uATX', 'µATX', 'μATX', 'micro-ATX (mATX)', 'mATX (micro-ATX)'],
  'Mini-ITX': ['mini ITX', 'mITX', 'm-ITX', 'ITX', 'thin mini-ITX', 'mini-ITX (mITX)'],
  'E-ATX': ['EATX', 'extended ATX', 'E-ATX/EATX', 'SSI EATX'],
  'XL-ATX': ['XLATX'],
  'SSI-EEB': ['SSI EEB', 'EEB', 'E-ATX (SSI-EEB)', 'EATX (SSI EEB)'],
  'SSI-CEB': ['SSI CEB', 'CEB'],
  'Flex-ATX': ['FlexATX'],
  DTX: [],
  'Mini-DTX': ['mDTX'],
  proprietary: ['custom', 'non-standard', 'own form factor', 'OEM'],
});

/** The same for a tray’s standoffs, which may have every hole. */
export const STANDOFF_WORDS = vocabulary('a pattern of standoffs', {
  full: ['all', 'all holes', 'every hole'],
  ...BOARD_SIZE_WORDS.spellings,
});

const keyed = (key: string): string[] => eitherWay([key], ['key', 'keyed']);
const both = (one: string, other: string): string[] =>
  ['+', '&', '/', ' and ', '']
    .flatMap((mark) => [one + mark + other, other + mark + one])
    .flatMap((key) => [key, ...keyed(key)]);

export const M2_KEY_WORDS: Vocabulary<'A' | 'B' | 'E' | 'M' | 'B+M' | 'A+E'> = vocabulary('a notch of M.2', {
  A: keyed('A'),
  B: keyed('B'),
  E: keyed('E'),
  M: keyed('M'),
  'B+M': both('B', 'M'),
  'A+E': both('A', 'E'),
});

const PCIE = ['PCIe', 'PCI Express', 'PCI-E'];
export const SLOT_KIND_WORDS: Vocabulary<'PCIe' | 'M.2'> = vocabulary('a kind of slot', {
  PCIe: PCIE.flatMap((one) => [one, `${one} slot`, `${one} expansion slot`]),
  'M.2': ['M2', 'NGFF', 'M.2 slot', 'M.2 socket', 'M.2 connector', 'M.2 socket 3', 'M.2 (key M)', 'M.2 key M'],
});

const long = (lanes: number): string[] => [
  `${lanes}x`,
  ...PCIE.flatMap((one) => [`${one} x${lanes}`, `${one} x${lanes} slot`]),
  ...PCIE.flatMap((one) => ['3.0', '4.0', '5.0', '3', '4', '5'].map((version) => `${one} ${version} x${lanes}`)),
];
export const SLOT_LENGTH_WORDS: Vocabulary<'x1' | 'x4' | 'x8' | 'x16'> = vocabulary('a length of slots', {
  x1: long(1),
  x4: long(4),
  x8: long(8),
  x16: long(16),
});
export const EDGE_WORDS: Vocabulary<'x1' | 'x4' | 'x8' | 'x16' | 'M.2'> = vocabulary('an edge of cards', {
  ...SLOT_LENGTH_WORDS.spellings,
  'M.2': SLOT_KIND_WORDS.spellings['M.2'],
});

export const OUTPUT_SOURCE_WORDS = vocabulary('a source of pictures', {
  processor: ['CPU', 'integrated graphics', 'processor graphics', 'onboard graphics'],
  'management controller': ['BMC', 'IPMI', 'baseboard management controller', 'controller'],
});

export const LANES_FROM_WORDS: Vocabulary<'processor' | 'chipset'> = vocabulary('a source of lanes', {
  processor: ['CPU', 'from CPU', 'by CPU', 'CPU lanes', 'from the processor'],
  chipset: ['PCH', 'from chipset', 'from PCH', 'chipset lanes', 'from the chipset'],
});

export const BRACKET_WORDS: Vocabulary<'full height' | 'low profile'> = vocabulary('a height of brackets', {
  'full height': ['full-height', 'FH', 'standard height', 'FHFL', 'FHHL'],
  'low profile': ['LP', 'half height', 'half-height', 'HHHL', 'low-profile bracket'],
});
