// The fields of `fettle.yaml`, the house settings.
import { airRiseK } from '../parts/ranges';
import { choice, count, group, list, named, quantity, text } from '../parts/field';

export const grades = ['harm', 'stop', 'shortfall', 'note', 'unknown'] as const;
export type Grade = (typeof grades)[number];

export const margins = {
  'supply-headroom': quantity(
    'percent',
    '%',
    'Share of the supply’s rating to leave free under sustained load.',
    '20 %',
  ),
  'processor-temperature': quantity(
    'temperature-difference',
    'K',
    'How far below its limit the processor is to stay.',
    '5 K',
  ),
  'room-rise': quantity('temperature-difference', 'K', 'How much warmer the air may get inside the case.', '15 K', {
    range: airRiseK,
  }),
  clearance: quantity('length', 'mm', 'Room to leave between parts.', '2 mm'),
  'hanging-card': quantity(
    'mass',
    'g',
    'Mass of a card 300 mm long that may hang in its slot without support; of a longer card, less in proportion.',
    '1000 g',
  ),
  'fact-age': quantity('time', 'day', 'Age at which a board’s support list is to be read again.', '365 d'),
  'price-age': quantity('time', 'day', 'Age at which a price is to be read again.', '90 d'),
} as const;

export const houseFile = {
  format: count('Version of this format.', '1', { least: 1 }),
  parts: list(text('A folder.', 'parts'), 'Folders that hold part files, in order of precedence.', '[parts]'),
  margins: group(margins, 'Margins of the house.', '{ supply-headroom: 20 % }'),
  grades: named(
    choice([...grades, 'off'], 'The grade it gets in this house.', { example: 'note' }),
    'Other grades for single checks.',
    '{ price-old: off }',
    { refersTo: 'check' },
  ),
  currency: text('The currency of the house.', 'EUR'),
  known: list(
    text('A file whose name ends in `.known.yaml`, by its path below this one.', 'old.known.yaml'),
    'Files of known findings, as `fettle check --record-known` writes them: what stands in them is let stand until ' +
      'its day, harm never.',
    '[old.known.yaml]',
  ),
} as const;
