// The fields of `bench:`: how a build is put together.
import { group, choice, quantity, flag, version, text, list } from '../parts/field';
import { BOARD_CONNECTOR_WORDS } from '../trade/connector-words';
import { UPDATE_ROUTES } from '../trade/firmware-route';
import {
  CLIP_WORDS,
  CORD_WORDS,
  DUST_WORDS,
  EQUALISE_WORDS,
  HELD_WORDS,
  ROUTE_WORDS,
  STRAP_WORDS,
  SURFACE_WORDS,
} from '../trade/work-words';

const surfaces = [
  'wood',
  'cardboard',
  'dissipative mat',
  'bare metal',
  'antistatic bag',
  'carpet',
  'glass',
  'plastic',
] as const;

export const bench = group(
  {
    surface: choice(surfaces, 'What the board lies on.', { spellings: SURFACE_WORDS }),
    'bench-start-on': choice(
      surfaces,
      'What the board lies on while it starts on the bench, where that is another thing.',
      { spellings: SURFACE_WORDS },
    ),
    mat: group(
      {
        resistance: quantity('resistance', 'MΩ', 'Resistance of a dissipative mat to its earthing point.', '10 MΩ'),
        earthed: flag('Whether it is bonded to the same point as the strap.'),
      },
      'The dissipative mat.',
      '{ resistance: 10 MΩ, earthed: true }',
    ),
    bags: choice(['opened part by part', 'opened all at the start'], 'When parts leave their bags.'),
    'held-by': choice(['edges', 'contacts', 'heat sink'], 'How boards and cards are held.', { spellings: HELD_WORDS }),
    'dust-removal': choice(['none', 'soft brush', 'canned air', 'vacuum cleaner'], 'How dust is taken off.', {
      example: 'canned air',
      spellings: DUST_WORDS,
    }),
    'residual-discharge': flag('Whether the power button is pressed once after unplugging.'),
    'stress-cool-down': choice(
      ['left to cool', 'worked on at once'],
      'What is done after a stress test before hands go in.',
    ),
    strap: group(
      {
        worn: flag('Whether a strap is worn at all.'),
        kind: choice(['corded', 'cordless'], 'With or without a cord.', { spellings: STRAP_WORDS }),
        'series-resistance': quantity('resistance', 'MΩ', 'Resistance in its cord.', '1 MΩ'),
        'clipped-to': choice(
          ['bare chassis', 'painted chassis', 'supply case', 'earth bonding plug', 'nothing'],
          'What its clip holds on to.',
          { spellings: CLIP_WORDS },
        ),
      },
      'The wrist strap.',
      '{ series-resistance: 1 MΩ, clipped-to: bare chassis }',
    ),
    'equalise-by': choice(
      ['strap', 'touching bare chassis', 'nothing'],
      'How person, chassis and part are brought to one potential.',
      { spellings: EQUALISE_WORDS },
    ),
    'power-cord': choice(
      ['unplugged', 'plugged, switch off', 'plugged, switch on'],
      'The supply’s power cord while hands are inside.',
      { spellings: CORD_WORDS },
    ),
    'supply-cover': choice(['closed', 'opened'], 'Whether the supply’s own housing stays closed.'),
    'glass-panel': choice(
      ['taken off first', 'left on'],
      'What is done with a glass side panel before the work; taken off, it lies flat on cloth.',
    ),
    'firmware-update': group(
      {
        to: version('The version to install.', '"1.20"', { refersTo: 'firmware version' }),
        by: choice(UPDATE_ROUTES, 'How.', { spellings: ROUTE_WORDS }),
        stick: group(
          {
            filesystem: choice(['FAT32', 'exFAT', 'NTFS', 'ext4'], 'Its file system.'),
            port: text('The USB port it goes into.', 'FLASH'),
            'file-name': text('Name of the file on it.', 'B7FORGE.CAP'),
          },
          'The stick.',
          '{ filesystem: FAT32, port: FLASH, file-name: B7FORGE.CAP }',
        ),
        cables: list(
          text('A power connector.', '24-pin', { spellings: BOARD_CONNECTOR_WORDS, closed: true }),
          'Power connectors that are in during the update.',
          '[24-pin, EPS 8-pin]',
        ),
        'older-processor': group(
          {
            family: text('Its family.', 'Calder C6'),
            model: text('Its model.', 'C6 320'),
            graphics: flag('Whether it drives a display.'),
          },
          'A listed older processor on hand.',
          '{ family: Calder C6, graphics: true }',
        ),
        'memory-profile': choice(
          ['standard', 'raised'],
          'How the memory is set during the update: at its standard speed, or raised by a profile.',
        ),
      },
      'A firmware update before first use.',
      '{ to: "1.20", by: stick without processor }',
    ),
  },
  'How it will be put together.',
  '{ surface: wood, power-cord: unplugged }',
);
