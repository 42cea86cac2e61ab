// How data sheets spell what a drive is, where it plugs in and what it is fixed in. Source: common practice throughout.
import { eitherWay, vocabulary, type Vocabulary } from './vocabulary';

const each = (befores: readonly string[], behinds: readonly string[]): string[] =>
  befores.flatMap((before) => behinds.map((behind) => `${before} ${behind}`));

const PCIE = [
  ...each(['PCIe', 'PCIe Gen', 'PCI Express', 'Gen'], ['3', '4', '5', '3.0', '4.0', '5.0']).flatMap((one) => [
    one,
    `${one} x4`,
  ]),
  'PCIe',
  'PCI Express',
];
const NVME = ['NVMe', 'NVMe 1.3', 'NVMe 1.4', 'NVMe 2.0'];

/** The bus; which generation of it, it leaves to the link. */
export const BUS_WORDS: Vocabulary<'NVMe' | 'SATA' | 'SAS' | 'USB'> = vocabulary(
  'a bus of drives',
  {
    NVMe: [
      ...NVME,
      ...PCIE,
      ...each(PCIE, ['NVMe']),
      ...each(['NVMe'], PCIE),
      ...each(['PCIe 3.0 x4', 'PCIe 4.0 x4', 'PCIe 5.0 x4', 'PCIe Gen4 x4', 'PCIe'], NVME.slice(1)),
      ...each(
        NVME.map((one) => `${one},`),
        PCIE,
      ),
      ...each(['PCIe 3.0 x4,', 'PCIe 4.0 x4,', 'PCIe 5.0 x4,', 'PCIe Gen3 x4,', 'PCIe Gen4 x4,', 'PCIe,'], NVME),
      ...eitherWay(['NVMe'], ['M.2', 'SSD', 'U.2', 'U.3']),
      'NVM Express',
      'NVMe 1.2',
      'NVMe 1.3c',
      'NVMe 2.1',
      'U.2',
      'U.3',
    ],
    SATA: [
      ...each(['SATA', 'SATA Revision', 'Serial ATA'], ['1', '2', '3', '3.0', 'III', 'II']),
      ...each(['SATA', 'SATA III', 'Serial ATA', 'SATA 3'], ['6Gb/s', '6.0Gb/s', '6Gbps', '6Gbit/s']),
      ...each(['SATA'], ['3Gb/s', '3.0Gb/s', '3Gbps', '1.5Gb/s']),
      ...eitherWay(['SATA'], ['M.2', 'SSD', 'HDD', '2.5"', '3.5"']),
      'Serial ATA',
      'S-ATA',
      'AHCI',
      'SATA-600',
      'SATA-300',
      'SATA 3.1',
      'SATA 3.2',
      'SATA 3.3',
      'SATA 3.5',
      'SATA 6.0',
      'mSATA',
    ],
    SAS: [
      ...each(['SAS'], ['1', '2', '3', '4']),
      ...['3', '6', '12', '22.5', '24'].flatMap((one) => [
        `SAS ${one}Gb/s`,
        `SAS ${one} Gbps`,
        `SAS ${one}G`,
        `${one}G SAS`,
      ]),
      'Serial Attached SCSI',
      'nearline SAS',
      'NL-SAS',
      'dual-port SAS',
    ],
    USB: [
      ...[
        '2.0',
        '3.0',
        '3.1',
        '3.2',
        '4',
        '4.0',
        'C',
        '3.1 Gen 1',
        '3.1 Gen 2',
        '3.2 Gen 1',
        '3.2 Gen 2',
        '3.2 Gen 2x2',
      ].map((one) => `USB ${one}`),
      ...['5', '10', '20', '40'].flatMap((one) => [`USB ${one}Gbps`, `USB ${one} Gb/s`]),
      'USB Type-C',
      'external USB',
      'portable USB',
    ],
  },
  {
    'M.2': ['NVMe', 'SATA'],
    'PCIe/SATA': ['NVMe', 'SATA'],
    'NVMe/SATA': ['NVMe', 'SATA'],
    'SATA/SAS': ['SATA', 'SAS'],
    'SAS/SATA': ['SATA', 'SAS'],
    'SFF-8639': ['NVMe', 'SAS', 'SATA'],
  },
);

/** A size in inches, as a sheet may write it; in plain letters these are all there are. */
const inches = (size: string): string[] =>
  ['', 'in', 'in.', 'inch', '″', 'Zoll'].map((unit) => size + unit).concat(`${size.replace('.', ',')} Zoll`);
const SMALL = inches('2.5');
const LARGE = inches('3.5');
const M2 = ['M.2', 'M2', 'NGFF'];
const M2_SIZES = ['2230', '2242', '2260', '2280', '22110'];

