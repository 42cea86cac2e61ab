// Fields that every kind of part has, and field pieces that several kinds share.
import { linksMeant, parseLink } from '../trade/links';
import { parseCarried } from '../trade/m2';
import type { Vocabulary } from '../trade/vocabulary';
import {
  count,
  date,
  form,
  group,
  length,
  list,
  named,
  power,
  quantity,
  text,
  type FormField,
  type Words,
} from './field';
import { POWER_CONNECTOR_WORDS } from '../trade/connector-words';
import { sheetLargest, sheetMiddle, sheetPins, sheetRadiator, sheetSmallest } from '../trade/sheet-forms';
import { hearingMm } from './ranges';
import { parseBoxItem } from './box-item';

export const link = (
  what: string,
  example: string,
  more: Words = {},
): FormField<NonNullable<ReturnType<typeof parseLink>>> =>
  form('the spelling of a link', parseLink, what, example, {
    usual: [
      'PCIe 3 x4',
      'PCIe 4 x2',
      'PCIe 4 x4',
      'PCIe 4 x8',
      'PCIe 4 x16',
      'PCIe 5 x4',
      'PCIe 5 x8',
      'PCIe 5 x16',
      'SATA 3',
      'SATA',
    ],
    meant: linksMeant,
    ...more,
  });

/** The same for what an M.2 socket carries. */
export const carried = (what: string, example: string): ReturnType<typeof link> => ({
  ...link(what, example),
  parse: parseCarried,
});

/** Where several kinds of part print the same fact. */
export const inDimensions = { printed: 'The data sheet, under mechanical dimensions.' } as const;
export const inPower = { printed: 'The data sheet, under power.' } as const;
export const inAcoustics = { printed: 'The data sheet, under acoustics.' } as const;
export const inSoundNote = { printed: 'The data sheet’s note on how sound was measured.', range: hearingMm } as const;

export const common = {
  kind: text('Which kind of part this is.', 'board'),
  maker: text('Who makes it.', 'Norrvik', { printed: 'The label on the part or on its box.' }),
  model: text('The maker’s name for it.', 'B7 Forge', { printed: 'The label on the part or on its box.' }),
  source: group(
    {
      title: text('The document that the facts were read from.', 'Norrvik B7 Forge handbook', {
        printed: 'The document’s title page or the foot of its pages.',
      }),
      revision: text('That document’s revision.', '1.2', {
        printed: 'The document’s title page or the foot of its pages.',
      }),
      read: date('The day on which the facts were read.', '2026-10-03'),
    },
    'Where the facts of this file were read.',
  ),
  'identified-by': list(
    text('One whole name or number under which a machine reports it.', '"1a2b:7480"'),
    'Under which names and numbers a machine reports it: the board’s or processor’s string, part numbers, the PCI ' +
      'numbers as `vendor:device`, a display’s three letters and product code.',
    '[RAPID-2T, "1a2b:7480"]',
    { printed: 'The outputs of dmidecode, lspci -nn, smartctl and edid-decode on a machine that has it.' },
  ),
  mass: quantity('mass', 'g', 'Mass of the part as fitted.', '1150 g', { printed: 'The data sheet, under weight.' }),
  price: quantity('money', 'EUR', 'Price of one, with its currency.', '189 EUR', {
    printed: 'The shop’s offer or the invoice.',
  }),
  'price-read': date('The day on which the price was read.', '2026-10-03'),
  'in-the-box': list(
    form('a thing and how many', parseBoxItem, 'One thing in the box, with its count.', 'SATA data cable x2'),
    'What the box holds beside the part.',
    '[SATA data cable x2, M.2 screw x2, I/O shield]',
    { printed: 'The handbook’s page on the contents of the package.' },
  ),
} as const;

/** What a part draws; `more` says where its own document prints it. */
export const draw = (what: string, more: Words = {}) =>
  group(
    {
      typical: power('Power drawn in ordinary use.', '35 W', more),
      peak: power('The most it draws for seconds or longer.', '60 W', more),
    },
    what,
    '{ typical: 35 W, peak: 60 W }',
    more,
  );

