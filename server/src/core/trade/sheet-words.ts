// How data sheets spell the words of choices. Source: common practice throughout.
import type { ArrayKind } from './arrays';
import { vocabulary, type Vocabulary } from './vocabulary';

export const ARRAY_WORDS: Vocabulary<ArrayKind> = vocabulary('a kind of array', {
  stripe: ['RAID 0', 'RAID-0', 'striping', 'striped', 'stripe set', 'raid0'],
  mirror: ['RAID 1', 'RAID-1', 'mirroring', 'mirrored', 'mirror set', 'raid1'],
  'single parity': ['RAID 5', 'RAID-5', 'RAID Z', 'RAID-Z1', 'raidz', 'parity', 'one parity', 'raid5'],
  'double parity': ['RAID 6', 'RAID-6', 'RAID-Z2', 'raidz2', 'dual parity', 'two parity', 'raid6'],
  'striped mirrors': ['RAID 10', 'RAID 1+0', 'RAID-10', 'RAID1+0', 'stripe of mirrors', 'mirrored stripes', 'raid10'],
});

const METALS = ['bronze', 'silver', 'gold', 'platinum', 'titanium'] as const;
const badgeOf = (metal: string): string[] =>
  ['80 PLUS', '80+', '80PLUS', ''].flatMap((mark) => [
    `${mark} ${metal}`,
    `${mark} ${metal} certified`,
    ...['115V', '230V', '230V EU', 'EU 230V'].flatMap((mains) => [
      `${mark} ${mains} ${metal}`,
      `${mark} ${metal} (${mains})`,
    ]),
  ]);

/** The metal; for which mains the badge was tested, it leaves open. */
export const BADGE_WORDS: Vocabulary<'white' | (typeof METALS)[number]> = vocabulary('an efficiency badge', {
  white: ['80 PLUS', '80+', 'standard', '80 PLUS certified', ...badgeOf('white'), ...badgeOf('standard')],
  bronze: badgeOf('bronze'),
  silver: badgeOf('silver'),
  gold: badgeOf('gold'),
  platinum: badgeOf('platinum'),
  titanium: badgeOf('titanium'),
});

export const MODULAR_WORDS: Vocabulary<'fixed' | 'partly' | 'fully'> = vocabulary(
  'a kind of cabling',
  {
    fixed: ['non-modular', 'non modular', 'not modular', 'fixed cables', 'no', 'none'],
    partly: [
      'teilmodular',
      'semi-modular',
      'semi',
      'partially modular',
      'partial',
      'partly modular',
      'half modular',
      'hybrid',
    ],
    fully: [
      'vollmodular',
      'voll-modular',
      'fully modular',
      'full modular',
      'full',
      'full-modular',
      '100% modular',
      'all modular',
    ],
  },
  { modular: ['partly', 'fully'], yes: ['partly', 'fully'] },
);

export const POWER_FACTOR_WORDS: Vocabulary<'active' | 'passive' | 'none'> = vocabulary(
  'a power-factor correction',
  {
    active: ['aktiv', 'aktive PFC', 'active PFC', 'APFC', 'active power factor correction', 'with active PFC'],
    passive: ['passive PFC', 'PPFC', 'passive power factor correction'],
    none: ['no PFC', 'without PFC', 'no'],
  },
  { PFC: ['active', 'passive'] },
);

type MemoryTypeWord = 'DDR3' | 'DDR4' | 'DDR5' | 'LPDDR4X' | 'LPDDR5' | 'LPDDR5X';

export const MEMORY_TYPE_WORDS: Vocabulary<MemoryTypeWord> = vocabulary('a memory generation', {
  DDR3: ['DDR-3', 'DDR3 SDRAM', 'PC3', 'DDR 3', 'DDR3 RAM', 'DDR3 memory'],
  DDR4: ['DDR-4', 'DDR4 SDRAM', 'PC4', 'DDR 4', 'DDR4 RAM', 'DDR4 memory'],
  DDR5: ['DDR-5', 'DDR5 SDRAM', 'PC5', 'DDR 5', 'DDR5 RAM', 'DDR5 memory'],
  LPDDR4X: ['LPDDR4x SDRAM', 'LPDDR-4X', 'LPDDR4X memory'],
  LPDDR5: ['LPDDR-5', 'LPDDR5 SDRAM', 'LPDDR5 memory'],
  LPDDR5X: ['LPDDR-5X', 'LPDDR5x SDRAM', 'LPDDR5X memory'],
});

const PIPES = [
  'heat pipe direct touch',
  'direct-touch heat pipes',
  'direct touch',
  'direct contact',
  'direct contact heatpipes',
  'direct-contact heat pipes',
  'direct touch heatpipes',
  'HDT',
];
const pipesIn = (metals: readonly string[]): string[] =>
  metals.flatMap((metal) => [
    ...PIPES.map((pipes) => `${pipes}, ${metal}`),
    ...PIPES.map((pipes) => `${pipes} in ${metal}`),
    `copper heat pipes in ${metal}`,
    `bare heat pipes in ${metal}`,
    `heatpipes in ${metal}`,
  ]);

