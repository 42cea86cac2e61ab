// The facts of a case, a fan, a radiator and a fixing.
import { BAY_WORDS, SHAPE_WORDS } from '../trade/drive-words';
import { CABLE_WORDS } from '../trade/connector-words';
import { HEADER_WORDS } from '../trade/header-words';
import { parseCaseOpenings } from '../trade/slot-words';
import { BOARD_SIZE_WORDS, BRACKET_WORDS, STANDOFF_WORDS } from '../trade/board-words';
import {
  sheetBoardSize,
  sheetCount,
  sheetFrontCable,
  sheetGlass,
  sheetOneOfSizes,
  sheetRadiator,
} from '../trade/sheet-forms';
import { SUPPLY_FORM_WORDS } from '../trade/supply-sheet-words';
import { choice, count, flag, form, group, length, list, named, power, quantity, text } from './field';
import { common, fanFields, inPower, inSoundNote, radiatorFields } from './common';
import { supplyForms } from './supply';
import { brackets } from './devices';

const inClearance = { printed: 'The data sheet, under clearance.' } as const;
const inBoards = { printed: 'The data sheet, under board sizes.' } as const;
const onTrayPage = { printed: 'The handbook’s page on fitting the board.' } as const;
const inFans = { printed: 'The data sheet, under fan places.' } as const;
const onFanPage = { printed: 'The handbook’s page on fitting fans.' } as const;
const inRadiators = { printed: 'The data sheet, under radiator places.' } as const;
const onBag = { printed: 'The bag, or the handbook’s list of screws.' } as const;

