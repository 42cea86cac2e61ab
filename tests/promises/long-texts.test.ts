// Texts of 50,000 characters are read in time that grows with them alone (promise P1).
import { describe, expect, it } from 'vitest';
import { parseBoxItem } from '../../server/src/core/parts/box-item';
import { readScalar } from '../../server/src/core/parts/scalar';
import { buildFile } from '../../server/src/core/manifest/build-file';
import { houseFile } from '../../server/src/core/manifest/house-file';
import { roles } from '../../server/src/core/manifest/places';
import { kinds } from '../../server/src/core/parts/kinds';
import type { Field, ScalarField, Table } from '../../server/src/core/parts/field';
import { readQuantity } from '../../server/src/core/quantity';
import { nearest, quoted, visible } from '../../server/src/core/text';
import { findSlip, handlesCell, speaksOf, type HandlingMistake } from '../../server/src/core/trade/bench-words';
import { wordFor } from '../../server/src/core/trade/caution-words';
import { parseDisplayLink, parseMode } from '../../server/src/core/trade/display';
import { parseLink } from '../../server/src/core/trade/links';
import { parseM2Size } from '../../server/src/core/trade/m2';
import { pinsOn } from '../../server/src/core/trade/names';

const length = 50_000;
const pieces = [
  ' ',
  '\t',
  '0',
  '1,',
  '1 ',
  '.',
  '-',
  ' - ',
  ' to ',
  'x',
  ' x2',
  'O1',
  'PCIe ',
  'press the ',
  'never press it. ',
  'lever, press it. ',
  'not, ',
  'the ',
  'bag ',
  'cuts ',
  'injure ',
  'edges ',
  'kills the ',
  'fan ',
  'vacuum ',
  'open the ',
  'supply ',
  'by the ',
  'burn the ',
  'could ',
  'not ',
  'hand and ',
  'a/',
  '\u{1F600}',
  '\u200b',
];
const texts = pieces.flatMap((piece) => {
  const many = piece.repeat(Math.ceil(length / piece.length));
  return [`2 mm${many}!`];
});

function scalarsOf(field: Field): ScalarField[] {
  if (field.type === 'list' || field.type === 'named') return scalarsOf(field.of as Field);
  if (field.type === 'group') return Object.values(field.fields as Table).flatMap((inner) => scalarsOf(inner as Field));
  return [field];
}
const tables: readonly Table[] = [
  buildFile,
  houseFile,
  ...Object.values(kinds),
  ...Object.values(roles).map((role) => role.fields),
];
const fields = tables.flatMap((table) => Object.values(table).flatMap((field) => scalarsOf(field as Field)));
/** One field of each way of reading. */
const kindsOfField = [
  ...new Map(
    fields.map((field) => [
      `${field.type} ${field.type === 'quantity' ? field.dimension : field.type === 'form' ? field.form : ''}`,
      field,
    ]),
  ).values(),
];

const slips: readonly HandlingMistake[] = [
  'processor pressed',
  'contacts touched',
  'vacuum cleaner',
  'bag as mat',
  'hot part touched',
  'held by its parts',
  'supply opened',
];

const slipIn = (text: string, slip: HandlingMistake): unknown => findSlip(text, slip, 'fit processor');

const readers: Readonly<Record<string, (text: string) => unknown>> = {
  'a quantity': (text) => readQuantity(text, 'length'),
  'an amount of money': (text) => readQuantity(text, 'money'),
  'a thing in a box': parseBoxItem,
  'a display mode': parseMode,
  'a display link': parseDisplayLink,
  'a link': parseLink,
  'an M.2 size': parseM2Size,
  'the name of a socket': (text) => pinsOn(text),
  'the word of a caution': wordFor,
  'what a caution speaks of': (text) => [
    speaksOf('coin cell', text),
    speaksOf('sharp edges', text),
    speaksOf('hot parts', text),
  ],
  'a handled cell': handlesCell,
  ...Object.fromEntries(
    slips.map((slip) => [`the slip “${slip}”`, (text: string) => slipIn(`processor ${text}`, slip)]),
  ),
  'the nearest word': (text) => nearest(text, ['board', 'cooler']),
  'a quoted text': (text) => [quoted(text), visible(text)],
  'every kind of field': (text) => kindsOfField.map((field) => readScalar(field, text)),
};

describe('a text of 50,000 characters', () => {
  it.each(Object.entries(readers))(
    'is read as %s at once',
    (name, read) => {
      for (const text of name === 'every kind of field' ? texts.slice(0, 8) : texts) {
        const started = process.cpuUsage();
        read(text);
        const { user, system } = process.cpuUsage(started);
        const allowed = name === 'every kind of field' ? 1500 : 500;
        expect((user + system) / 1000, JSON.stringify(text.slice(0, 30))).toBeLessThan(allowed);
      }
    },
    60_000,
  );
});