/** The shape; the size that stands beside that of a module is read from the same words. */
export const SHAPE_WORDS: Vocabulary<'M.2' | '2.5 in' | '3.5 in' | 'card'> = vocabulary('a shape of drives', {
  'M.2': [
    ...M2,
    ...eitherWay(['M.2', 'M2'], ['SSD', 'NVMe', 'SATA', 'PCIe', 'module', ...M2_SIZES]),
    ...M2_SIZES,
    '22 x 80',
    '22 x 80 mm',
    '22 x 110 mm',
    '22 x 30 mm',
    ...each(
      ['2280', 'M.2 2280', '2230', '2242'],
      ['S2', 'S3', 'D2', 'D3', 'D5', 'S2-M', 'S3-M', 'D2-M', 'D3-M', 'D5-M'],
    ),
  ],
  '2.5 in': [
    ...SMALL,
    ...each(SMALL, ['7 mm', '/ 7 mm', 'SSD', 'HDD', 'SATA', 'SFF', 'U.2', 'drive']),
    ...each(['SSD', 'HDD', 'SATA', 'SFF', 'U.2'], SMALL),
    'SFF',
    'U.2',
    'U.3',
    'SFF-8639',
    'SFF-8201',
  ],
  '3.5 in': [...LARGE, ...eitherWay(LARGE, ['HDD', 'SATA', 'LFF', 'drive']), 'LFF', 'SFF-8301'],
  card: ['add-in card', 'AIC', 'PCIe card', 'PCI Express card', 'HHHL', 'FHHL', 'half-height half-length', 'PCIe AIC'],
});

const bayed = (ones: readonly string[], more: readonly string[]): string[] => [
  ...ones,
  ...each(ones, ['bay', 'bays', 'drive', 'drives', 'drive bay', 'drive bays', 'internal', 'hot-swap', ...more]),
  ...each(['internal', 'hot-swap', ...more], ones),
];
const BOTH = [
  '3.5/2.5',
  '3.5″/2.5″',
  '3.5 or 2.5',
  '3.5″ or 2.5″',
  '3.5in/2.5in',
  '3.5in or 2.5in',
  '3.5 & 2.5',
].flatMap((one) => {
  const other = one.replace('3.5', 'x').replace('2.5', '3.5').replace('x', '2.5');
  return [one, `${one} in`, `${one} inch`, other, `${other} in`, `${other} inch`];
});

/** Bays by what they hold; a combined one holds a drive of either shape. */
export const BAY_WORDS: Vocabulary<'3.5 in' | '2.5 in' | '3.5 or 2.5 in' | '5.25 in' | 'M.2'> = vocabulary(
  'a kind of drive bay',
  {
    '3.5 in': bayed(LARGE, ['HDD', 'LFF']),
    '2.5 in': bayed(SMALL, ['SSD', 'SFF']),
    '3.5 or 2.5 in': [
      ...BOTH,
      ...each(BOTH, ['combo', 'combined', 'bays', 'drives']),
      ...each([...LARGE, 'drive'], ['combo', 'combined']),
      ...['combo', 'combined', 'combo bay', 'combo bays', 'combo tray', 'combo trays', 'multi-bracket'],
    ],
    '5.25 in': bayed(inches('5.25'), ['ODD', 'optical', 'external']),
    'M.2': [],
  },
  { SSD: ['2.5 in', 'M.2'] },
);

/** What takes a drive’s data cable. A port of SAS takes SATA drives as well; U.2 stands for PCIe by cable. */
export const PORT_WORDS: Vocabulary<'SATA' | 'SAS' | 'U.2' | 'USB'> = vocabulary('a kind of port', {
  SATA: ['SATA 3', 'SATA III', 'SATA 6Gb/s', 'Serial ATA', 'SATA port', 'eSATA', 'SFF-8087 SATA'],
  SAS: ['mini-SAS', 'mini-SAS HD', 'SFF-8087', 'SFF-8643', 'SAS 12Gb/s', 'SAS-3', 'SAS-4', 'SFF-8482', 'SFF-8087 SAS'],
  'U.2': ['U.3', 'SFF-8639', 'OCuLink', 'SlimSAS', 'SFF-8654', 'SFF-8611', 'SFF-8612', 'MCIO', 'NVMe', 'U.2 NVMe'],
  USB: ['USB-C', 'USB-A', 'USB Type-C', 'USB Type-A', 'USB 2.0', 'USB 3.0', 'USB 3.2', 'USB4'],
});

/** How a disk records. */
export const RECORDING_WORDS: Vocabulary<'CMR' | 'SMR'> = vocabulary(
  'a recording method',
  {
    CMR: [
      'conventional',
      'conventional magnetic recording',
      'PMR (CMR)',
      'CMR (PMR)',
      'conventional recording',
      'conventional (CMR)',
      'CMR (conventional)',
    ],
    SMR: [
      'shingled',
      'shingled (SMR)',
      'shingled magnetic recording',
      'DM-SMR',
      'HM-SMR',
      'device-managed SMR',
      'host-managed SMR',
    ],
  },
  { PMR: ['CMR', 'SMR'] },
);
