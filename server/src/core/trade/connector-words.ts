// How data sheets and order lists spell power connectors, data cables and headers. Source: common practice throughout.
import { eitherWay, vocabulary, type Vocabulary } from './vocabulary';
import type { Connector } from './connectors';

/** Kinds that a supply or a board lists; the floppy connector is known so that it is not taken for another. */
export type PowerConnectorWord = Connector | 'floppy 4-pin';

const pcie = ['PCIe', 'PCI-E', 'PCI Express', 'PEG', 'VGA', 'GPU', 'graphics', 'graphics card'];
const processor = ['CPU', 'processor', 'EPS', 'EPS12V', 'ATX 12V', '12V', 'ATX12V/EPS12V', 'ATX12V'];
const main = ['ATX', 'main', 'mainboard', 'motherboard', 'board', 'MB', 'ATX main', 'ATX power', 'main power'];
const hard = ['Molex', 'peripheral', 'PATA', 'IDE', 'HDD', 'AMP', 'big', 'large', 'legacy'];

const eights = ['8-pin', '8 pins', '4+4-pin', '4+4 pins', '8-pin (4+4)', '8 (4+4)-pin', '4+4', 'P4+4'];
const sixPlusTwo = ['6+2-pin', '6+2 pins', '8-pin (6+2)', '8 (6+2)-pin', '6+2'];
const twentyFours = ['24-pin', '24 pins', '20+4-pin', '20+4 pins', '24-pin (20+4)', '24 (20+4)-pin', '20+4', '24P'];
const sixteens = [
  '12VHPWR',
  '12V-2x6',
  '12V 2x6',
  'H++',
  'PCIe 5.0',
  'PCIe 5',
  'PCIe 5.1',
  'PCIe Gen 5',
  'PCIe Gen5.1',
];

/** `connector`, `plug` and the like behind a name say nothing more. */
const named = (all: readonly string[]): string[] =>
  [...all].flatMap((one) => [
    one,
    ...['connector', 'connectors', 'plug', 'cable', 'power'].map((end) => `${one} ${end}`),
  ]);

const SPELLINGS: Readonly<Record<PowerConnectorWord, readonly string[]>> = {
  '24-pin': named([
    'ATX de 24 pinos',
    'main',
    ...twentyFours,
    ...eitherWay(main, twentyFours),
    ...main.slice(2),
    'ATX main',
  ]),
  'EPS 8-pin': named([
    ...eitherWay(processor, eights),
    ...eights.slice(2),
    'EPS',
    'EPS12V',
    'P8',
    'CPU EPS 8-pin',
    'EPS 8-pin CPU',
    'CPU EPS12V 8-pin',
  ]),
  'EPS 4-pin': named([...eitherWay(processor, ['4-pin', '4 pins']), 'P4', 'ATX P4']),
  'PCIe 8-pin': named([...eitherWay(pcie, ['8-pin', '8 pins', ...sixPlusTwo]), ...sixPlusTwo, 'PCIe 6+2 pinos']),
  'PCIe 6-pin': named([...eitherWay(pcie, ['6-pin', '6 pins']), '6-pin', '6 pins', '1 x 6-pin']),
  '16-pin': named([
    '16 pins',
    '12+4-pin',
    '12+4',
    '16-pin (12+4)',
    ...sixteens.slice(0, 4),
    ...['150W', '300W', '450W', '600W'].flatMap((level) => ['12VHPWR', '12V-2x6'].map((one) => `${one} ${level}`)),
    ...eitherWay(sixteens, ['16-pin', '12+4-pin', '16-pin (12+4)']),
    ...eitherWay(pcie, ['16-pin', '12+4-pin', '12VHPWR', '12V-2x6']),
    ...eitherWay(sixteens.slice(4), ['12VHPWR', '12V-2x6']),
    '12VHPWR/12V-2x6',
    '12VHPWR (12V-2x6)',
    '12V-2x6 (12VHPWR)',
  ]),
  'SATA power': named([
    'Serial ATA',
    'S-ATA',
    'SATA',
    ...eitherWay(['SATA', 'Serial ATA', 'S-ATA'], ['15-pin', 'drive']),
  ]),
  'peripheral 4-pin': named([
    ...eitherWay(hard, ['4-pin', '4 pins', '4-pin Molex']),
    'Molex',
    'peripheral',
    'peripherals',
    'periféricos',
    'PATA',
    'IDE',
    'LP4',
    'D-plug',
    'Molex (LP4)',
    'Molex/peripheral',
    'peripheral (Molex)',
    'PATA (Molex)',
    'IDE/Molex',
    'Molex/IDE',
  ]),
  '10-pin': named([
    '10 pins',
    '10P',
    'ATX12VO',
    ...eitherWay(['ATX12VO', '12VO', 'ATX 12VO', 'main'], ['10-pin', '10 pins']),
  ]),
  'DC barrel': [
    ...eitherWay(
      ['DC', 'barrel', 'DC barrel', 'DC power', 'coaxial'],
      ['jack', 'plug', 'inlet', 'socket', 'connector'],
    ),
    ...eitherWay(['DC', 'barrel', 'DC barrel'], ['jacks', 'plugs', 'inlets', 'sockets', 'connectors']),
    'barrel',
    'DC',
    'DC-in',
    'DC in',
    'DC input',
    '19V DC-in',
    '12V DC-in',
  ],
  'floppy 4-pin': named([
    'floppy',
    'FDD',
    'FDD 4-pin',
    '4-pin FDD',
    '4-pin floppy',
    'Berg',
    'Berg 4-pin',
    'SP4',
    'mini Molex',
  ]),
};