export const pcCase = {
  ...common,
  'board-sizes': list(
    text('A board size.', 'ATX', { spellings: BOARD_SIZE_WORDS, closed: true, sheet: sheetBoardSize }),
    'Boards its tray takes.',
    '[ATX, microATX, Mini-ITX]',
    inBoards,
  ),
  'board-depth': length('Deepest board, from its rear edge to its front edge.', '277 mm', { room: true, ...inBoards }),
  standoffs: group(
    {
      pattern: text('The tray’s pattern as delivered; full where every hole of the standards has one.', 'ATX', {
        usual: ['full', 'ATX', 'microATX', 'Mini-ITX'],
        spellings: STANDOFF_WORDS,
        closed: true,
        ...onTrayPage,
      }),
      removable: flag('Whether single standoffs come out.', onTrayPage),
      height: length('Height of the standoffs.', '6.5 mm', onTrayPage),
    },
    'The standoffs on the tray.',
    '{ pattern: ATX, removable: true, height: 6.5 mm }',
    onTrayPage,
  ),
  'cooler-height': length('Room for a processor cooler, from the processor.', '165 mm', { room: true, ...inClearance }),
  'card-length': length('Room for an expansion card, front fans in place.', '330 mm', { room: true, ...inClearance }),
  'card-height': length('Room from the board’s edge of the slot to the side panel.', '160 mm', {
    room: true,
    ...inClearance,
  }),
  'card-thickness': length('Room for an expansion card’s thickness, where the case states it.', '60 mm', {
    room: true,
    ...inClearance,
  }),
  openings: form(
    'a number of openings',
    parseCaseOpenings,
    'Expansion openings at the rear, in line with the board’s slots.',
    '7',
    { printed: 'The data sheet, under expansion slots.' },
  ),
  'vertical-openings': count('Openings for a card that stands on a riser; 0 for none.', '2', {
    printed: 'The data sheet, under expansion slots: the 2 of `7+2`.',
  }),
  bracket: choice(brackets, 'Height of the expansion openings.', {
    spellings: BRACKET_WORDS,
    printed: 'The data sheet, under expansion slots.',
  }),
  'supply-forms': list(
    choice(supplyForms, 'A supply form.', { example: 'ATX', spellings: SUPPLY_FORM_WORDS }),
    'Supplies it takes.',
    '[ATX]',
    {
      printed: 'The data sheet, under power supply.',
    },
  ),
  'tray-opening': flag('Whether the tray has an opening behind the processor.', {
    printed: 'The maker’s pictures of the tray.',
  }),
  'supply-depth': length('Room for the supply’s depth, connectors and bends not counted.', '200 mm', {
    room: true,
    ...inClearance,
  }),
  bays: named(
    count('How many.', '2'),
    'Drive bays by shape; a combined bay is `3.5 or 2.5 in`.',
    '{ 3.5 in: 2, 2.5 in: 3 }',
    {
      names: BAY_WORDS,
      printed: 'The data sheet, under drive bays.',
    },
  ),
  'bay-thread': named(
    choice(['M3', '6-32', 'clips'], 'What holds a drive of this shape.'),
    'What holds a drive in its bay, by the drive’s shape.',
    '{ 3.5 in: 6-32, 2.5 in: M3 }',
    { names: SHAPE_WORDS, printed: 'The handbook’s page on fitting drives.' },
  ),
  'bay-screw-length': named(
    length('How far the screws reach into a drive of this shape.', '3 mm'),
    'How far the bays’ screws reach into a drive, by the drive’s shape.',
    '{ 3.5 in: 3 mm, 2.5 in: 2.5 mm }',
    { names: SHAPE_WORDS },
  ),
  'fan-places': named(
    group(
      {
        sizes: list(
          quantity('length', 'mm', 'A fan size.', '120 mm', { sheet: sheetOneOfSizes }),
          'Fan sizes it takes.',
          '[120 mm, 140 mm]',
          inFans,
        ),
        count: count('How many fans of its largest size.', '3', { least: 1, sheet: sheetCount, ...inFans }),
        length: length('Room for a row of fans, where smaller ones than its largest go in.', '360 mm', onFanPage),
        thickness: length('Thickest fan that goes in, where the case states it.', '25 mm', {
          room: true,
          ...inFans,
        }),
        fitted: count('Fans of the case’s own that are already there.', '0', {
          printed: 'The data sheet, under fans included.',
        }),
        level: quantity('sound-level', 'dBA', 'Sound pressure level of one fitted fan at full speed.', '25 dBA', {
          printed: 'The data sheet of the fans included.',
        }),
        'level-at': quantity('length', 'm', 'The distance at which the level was measured.', '1 m', inSoundNote),
        flow: choice(['in', 'out'], 'Which way the fans that are already there blow.', onFanPage),
        airflow: quantity(
          'flow',
          'm³/h',
          'Air that one of them moves with nothing in the way, at full speed.',
          '90 m³/h',
          { printed: 'The data sheet of the fans included.' },
        ),
      },
      'One place for fans.',
    ),
    'Places for fans: front, rear, top, bottom, side.',
    '{ front: { sizes: [120 mm, 140 mm], count: 2, fitted: 0 } }',
    inFans,
  ),
  'radiator-places': named(
    group(
      {
        length: length('Longest radiator, end tanks included.', '290 mm', { room: true, ...inRadiators }),
        classes: list(
          text('A radiator class.', '240', {
            usual: ['120', '140', '240', '280', '360', '420'],
            sheet: sheetRadiator,
          }),
          'Radiator classes it takes, where no length is stated.',
          '["240", "280"]',
          inRadiators,
        ),
        width: length('Widest radiator.', '140 mm', { room: true, ...inRadiators }),
        thickness: length('Room for radiator and fans together.', '60 mm', {
          room: true,
          printed: 'The handbook’s page on fitting radiators.',
        }),
        'tube-path': length('Length of the path from the processor to the far end of a radiator there.', '320 mm'),
        'fan-sizes': list(
          quantity('length', 'mm', 'A fan size.', '120 mm'),
          'Fan sizes of radiators it takes.',
          '[120 mm]',
          inRadiators,
        ),
      },
      'One place for a radiator.',
    ),
    'Places for radiators; {} for none.',
    '{ top: { length: 290 mm, thickness: 60 mm } }',
    inRadiators,
  ),
  'front-cables': list(
    text('A front cable.', 'front USB-C', { spellings: HEADER_WORDS, closed: true, sheet: sheetFrontCable }),
    'Cables of the front panel, each as the kind of header it wants.',
    '[front panel, front USB 3, front audio]',
    { printed: 'The handbook’s page on the front panel’s cables.' },
  ),
  'cable-paths': named(
    length('Length of the path from the supply.', '520 mm'),
    'How far cables must reach, by kind of connector, along the tidy path.',
    '{ EPS 8-pin: 520 mm, 24-pin: 380 mm }',
    { names: CABLE_WORDS },
  ),
  open: flag('Whether it is an open frame, without walls around the parts.', {
    example: 'false',
    printed: 'The maker’s pictures of the case.',
  }),
  'rated-power': power('Of a case that cools the parts by its own walls: the heat it is rated to give off.', '65 W', {
    printed: 'The data sheet, under cooling.',
  }),
  'glass-panel': flag('Whether a side panel is of glass.', {
    sheet: sheetGlass,
    printed: 'The data sheet, under materials.',
  }),
  'lid-earth': flag('Whether bare metal can be reached for a strap’s clip.'),
} as const;

export const fan = {
  ...common,
  ...fanFields,
  draw: group(
    {
      typical: power('Power in ordinary use.', '1.2 W', inPower),
      peak: power('Power at full speed.', '2.2 W', { printed: 'The label on the hub, as volts and amperes.' }),
    },
    'What one fan draws.',
  ),
} as const;

export const radiator = { ...common, ...radiatorFields } as const;

export const fixing = {
  ...common,
  item: text('What it is.', 'drive screw', {
    usual: ['drive screw', 'board screw', 'fan screw', 'M.2 screw'],
    ...onBag,
  }),
  thread: text('Its thread.', 'M3', { usual: ['M3', '6-32', 'M2'], ...onBag }),
  length: length('Length of its shaft.', '6 mm', onBag),
} as const;
