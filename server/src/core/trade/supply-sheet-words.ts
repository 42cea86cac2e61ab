// How data sheets spell a supply's rails, outline and design guide. Source: common practice throughout.
import { vocabulary, type Vocabulary } from './vocabulary';

const RAILS_OF_12V = ['', '1', '2', '3', '4', '5', '6', '7', '8'];
const FEEDS: Readonly<Record<string, readonly string[]>> = {
  CPU: ['processor', 'EPS'],
  PCIe: ['PCI-E', 'VGA', 'GPU'],
  board: ['MB'],
};

const standing = (rail: string): string[] => [rail, `${rail} DC`, `${rail} rail`, `DC ${rail}`];
/** With the sign or without, and with a full stop for the `V`, as in `3V3`. */
const signed = (rail: string): string[] => standing(rail).flatMap((one) => [one, `+${one}`]);
const standby = (rail: string): string[] =>
  ['SB', 'standby', 'STB', 'aux', 'stand-by'].flatMap((end) => signed(`${rail}${end}`));

const negative = (rail: string): string[] => [`minus ${rail}`, `negative ${rail}`];

const twelves = Object.fromEntries(
  RAILS_OF_12V.map((number) => [
    `+12V${number}`,
    signed(`12V${number}`).concat(number ? signed(`12V #${number}`) : []),
  ]),
);
const fed = Object.fromEntries(
  Object.entries(FEEDS).map(([feed, others]) => [
    `+12V ${feed}`,
    [feed, ...others].flatMap((one) => signed(`12V ${one}`)),
  ]),
);

/** Rails by the name on the label. */
export const RAIL_WORDS: Vocabulary = vocabulary('a rail', {
  ...twelves,
  ...fed,
  '+5V': signed('5V'),
  '+3.3V': [...signed('3.3V'), ...signed('3,3V'), ...signed('3V3')],
  '+5VSB': standby('5V'),
  '+12VSB': standby('12V'),
  '-12V': negative('12V'),
  '-5V': negative('5V'),
});

const PS2 = ['ATX PS2', 'PS2', 'PS/2', 'ATX PS/2', 'PS/2 ATX', 'standard ATX PS2', 'standard ATX PS/2'];
const versions = (names: readonly string[], numbers: readonly string[]): string[] =>
  names.flatMap((name) =>
    numbers.flatMap((number) => ['', 'v', 'ver.', 'version '].map((mark) => `${name} ${mark}${number}`)),
  );
const TWOS = ['2', '2.x', '2.0', '2.01', '2.2', '2.3', '2.31', '2.32', '2.4', '2.5', '2.51', '2.52', '2.53'];
const ATX = ['ATX', 'ATX12V', 'Intel ATX', 'Intel ATX12V'];

type SupplyForm = 'ATX' | 'SFX' | 'SFX-L' | 'TFX' | 'Flex ATX' | 'external';

/** The outline. A design guide of ATX12V stands for the outline named after it; EPS12V has several. */
export const SUPPLY_FORM_WORDS: Vocabulary<SupplyForm> = vocabulary('an outline of supplies', {
  ATX: [
    ...PS2,
    'ATX PSU',
    'ATX supply',
    'ATX power supply',
    'standard ATX',
    'full-size ATX',
    'ATX12V',
    'bottom mounted ATX',
    ...versions(ATX, [...TWOS, '3.0', '3.1']),
  ],
  SFX: [
    'SFX12V',
    'SFX PSU',
    'SFX supply',
    'SFX power supply',
    ...versions(['SFX12V', 'SFX'], ['3.x', '3.1', '3.2', '3.3', '3.4', '3.42', '4.0', '4.1']),
  ],
  'SFX-L': ['SFXL', 'SFX L', 'SFX-L PSU', 'SFX-L supply', 'SFX-L (130 mm)', 'long SFX'],
  TFX: ['TFX12V', 'TFX PSU', 'TFX supply', ...versions(['TFX12V'], ['2.3', '2.31', '2.4', '2.5', '3.0', '3.1'])],
  'Flex ATX': ['FlexATX', 'Flex', '1U Flex', 'Flex ATX 1U', 'mini 1U', 'Flex ATX PSU', 'FLEX12V'],
  external: [
    'external brick',
    'brick',
    'power brick',
    'AC adapter',
    'external adapter',
    'external supply',
    'DC adapter',
  ],
});

type SupplyStandard = 'ATX 2' | 'ATX 3.0' | 'ATX 3.1' | 'ATX12VO';

const withCard = (names: readonly string[], cards: readonly string[]): string[] =>
  names.flatMap((name) => [
    name,
    `${name} ready`,
    `${name} compliant`,
    ...cards.flatMap((card) => [
      `${name} (${card})`,
      `${name} / ${card}`,
      `${name} & ${card}`,
      `${name}, ${card}`,
      `${name} (${card} ready)`,
    ]),
  ]);

/** The design guide by which a supply holds up and rides out peaks. */
export const SUPPLY_STANDARD_WORDS: Vocabulary<SupplyStandard> = vocabulary(
  'a design guide of supplies',
  {
    'ATX 2': versions(ATX, TWOS).flatMap((one) => [
      one,
      ...['EPS12V', 'EPS 12V'].flatMap((eps) => ['2.92', 'v2.92'].map((rev) => `${one} / ${eps} ${rev}`)),
    ]),
    'ATX 3.0': withCard(versions(ATX, ['3.0']), ['PCIe 5.0', 'PCIe 5', 'PCIe Gen 5', 'PCIe Gen5.0']),
    'ATX 3.1': withCard(versions(ATX, ['3.1']), ['PCIe 5.1', 'PCIe 5', 'PCIe 5.0', 'PCIe Gen 5', 'PCIe Gen5.1']),
    ATX12VO: versions(['ATX12VO', 'ATX 12VO', 'Intel ATX12VO'], ['', '1.0', '2.0', '2.1']),
  },
  Object.fromEntries(
    [...versions(ATX, ['3', '3.x']), ...versions(['SFX12V'], ['4', '4.0', '4.1'])].map((one) => [
      one,
      ['ATX 3.0', 'ATX 3.1'] as const,
    ]),
  ),
);

/** For which mains a badge was tested. */
export const BADGE_MAINS_WORDS: Vocabulary<'115 V' | '230 V'> = vocabulary('the mains of a badge', {
  '115 V': ['115 V internal', '115 V AC', '115V internal non-redundant'],
  '230 V': ['230 V EU', 'EU 230 V', '230 V internal', '230 V AC', '230V EU internal'],
});

export const HOUSING_WORDS: Vocabulary<'bare' | 'painted'> = vocabulary('a finish', {
  bare: ['bare metal', 'unpainted', 'galvanised', 'galvanized', 'zinc-plated', 'nickel-plated'],
  painted: ['powder-coated', 'powder coating', 'coated', 'lacquered', 'black powder coat', 'matt black paint'],
});