const eitherEps = ['EPS 8-pin', 'EPS 4-pin'] as const;
const eitherPcie = ['PCIe 8-pin', 'PCIe 6-pin'] as const;
const OPEN: Readonly<Record<string, readonly PowerConnectorWord[]>> = {
  CPU: eitherEps,
  'CPU power': eitherEps,
  'CPU connector': eitherEps,
  processor: eitherEps,
  'ATX 12V': eitherEps,
  ATX12V: eitherEps,
  'ATX 12V connector': eitherEps,
  '12V': eitherEps,
  PCIe: eitherPcie,
  'PCI-E': eitherPcie,
  'PCI Express': eitherPcie,
  'PCIe connector': eitherPcie,
  'PCIe power': eitherPcie,
  VGA: eitherPcie,
  GPU: eitherPcie,
  '8-pin': ['EPS 8-pin', 'PCIe 8-pin'],
  '8 pins': ['EPS 8-pin', 'PCIe 8-pin'],
  '4-pin': ['EPS 4-pin', 'peripheral 4-pin', 'floppy 4-pin'],
};

const WHAT = 'a kind of power connector';

/** Of a supply: a bare number of pins does not tell the processor's connector from a card's. */
export const POWER_CONNECTOR_WORDS: Vocabulary<PowerConnectorWord> = vocabulary(WHAT, SPELLINGS, OPEN);

/** On a board the bare numbers of pins are those of the processor's sockets. */
export const BOARD_CONNECTOR_WORDS: Vocabulary<PowerConnectorWord> = vocabulary(
  WHAT,
  {
    ...SPELLINGS,
    '24-pin': [...SPELLINGS['24-pin'], 'ATX', 'ATX_PWR', 'ATX_PWR1', 'EATXPWR', 'ATX power'],
    'EPS 8-pin': [
      ...SPELLINGS['EPS 8-pin'],
      'EATX12V',
      'EATX12V_1',
      'EATX12V_2',
      '8-pin',
      '8 pins',
      '8-pin power',
      '8-pin +12V',
    ],
    'EPS 4-pin': [...SPELLINGS['EPS 4-pin'], '4-pin', '4 pins', '4-pin power', '4-pin +12V'],
  },
  {
    ...OPEN,
    ...Object.fromEntries(
      ['CPU_PWR', 'CPU_PWR1', 'CPU_PWR2', 'ATX12V1', 'ATX12V2', 'ATX_12V_1', 'CPU_POWER1', 'CPU_POWER2'].map((one) => [
        one,
        eitherEps,
      ]),
    ),
    '8-pin': ['EPS 8-pin'],
    '8 pins': ['EPS 8-pin'],
    '4-pin': ['EPS 4-pin'],
  },
);