/** Short peaks of a part that draws in bursts. */
export const peaks = list(
  group(
    {
      power: power('Power at the peak.', '520 W'),
      lasts: quantity('time', 'ms', 'How long a peak lasts at most.', '10 ms'),
    },
    'One class of peak.',
  ),
  'Short peaks over the sustained draw, by how long they last.',
  '[{ power: 520 W, lasts: 10 ms }]',
  { printed: 'Published measurements of the card; data sheets seldom have it.' },
);

/** Connectors by kind; `more.names` where the part decides what a bare number of pins means. */
export const connectors = (what: string, more: Words & { names?: Vocabulary } = {}) =>
  named(count('How many connectors of this kind.', '2'), what, '{ 24-pin: 1, EPS 8-pin: 2 }', {
    names: POWER_CONNECTOR_WORDS,
    ...more,
  });

/** Of a part with ports for drives. */
export const startsAtOnce = count(
  'How many disks that wait for their host it starts at once; the others follow by turns.',
  '2',
  { least: 1, printed: 'The handbook, under staggered spin-up.' },
);

export const fanFields = {
  size: length('Frame width of the fan.', '140 mm', {
    sheet: sheetLargest,
    printed: 'The data sheet, under fan dimensions.',
  }),
  thickness: length('Frame depth of the fan.', '25 mm', {
    sheet: sheetSmallest,
    printed: 'The data sheet, under fan dimensions.',
  }),
  pins: count('Pins of its connector: 3 runs by voltage, 4 by PWM.', '4', {
    sheet: sheetPins,
    printed: 'The data sheet, under connector.',
  }),
  current: quantity('current', 'A', 'Current of one fan at full speed.', '0.18 A', {
    full: true,
    printed: 'The label on the hub.',
  }),
  'start-current': quantity('current', 'A', 'Current of one fan while it starts.', '0.5 A', {
    printed: 'The data sheet, under starting current.',
  }),
  speed: quantity('rotation-speed', 'rpm', 'Full speed.', '1200 rpm', {
    full: true,
    printed: 'The data sheet, under speed.',
  }),
  airflow: quantity('flow', 'm³/h', 'Air moved with nothing in the way, at full speed.', '96 m³/h', {
    full: true,
    printed: 'The data sheet, under airflow.',
  }),
  pressure: quantity('pressure', 'Pa', 'Pressure against a closed end, at full speed.', '14 Pa', {
    full: true,
    printed: 'The data sheet, under static pressure.',
  }),
  level: quantity('sound-level', 'dBA', 'Sound pressure level at full speed.', '24 dBA', {
    full: true,
    ...inAcoustics,
  }),
  'level-at': quantity('length', 'm', 'The distance at which the level was measured.', '1 m', inSoundNote),
  lights: group(
    {
      voltage: quantity('voltage', 'V', 'Voltage of its lights.', '5 V', {
        printed: 'The data sheet, under lighting.',
      }),
      pins: count('Pins of their connector: 3 for lights set one by one, 4 for all alike.', '3', {
        sheet: sheetPins,
        printed: 'The data sheet, under lighting.',
      }),
    },
    'Its lights, where it has any.',
    '{ voltage: 5 V, pins: 3 }',
    { printed: 'The data sheet, under lighting.' },
  ),
  'hole-pitch': length('Distance between two neighbouring fixing holes.', '124.5 mm', {
    printed: 'The data sheet’s drawing of the fan.',
  }),
} as const;

const inRadiatorMeasures = { printed: 'The data sheet, under radiator dimensions.' } as const;

export const radiatorFields = {
  class: text('Its class: fan size times number of fans.', '240', {
    sheet: sheetRadiator,
    printed: 'The box, or the data sheet under radiator.',
  }),
  length: length('Real length, end tanks included.', '275 mm', { sheet: sheetLargest, ...inRadiatorMeasures }),
  width: length('Real width.', '120 mm', { sheet: sheetMiddle, ...inRadiatorMeasures }),
  thickness: length('Thickness without fans.', '27 mm', { sheet: sheetSmallest, ...inRadiatorMeasures }),
  'fan-size': length('Size of the fans it takes.', '120 mm', { printed: 'The data sheet, under radiator.' }),
  fans: count('How many fans it takes on one side.', '2', { printed: 'The data sheet, under radiator.' }),
} as const;
