// A field in words: what it means, how its value is written.
import type { Field } from '../core/parts/field';
import { readScalar } from '../core/parts/scalar';
import { dimensions } from '../core/quantity';
import { usualSpellings, type Vocabulary } from '../core/trade/vocabulary';
import type { Language } from '../core/words/language';
import { code, paragraph, strong, type Block, type Piece } from './prose';

const mostChoices = 24;
/** How many labels of data sheets a hover names. */
const mostLabels = 4;

/** The meaning of a field, then how it is written and where it is usually printed. */
export function describeField(key: string, field: Field, language: Language): Block[] {
  const blocks = [
    paragraph(strong(key), `: ${language.word(field.what)}`),
    paragraph(...howWritten(field, language), '.'),
  ];
  if (field.printed) blocks.push(paragraph(language.words`Usually printed in: ${language.word(field.printed)}`));
  if (field.labels) {
    const [called, ...others] = calledBy(field.labels);
    blocks.push(paragraph(...language.pieces`Data sheets call it ${called!}`, ...others, '.'));
  }
  return blocks;
}

/** The labels that are met most, each once. */
const calledBy = (labels: readonly string[]): Piece[] =>
  labels.slice(0, mostLabels).flatMap((label, i) => [...(i === 0 ? [] : [', ']), code(label)]);

/** As which word a spelling is read, where it is not the word itself. */
export function readAs(field: Field, text: string, language: Language): Block[] {
  if (field.type === 'list') return readAs(field.of as Field, text, language);
  if (field.type !== 'choice' && field.type !== 'text') return [];
  const { value, slip } = readScalar(field, text);
  return slip || typeof value !== 'string' || value === text
    ? []
    : [paragraph(...language.pieces`${code(text)} is read as ${code(value)}.`)];
}

/** Without the stop at its end. */
function howWritten(field: Field, language: Language): Piece[] {
  const example = field.example === '' ? [] : language.pieces`; for example ${code(field.example)}`;
  switch (field.type) {
    case 'quantity': {
      const what = sentence(language.word(dimensions[field.dimension].what));
      return [language.words`${what} with its unit, usually ${field.unit}`, ...example];
    }
    case 'count':
      return [language.words`A whole number of ${field.least} or more`, ...example];
    case 'flag':
      return language.pieces`${code('true')} or ${code('false')}`;
    case 'choice':
      return [
        language.word('One of '),
        ...choices(field.choices, language, field.spellings),
        ...(field.own === undefined ? [] : [language.words`, or ${language.word(field.own)} of your own`]),
      ];
    case 'form':
      return [sentence(language.word(field.form)), ...example];
    case 'date':
      return [language.word('A day as year, month and day'), ...example];
    case 'version':
      return [language.word('A version, as text in quotes'), ...example];
    case 'text':
      return field.usual || field.closed
        ? [
            field.closed ? language.word('One of ') : language.word('Text; usual are '),
            ...choices(field.usual ?? field.spellings?.words ?? [], language, field.spellings),
          ]
        : [language.word('Text'), ...example];
    case 'list':
      return [language.word('A list'), ...example];
    case 'named': {
      const known = field.names
        ? [language.word('; known are '), ...choices(field.names.words, language, field.names)]
        : [];
      return [language.word('Names with their values'), ...known, ...example];
    }
    case 'group':
      return [language.word('Keys with values')];
  }
}

/** How many other spellings of a word a hover names. */
const mostSpellings = 2;

/** Words, each with some of the spellings that are read as it. */
function choices(all: readonly string[], language: Language, of?: Vocabulary): Piece[] {
  const shown = all
    .slice(0, mostChoices)
    .flatMap((one, i) => [...(i === 0 ? [] : [', ']), code(one), ...also(one, of)]);
  return all.length > mostChoices ? [...shown, language.word(' and more')] : shown;
}

function also(word: string, of: Vocabulary | undefined): Piece[] {
  const others = of ? usualSpellings(of, word, mostSpellings) : [];
  return others.length === 0 ? [] : [' (', ...others.flatMap((one, i) => [...(i === 0 ? [] : [', ']), code(one)]), ')'];
}

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