/** On a card they are those of its own. */
export const CARD_CONNECTOR_WORDS: Vocabulary<PowerConnectorWord> = vocabulary(
  WHAT,
  { ...SPELLINGS, 'PCIe 8-pin': [...SPELLINGS['PCIe 8-pin'], '1 x 8-pin', '8-pin', '8 pins', '8-pin power'] },
  { ...OPEN, '8-pin': ['PCIe 8-pin'], '8 pins': ['PCIe 8-pin'] },
);

export const CABLE_WORDS_APART = [
  'SATA data',
  'fan splitter',
  'fan hub',
  'display',
  'power cord',
  'front USB-C',
  'front USB 3',
  'front USB 2.0',
  'other',
] as const;
export type CableWord = PowerConnectorWord | (typeof CABLE_WORDS_APART)[number];

const displays = ['DisplayPort', 'DP', 'Mini DisplayPort', 'mini DP', 'HDMI', 'DVI', 'VGA', 'USB-C display', 'display'];
const ends = ['cable', 'cables', 'lead', 'leads'];

/** What a cable bought beside the boxes connects; `SATA` alone may be its power or its data. */
export const CABLE_WORDS: Vocabulary<CableWord> = vocabulary(
  'a kind of cable',
  {
    ...SPELLINGS,
    'SATA power': SPELLINGS['SATA power'].filter((one) => /power|15-pin/.test(one)),
    'SATA data': [
      'SATA data cable',
      'SATA data cables',
      'SATA data lead',
      'SATA signal',
      'SATA signal cable',
      'SATA 6Gb/s',
      'SATA 6 Gb/s cable',
      'SATA 6Gb/s data cable',
      'SATA III',
      'SATA III cable',
      'SATA 3 cable',
      'SATA3 cable',
      'Serial ATA data',
      'Serial ATA data cable',
      'SATA 7-pin',
      '7-pin SATA',
    ],
    'fan splitter': [
      'fan splitter cable',
      'fan Y-splitter',
      'fan Y-cable',
      'PWM splitter',
      'PWM fan splitter',
      'PWM Y-cable',
      'PWM Y-splitter',
      '4-pin fan splitter',
      '4-pin PWM splitter',
      '3-pin fan splitter',
      'Y-splitter for fans',
    ],
    'fan hub': [
      'fan controller',
      'PWM hub',
      'PWM fan hub',
      'powered fan hub',
      'fan hub with SATA power',
      'fan expansion hub',
      'ARGB and fan hub',
      'fan and RGB hub',
    ],
    display: displays.flatMap((one) => [one, ...ends.map((end) => `${one} ${end}`)]),
    'power cord': [
      'AC power cord',
      'power cable',
      'AC power cable',
      'AC cord',
      'mains cord',
      'mains cable',
      'mains lead',
      'power lead',
      'IEC cord',
      'IEC power cord',
      'C13 cord',
      'C13 power cord',
      'kettle lead',
    ],
    'front USB-C': ['USB-C header adapter', 'front USB-C adapter', 'Type-C header adapter', 'USB-C Key-A adapter'],
    'front USB 3': ['USB 3 header adapter', 'front USB 3 adapter', 'USB 3.0 header adapter', '19-pin USB adapter'],
    'front USB 2.0': ['USB 2.0 header adapter', 'front USB 2.0 adapter', 'front USB 2'],
    other: [
      'USB',
      'USB cable',
      'front panel extension',
      'USB header cable',
      'USB 2.0 header cable',
      'RGB',
      'ARGB',
      'RGB cable',
      'network',
      'Ethernet',
      'Ethernet cable',
      'patch cable',
      'audio',
      'audio cable',
    ],
  },
  {
    ...Object.fromEntries(Object.entries(OPEN).filter(([one]) => !['VGA'].includes(one))),
    SATA: ['SATA data', 'SATA power'],
    'SATA cable': ['SATA data', 'SATA power'],
    'Serial ATA': ['SATA data', 'SATA power'],
    'S-ATA': ['SATA data', 'SATA power'],
  },
);
