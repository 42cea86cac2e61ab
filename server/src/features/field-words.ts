// A field in words: what it means, how its value is written.
import type { Field } from '../core/parts/field';
import { readScalar } from '../core/parts/scalar';
import { dimensions } from '../core/quantity';
import { usualSpellings, type Vocabulary } from '../core/trade/vocabulary';
import { code, paragraph, strong, type Block, type Piece } from './prose';

const mostChoices = 24;
/** How many labels of data sheets a hover names. */
const mostLabels = 4;

/** The meaning of a field, then how it is written and where it is usually printed. */
export function describeField(key: string, field: Field): Block[] {
  const blocks = [paragraph(strong(key), `: ${field.what}`), paragraph(...howWritten(field))];
  if (field.printed) blocks.push(paragraph(`Usually printed in: ${field.printed}`));
  if (field.labels) blocks.push(paragraph('Data sheets call it ', ...calledBy(field.labels), '.'));
  return blocks;
}

/** The labels that are met most, each once. */
const calledBy = (labels: readonly string[]): Piece[] =>
  labels.slice(0, mostLabels).flatMap((label, i) => [...(i === 0 ? [] : [', ']), code(label)]);

/** As which word a spelling is read, where it is not the word itself. */
export function readAs(field: Field, text: string): Block[] {
  if (field.type === 'list') return readAs(field.of as Field, text);
  if (field.type !== 'choice' && field.type !== 'text') return [];
  const { value, slip } = readScalar(field, text);
  return slip || typeof value !== 'string' || value === text
    ? []
    : [paragraph(code(text), ' is read as ', code(value), '.')];
}

function howWritten(field: Field): Piece[] {
  const example: Piece[] = field.example === '' ? [] : ['; for example ', code(field.example)];
  switch (field.type) {
    case 'quantity':
      return [`${sentence(dimensions[field.dimension].what)} with its unit, usually ${field.unit}`, ...example, '.'];
    case 'count':
      return [`A whole number of ${field.least} or more`, ...example, '.'];
    case 'flag':
      return [code('true'), ' or ', code('false'), '.'];
    case 'choice':
      return [
        'One of ',
        ...choices(field.choices, field.spellings),
        field.own === undefined ? '.' : `, or ${field.own} of your own.`,
      ];
    case 'form':
      return [sentence(field.form), ...example, '.'];
    case 'date':
      return ['A day as year, month and day', ...example, '.'];
    case 'version':
      return ['A version, as text in quotes', ...example, '.'];
    case 'text':
      return field.usual || field.closed
        ? [
            field.closed ? 'One of ' : 'Text; usual are ',
            ...choices(field.usual ?? field.spellings?.words ?? [], field.spellings),
            '.',
          ]
        : ['Text', ...example, '.'];
    case 'list':
      return ['A list', ...example, '.'];
    case 'named':
      return field.names
        ? ['Names with their values; known are ', ...choices(field.names.words, field.names), ...example, '.']
        : ['Names with their values', ...example, '.'];
    case 'group':
      return ['Keys with values', ...example, '.'];
  }
}

/** How many other spellings of a word a hover names. */
const mostSpellings = 2;

/** Words, each with some of the spellings that are read as it. */
function choices(all: readonly string[], of?: Vocabulary): Piece[] {
  const shown = all
    .slice(0, mostChoices)
    .flatMap((one, i) => [...(i === 0 ? [] : [', ']), code(one), ...also(one, of)]);
  return all.length > mostChoices ? [...shown, ' and more'] : shown;
}

function also(word: string, of: Vocabulary | undefined): Piece[] {
  const others = of ? usualSpellings(of, word, mostSpellings) : [];
  return others.length === 0 ? [] : [' (', ...others.flatMap((one, i) => [...(i === 0 ? [] : [', ']), code(one)]), ')'];
}

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
