// The facts of a drive, a graphics card, another card, a display and a stick.
import { toBase } from '../quantity';
import { CARD_CONNECTOR_WORDS } from '../trade/connector-words';
import { CARD_COOLING_WORDS } from '../trade/sheet-words';
import { parseCardOpenings } from '../trade/slot-words';
import { errorRatesMeant, parseErrorRate } from '../trade/storage';
import { altitudeMm, moduleHeightMm, spinUpA, spinUpS, type Range } from './ranges';
import { BUS_WORDS, PORT_WORDS, RECORDING_WORDS, SHAPE_WORDS } from '../trade/drive-words';
import { parseM2Size } from '../trade/m2';
import { DISPLAY_LINKS, parseMode } from '../trade/display';
import { BRACKET_WORDS, EDGE_WORDS, M2_KEY_WORDS } from '../trade/board-words';
import { THREAD_WORDS } from '../trade/paste-words';
import { choice, count, flag, form, group, length, list, named, power, quantity, text } from './field';
import {
  common,
  draw,
  inAcoustics,
  inDimensions,
  inPower,
  inSoundNote,
  link,
  peaks,
  connectors,
  startsAtOnce,
} from './common';
import { m2Keys, slotLengths } from './board-slots';

const displayLinks = DISPLAY_LINKS.map((link) => link.name);

const inInterface = { printed: 'The data sheet, under interface.' } as const;
const inFormFactor = { printed: 'The data sheet, under form factor.' } as const;
const inPerformance = { printed: 'The data sheet, under performance.' } as const;
const inEnvironment = { printed: 'The data sheet, under operating environment.' } as const;
const inOutputs = { printed: 'The data sheet, under display outputs.' } as const;
const inDisplayTable = { printed: 'The display handbook’s specification table.' } as const;

export const driveBuses = ['NVMe', 'SATA', 'SAS', 'USB'] as const;
export const driveShapes = ['M.2', '2.5 in', '3.5 in', 'card'] as const;

export const portKinds = ['SATA', 'SAS', 'U.2', 'USB'] as const;

/** What drives read and write at; the slowest that are sold reach some 80 MB/s. Source: common practice. */
const driveRates: Range = [toBase(40, 'MB/s'), toBase(100, 'GB/s')];

