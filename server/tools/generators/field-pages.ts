// The reference of all fields, server/docs/fields.md: made from the tables that the reader itself uses.
import { asBuiltFile } from '../../src/core/manifest/as-built';
import { buildFile } from '../../src/core/manifest/build-file';
import { knownFile } from '../../src/core/manifest/known-file';
import { houseFile } from '../../src/core/manifest/house-file';
import { roles } from '../../src/core/manifest/places';
import type { Field, NamedField, Table } from '../../src/core/parts/field';
import { kindNames, kinds } from '../../src/core/parts/kinds';
import { dimensions, units, type Dimension } from '../../src/core/quantity';
import { usualSpellings, type Vocabulary } from '../../src/core/trade/vocabulary';
import type { Generator } from './index';

const head = ['| key | meaning | unit | spelling | example |', '| --- | --- | --- | --- | --- |'];
const code = (text: string): string => (text === '' ? '' : `\`${text.replaceAll('|', '\\|')}\``);
const cell = (text: string): string => text.replaceAll('|', '\\|').replace(/\s+/g, ' ').trim();

/** How a value is written, for someone who looks a key up. */
function spelling(field: Field): string {
  switch (field.type) {
    case 'quantity':
      return `[${dimensions[field.dimension].what}](#${anchor(field.dimension)})`;
    case 'count':
      return `whole number ≥ ${field.least}`;
    case 'flag':
      return '`true`, `false`';
    case 'choice':
      return `${words(field.choices, field)}${field.own === undefined ? '' : `, or ${field.own} of your own`}`;
    case 'date':
      return 'year-month-day';
    case 'version':
      return 'text in quotes';
    case 'form':
      return field.usual ? `${field.form}: ${words(field.usual, field)}` : field.form;
    case 'text':
      return field.usual ? `text; usual: ${words(field.usual, field)}` : words([], field) || 'text';
    case 'list':
      return isScalar(field.of) ? `list of: ${spelling(field.of)}` : 'list';
    case 'named':
      return `${namesOf(field)}, each with${isScalar(field.of as Field) ? ': ' : ' '}${spelling(field.of as Field)}`;
    case 'group':
      return 'keys';
  }
}

/** Names of someone’s own, or the words of a vocabulary, of which the map knows no others. */
const namesOf = ({ names }: NamedField): string => (names ? `names: ${spelled(names.words, names)}` : 'names');

/** Canonical words, each with the other spellings that are read where the table holds any. */
function words(all: readonly string[], field: Field): string {
  const others = (field as { spellings?: Vocabulary }).spellings;
  return spelled(all.length > 0 ? all : (others?.words ?? []), others);
}

const spelled = (words: readonly string[], of: Vocabulary | undefined): string =>
  words
    .map((word) => {
      const also = of ? usualSpellings(of, word, mostSpellings) : [];
      return code(word) + (also.length > 0 ? ` (also ${also.map(code).join(', ')})` : '');
    })
    .join(', ');

/** Case, blanks and hyphens never matter; more spellings of one word than this help nobody. */
const mostSpellings = 4;

/** All labels of a field would fill the page. */
const mostLabels = 8;

const isScalar = (field: Field): boolean => field.type !== 'group' && field.type !== 'list' && field.type !== 'named';
const unitOf = (field: Field): string =>
  field.type === 'quantity'
    ? (units.get(field.unit)?.spellings[0] ?? field.unit)
    : field.type === 'list' || field.type === 'named'
      ? unitOf(field.of as Field)
      : '';

function rowOf(key: string, field: Field): string {
  const what =
    cell(field.what) +
    (field.printed ? ` Usually printed: ${cell(field.printed)}` : '') +
    (field.labels ? ` On data sheets: ${field.labels.slice(0, mostLabels).map(cell).join(', ')}.` : '');
  return `| ${code(key)} | ${what} | ${unitOf(field)} | ${spelling(field)} | ${code(field.example)} |`;
}

/** A field and all that stands below it; `[]` is one of a list, `NAME` a name of someone's own. */
function rowsOf(key: string, field: Field): string[] {
  return [rowOf(key, field), ...below(key, field)];
}

function below(key: string, field: Field): string[] {
  if (field.type === 'group') return rowsIn(field.fields, `${key}.`);
  if (field.type === 'list') return below(`${key}[]`, field.of);
  return field.type === 'named' ? below(`${key}.NAME`, field.of as Field) : [];
}

function rowsIn(table: Table, before = ''): string[] {
  return Object.entries(table).flatMap(([key, field]) => rowsOf(before + key, field as Field));
}

const section = (title: string, lines: readonly string[]): string[] => [`## ${title}`, '', ...lines, ''];

/** The anchor that a heading gets where Markdown is shown. */
const anchor = (heading: string): string => heading.toLowerCase().replaceAll(' ', '-');

function roleLines(): string[] {
  return Object.entries(roles).flatMap(([name, role]) => [
    `### parts.${name}`,
    '',
    `${role.what} ${role.several ? 'One, or a list of them.' : 'One.'} ` +
      `Beside these keys it takes every fact of [a ${role.kind}](#facts-of-a-${role.kind}).`,
    '',
    ...head,
    ...rowsIn(role.fields as Table),
    '',
  ]);
}

function dimensionLines(): string[] {
  return (Object.keys(dimensions) as Dimension[]).flatMap((dimension) => {
    const own = [...units.values()].filter((unit) => unit.dimension === dimension);
    const all = [...new Set(own.flatMap((unit) => unit.spellings))].map(code).join(', ');
    const text = dimension === 'money' ? 'A currency by its three letters, such as `EUR`.' : all;
    return [`### ${dimension}`, '', text, ''];
  });
}

function fieldsPage(): string {
  const lines = [
    '# The fields',
    '',
    'Every key that is read, from the tables that the reader itself uses. `[]` stands for one of a list, ' +
      '`NAME` for a ' +
      'name of your own or of the board’s maker. A quantity carries its unit in its value; a range is written ' +
      '`4 to 6 mm`, a bound `at most 6 mm`. Of a word’s other spellings some are named; case, blanks and ' +
      'hyphens never matter. A key that is left out is a fact not stated, and stays unknown.',
    '',
    ...section('A build: NAME.pcbuild.yaml', [...head, ...rowsIn(buildFile as Table)]),
    ...section('The parts of a build', roleLines()),
    ...kindNames.flatMap((kind) => section(`Facts of a ${kind}`, [...head, ...rowsIn(kinds[kind] as Table)])),
    ...section('House settings: fettle.yaml', [...head, ...rowsIn(houseFile as Table)]),
    ...section('Known findings: NAME.known.yaml', [...head, ...rowsIn(knownFile as Table)]),
    ...section('A machine as built: NAME.asbuilt.yaml', [...head, ...rowsIn(asBuiltFile as Table)]),
    ...section('Units', ['What is read, by what is measured; the first spelling of a unit is the one written.', '']),
    ...dimensionLines(),
  ];
  return `${lines.join('\n').trimEnd()}\n`.replace(/\n{3,}/g, '\n\n');
}

export const fieldPages: Generator = { make: () => new Map([['server/docs/fields.md', fieldsPage()]]) };
