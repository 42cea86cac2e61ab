// What is measured before a machine is handed over, and what is handed over with it.
import { hearingMm } from '../parts/ranges';
import { DRIVE_TEST_WORDS, HANDED_WORDS, LOGGED_WORDS, THROTTLING_WORDS, TRANSPORT_WORDS } from '../trade/work-words';
import { choice, count, group, list, power, quantity, text } from '../parts/field';

export const handedOver = [
  'serials',
  'firmware',
  'settings',
  'slots',
  'temperatures',
  'noise',
  'wall power',
  'logs',
  'spares',
] as const;

export const acceptance = group(
  {
    'memory-test': group(
      {
        passes: count('Full passes over all memory.', '1', { least: 1 }),
        errors: count('Errors that are let pass.', '0'),
      },
      'The memory test.',
      '{ passes: 1, errors: 0 }',
    ),
    'stress-test': group(
      {
        lasts: quantity('time', 'min', 'How long processor and graphics are loaded at least.', '30 min'),
        'until-rise': quantity(
          'temperature-difference',
          'K',
          'It runs on until temperatures rise by less than this in ten minutes.',
          '1 K',
        ),
        throttling: choice(['none', 'allowed'], 'Whether a part may slow itself down.', {
          spellings: THROTTLING_WORDS,
        }),
        margin: quantity('temperature-difference', 'K', 'How far below its limit the processor must stay.', '5 K'),
      },
      'The stress test.',
      '{ until-rise: 1 K, throttling: none }',
    ),
    'drive-tests': list(
      group(
        {
          drive: text('Name of a drive; without it, each drive.', 'scratch', { refersTo: 'drive' }),
          test: choice(['long self-test', 'short self-test', 'read through'], 'What is run.', {
            spellings: DRIVE_TEST_WORDS,
          }),
          'failed-sectors': count('Reallocated, pending and uncorrectable sectors that are let pass.', '0'),
        },
        'One test.',
      ),
      'Tests of the drives.',
      '[{ test: long self-test, failed-sectors: 0 }]',
    ),
    'room-temperature': choice(
      ['logged', 'not logged'],
      'Whether the room’s temperature is written beside every other.',
      { spellings: LOGGED_WORDS },
    ),
    'wall-power': power('Most power from the wall under full load, measured.', '450 W'),
    noise: group(
      {
        level: quantity('sound-level', 'dBA', 'Loudest sound pressure level under load, measured.', '32 dBA'),
        at: quantity('length', 'm', 'At this distance.', '1 m', { range: hearingMm }),
      },
      'The noise.',
      '{ level: 32 dBA, at: 1 m }',
    ),
    'processor-temperature': quantity('temperature', '°C', 'Hottest the processor gets, measured.', '85 °C'),
    other: list(
      text('One line, with the number that is to be met.', 'Copies 100 GB to archive in under 12 min.'),
      'Anything else, each with its number.',
      '[Starts in under 25 s.]',
    ),
  },
  'What must be shown before it is handed over.',
  '{ memory-test: { passes: 1, errors: 0 }, room-temperature: logged }',
);

export const handOver = group(
  {
    includes: list(
      choice(handedOver, 'One thing.', { spellings: HANDED_WORDS }),
      'What goes with the machine, on paper or in a file.',
      `[${handedOver.join(', ')}]`,
    ),
    transport: choice(['none', 'by hand', 'by car', 'by carrier'], 'How it travels.', {
      example: 'by carrier',
      spellings: TRANSPORT_WORDS,
    }),
    cards: choice(['fitted', 'taken out'], 'Whether cards stay in their slots on the way.', { example: 'taken out' }),
    cooler: choice(['fitted', 'taken off'], 'Whether the processor cooler stays on the board on the way.', {
      example: 'taken off',
    }),
  },
  'How it is handed over.',
  '{ includes: [serials, firmware, settings], transport: by carrier, cards: taken out }',
);