export const drive = {
  ...common,
  bus: choice(driveBuses, 'The bus it speaks. An M.2 module may speak NVMe or SATA: its shape does not tell.', {
    spellings: BUS_WORDS,
    ...inInterface,
  }),
  link: link('The fastest link it can run.', 'PCIe 4 x4', inInterface),
  shape: choice(driveShapes, 'Its shape.', { spellings: SHAPE_WORDS, ...inFormFactor }),
  size: form('an M.2 size', parseM2Size, 'Width and length of an M.2 module, written together.', '2280', inFormFactor),
  key: choice(m2Keys, 'Notch or notches of an M.2 module.', {
    example: 'M',
    spellings: M2_KEY_WORDS,
    ...inDimensions,
  }),
  thickness: length(
    'Thickness of a 2.5 in drive; of an M.2 module what its sheet prints, over all or above its board.',
    '7 mm',
    inDimensions,
  ),
  'height-above': length('How far components and heat sink stand out above the board of an M.2 module.', '1.5 mm', {
    ...inDimensions,
    range: moduleHeightMm,
  }),
  'height-below': length('How far components stand out below the board of an M.2 module; 0 mm for none.', '0 mm', {
    ...inDimensions,
    range: moduleHeightMm,
  }),
  'heat-sink': flag('Whether an M.2 module comes with a heat sink on it.', {
    example: 'false',
    printed: 'The data sheet, or the maker’s pictures.',
  }),
  capacity: quantity('data-size', 'TB', 'Capacity as its maker counts it.', '2 TB', {
    likely: [toBase(8, 'GB'), toBase(200, 'TB')],
    printed: 'The label on the drive.',
  }),
  read: quantity('data-rate', 'GB/s', 'Sequential reading rate stated.', '7 GB/s', {
    likely: driveRates,
    ...inPerformance,
  }),
  write: quantity('data-rate', 'GB/s', 'Sequential writing rate stated.', '6.5 GB/s', {
    likely: driveRates,
    ...inPerformance,
  }),
  endurance: quantity('data-size', 'TB', 'Data that may be written over its warranty.', '1200 TB', {
    likely: [toBase(10, 'TB'), toBase(1_000_000, 'TB')],
    printed: 'The data sheet, as TBW or terabytes written.',
  }),
  'unrecoverable-errors': form(
    'a rate of errors',
    parseErrorRate,
    'How many bits it reads for one error that it cannot correct.',
    '1 in 10^15',
    {
      usual: ['1 in 10^14', '1 in 10^15', '1 in 10^16', '1 in 10^17'],
      meant: errorRatesMeant,
      printed: 'The data sheet, under reliability.',
    },
  ),
  recording: choice(['CMR', 'SMR'], 'How a disk records: conventionally, or in overlapping tracks.', {
    spellings: RECORDING_WORDS,
    printed: 'The data sheet, or the maker’s list of recording methods.',
  }),
  'spin-up': group(
    {
      current: quantity('current', 'A', 'Current it takes on 12 V while its platters start.', '2 A', {
        ...inPower,
        range: spinUpA,
      }),
      'current-5V': quantity('current', 'A', 'Current it takes on 5 V meanwhile.', '0.8 A', {
        ...inPower,
        range: spinUpA,
      }),
      lasts: quantity('time', 's', 'How long that lasts.', '10 s', { ...inPower, range: spinUpS }),
      staggered: flag('Whether it waits for its host before it starts them.', inPower),
    },
    'How a disk starts its platters.',
    '{ current: 2 A, lasts: 10 s }',
    inPower,
  ),
  'needs-heat-sink': flag('Whether its maker asks for a heat sink.', {
    printed: 'The fitting instructions or the data sheet.',
  }),
  hottest: quantity('temperature', '°C', 'Highest operating temperature stated.', '70 °C', inEnvironment),
  highest: quantity('length', 'm', 'Highest operating altitude stated.', '3000 m', {
    ...inEnvironment,
    range: altitudeMm,
  }),
  rise: quantity(
    'temperature-difference',
    'K',
    'How much warmer than the air around it the drive gets at work.',
    '18 K',
    { printed: 'Nobody: measure it at work, or take a published measurement.' },
  ),
  thread: choice(['M3', '6-32'], 'Thread of its fixing holes.', { spellings: THREAD_WORDS, ...inDimensions }),
  'screw-depth': length('Deepest that a screw may go.', '3 mm', inDimensions),
  draw: group(
    {
      typical: power('Power drawn in ordinary use.', '5 W', inPower),
      running: power('The most it draws while it reads or writes, once it has started.', '9 W', {
        printed: 'The data sheet, under operating or seek power.',
      }),
      peak: power('The most it draws at all: for a hard disk, while it spins up.', '24 W', {
        printed: 'The data sheet, under start-up or peak power.',
      }),
    },
    'What one drive draws.',
    '{ typical: 5 W, running: 9 W, peak: 24 W }',
    inPower,
  ),
  level: quantity(
    'sound-level',
    'dBA',
    'Sound pressure level at work; 0 dBA for a drive with no moving part.',
    '28 dBA',
    inAcoustics,
  ),
  'level-at': quantity('length', 'm', 'The distance at which the level was measured.', '1 m', inSoundNote),
} as const;

export const brackets = ['full height', 'low profile'] as const;