/** The metal under the paste; `direct touch` alone does not say in what the pipes lie. */
export const BASE_METAL_WORDS = vocabulary(
  'a base metal',
  {
    copper: [
      'Cu',
      'pure copper',
      'bare copper',
      'C1100 copper',
      'C1100',
      'solid copper',
      'copper base',
      'Kupfer',
      'copper base plate',
      'copper cold plate',
      'copper plate',
      'micro-channel copper',
    ],
    'nickel-plated copper': [
      'copper (nickel plated)',
      ...['copper base', 'copper cold plate', 'copper base plate'].flatMap((one) => [
        `${one}, nickel-plated`,
        `nickel-plated ${one}`,
      ]),
      'vernickeltes Kupfer',
      'Kupfer, vernickelt',
      'Kupfer vernickelt',
      'Kupfer (vernickelt)',
      'nickel-plated pure copper',
      'copper, nickel-plated',
      'nickel plated copper',
      'copper nickel plated',
      'nickelled copper',
      'nickel-plated',
      'Ni-plated copper',
      'copper with nickel plating',
    ],
    aluminium: ['aluminum', 'Al', 'aluminium alloy', 'aluminum alloy', 'bare aluminium', 'Al6063', 'A6063', 'A1050'],
    'anodised aluminium': ['anodized aluminum', 'anodised aluminum', 'anodized aluminium'],
    brass: ['CuZn'],
    'heat pipes in aluminium': pipesIn(['aluminium', 'aluminum']),
    'heat pipes in copper': pipesIn(['copper']),
  },
  Object.fromEntries(PIPES.map((pipes) => [pipes, ['heat pipes in aluminium', 'heat pipes in copper'] as const])),
);

export const CARD_COOLING_WORDS: Vocabulary<'blower' | 'open' | 'passive' | 'liquid'> = vocabulary(
  'a kind of card cooler',
  {
    blower: [
      'radial fan',
      'radial',
      'turbo',
      'turbine',
      'blower-style',
      'blower style',
      'blower fan',
      'direct exhaust',
    ],
    open: ['axial', 'axial fans', 'open-air', 'open air', 'dual fan', 'triple fan', 'two fans', 'three fans', 'fans'],
    passive: ['fanless', 'heat sink', 'heatsink', 'passive heat sink', 'no fan', '0 dB'],
    liquid: ['water', 'water block', 'hybrid', 'AIO', 'liquid-cooled', 'water-cooled'],
  },
  { fan: ['blower', 'open'], active: ['blower', 'open', 'liquid'] },
);

export const MEMORY_SHAPE_WORDS: Vocabulary<'DIMM' | 'SO-DIMM' | 'CAMM2' | 'LPCAMM2'> = vocabulary(
  'a shape of memory module',
  {
    DIMM: [
      '288-pin DIMM',
      '240-pin DIMM',
      'full-size DIMM',
      'desktop DIMM',
      'long DIMM',
      'UDIMM',
      'RDIMM',
      'LRDIMM',
      'CUDIMM',
      '288-pin',
      'UDIMM 288-pin',
      '288-pin UDIMM',
      'desktop',
    ],
    'SO-DIMM': [
      '260-pin',
      '262-pin',
      'laptop',
      'notebook',
      'SODIMM',
      'SO DIMM',
      '262-pin SO-DIMM',
      '260-pin SO-DIMM',
      'notebook DIMM',
      'laptop DIMM',
      'CSODIMM',
    ],
    CAMM2: ['CAMM 2', 'DDR5 CAMM2', 'compression attached memory module'],
    LPCAMM2: ['LPCAMM 2', 'LPDDR5X LPCAMM2', 'LP-CAMM2'],
  },
);

export const MEMORY_CLASS_WORDS: Vocabulary<'UDIMM' | 'CUDIMM' | 'RDIMM' | 'LRDIMM' | 'MRDIMM'> = vocabulary(
  'a class of memory module',
  {
    UDIMM: [
      'unbuffered',
      'unbuffered DIMM',
      'U-DIMM',
      'SODIMM',
      'SO-DIMM',
      'non-registered',
      'unregistered',
      'ECC UDIMM',
      'non-buffered',
      'sem buffer',
      'sin búfer',
      'sin buffer',
      'ungepuffert',
      'unbuffered non-ECC',
      'non-ECC unbuffered',
      'non-ECC unbuffered DIMM',
      'non-ECC UDIMM',
      'ECC unbuffered',
    ],
    CUDIMM: ['CU-DIMM', 'clocked UDIMM', 'clocked unbuffered', 'CSODIMM', 'CSO-DIMM', 'CKD'],
    RDIMM: [
      'Reg.',
      'reg',
      'registriert',
      'registered',
      'R-DIMM',
      'registered DIMM',
      'buffered registered',
      'ECC registered',
      'ECC RDIMM',
      'REG ECC',
    ],
    LRDIMM: ['load-reduced', 'LR-DIMM', 'load reduced DIMM'],
    MRDIMM: ['MR-DIMM', 'MCRDIMM', 'multiplexed rank DIMM', 'multiplexed registered'],
  },
);