export const card = {
  ...common,
  edge: choice([...slotLengths, 'M.2'], 'Length of the card’s edge, or M.2 for a card that is a module.', {
    example: 'x16',
    spellings: EDGE_WORDS,
    ...inInterface,
  }),
  size: form(
    'an M.2 size',
    parseM2Size,
    'Width and length of a card that is an M.2 module, written together.',
    '2230',
    inFormFactor,
  ),
  key: choice(m2Keys, 'Notch or notches of a card that is an M.2 module.', {
    example: 'A+E',
    spellings: M2_KEY_WORDS,
    ...inFormFactor,
  }),
  'drive-ports': count('How many drives its ports take, each end of a breakout cable counted.', '4', {
    printed: 'The data sheet, under ports.',
  }),
  'port-kind': choice(portKinds, 'What those ports are; without it they are SATA.', {
    spellings: PORT_WORDS,
    printed: 'The data sheet, under ports.',
  }),
  'starts-at-once': startsAtOnce,
  link: link('The fastest link it can run.', 'PCIe 4 x8', inInterface),
  length: length('Length from the bracket to the far end, connectors not counted.', '245 mm', inDimensions),
  height: length('Height above the slot’s edge of the board.', '120 mm', inDimensions),
  cooling: choice(['blower', 'open', 'passive', 'liquid'], 'How it is cooled; a blower blows out at the bracket.', {
    example: 'open',
    spellings: CARD_COOLING_WORDS,
    printed: 'The data sheet, under cooling.',
  }),
  'back-room': length('How far its back plate stands out behind its board.', '3 mm', inDimensions),
  openings: form(
    'a number of openings',
    parseCardOpenings,
    'Openings that it takes, of bracket and cooler; a half counts as a whole.',
    '2',
    { usual: ['1', '2', '2.5 slots', '3'], ...inDimensions },
  ),
  thickness: length('Thickness over the whole cooler, from the back of the card.', '58 mm', inDimensions),
  carries: count('M.2 drives that a carrier card takes.', '4', { most: 8, ...inInterface }),
  'own-switch': flag('Whether a carrier card divides its link itself, by a switch chip.', inInterface),
  bracket: choice(brackets, 'Height of its bracket.', { spellings: BRACKET_WORDS, ...inDimensions }),
  power: group(
    {
      sustained: power('Power it draws for as long as it works.', '200 W', {
        printed: 'The data sheet, under board power.',
      }),
      peaks,
    },
    'What it draws.',
    '{ sustained: 200 W }',
    { printed: 'The data sheet, under board power.' },
  ),
  'standby-draw': power('What it draws from the standby rail, to wake the machine or to watch over it.', '2 W', {
    printed: 'The data sheet, under auxiliary or standby power.',
  }),
  connectors: connectors('Power connectors it wants, by kind.', {
    names: CARD_CONNECTOR_WORDS,
    printed: 'The data sheet, under power connectors.',
  }),
  'power-level': power('The power level it wants signalled by a 16-pin cable.', '450 W', {
    printed: 'The data sheet, under power connectors.',
  }),
  'connector-room': length(
    'Room needed past the card’s top edge for its power connector and the cable’s bend.',
    '35 mm',
    {
      printed: 'The mounting instructions, under clearance.',
    },
  ),
  outputs: named(
    group(
      { link: text('The link it drives.', 'DisplayPort HBR3', { usual: displayLinks, ...inOutputs }) },
      'One output.',
    ),
    'Display outputs.',
    '{ DP_1: { link: DisplayPort HBR3 } }',
    inOutputs,
  ),
  compression: flag('Whether it can compress the picture on the link (DSC).', inOutputs),
  level: quantity('sound-level', 'dBA', 'Sound pressure level under load.', '34 dBA', inAcoustics),
  'level-at': quantity('length', 'm', 'The distance at which the level was measured.', '1 m', inSoundNote),
  'rate-needed': quantity('data-rate', 'GB/s', 'Data rate it needs to do its work.', '2.5 GB/s', {
    printed: 'The data sheet, under data rate.',
  }),
} as const;

export const graphics = card;

export const display = {
  ...common,
  modes: list(
    form('a mode', parseMode, 'A mode it shows.', '3840x2160 @ 60 Hz'),
    'Modes it shows.',
    '[3840x2160 @ 60 Hz]',
    { printed: 'The display handbook’s table of modes.' },
  ),
  inputs: named(
    group(
      { link: text('The link it takes.', 'DisplayPort HBR3', { usual: displayLinks, ...inDisplayTable }) },
      'One input.',
    ),
    'Inputs by name.',
    '{ DP: { link: DisplayPort HBR3 } }',
    inDisplayTable,
  ),
  compression: flag('Whether it takes a compressed picture (DSC).', inDisplayTable),
  draw: draw('What it draws.', { printed: 'The energy label, or the data sheet under power.' }),
} as const;

export const stick = {
  ...common,
  filesystem: choice(['FAT32', 'exFAT', 'NTFS', 'ext4'], 'File system it is formatted with.'),
  capacity: quantity('data-size', 'GB', 'Capacity.', '16 GB', { printed: 'The print on the stick.' }),
} as const;
