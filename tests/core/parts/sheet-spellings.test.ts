// Spellings as data sheets print them, each read at its field or asked about; a map’s names as well as its values.
import { describe, expect, it } from 'vitest';
import type {
  Field,
  GroupField,
  ListField,
  NamedField,
  ScalarField,
  Table,
} from '../../../server/src/core/parts/field';
import { kinds } from '../../../server/src/core/parts/kinds';
import { nameSlip, readScalar } from '../../../server/src/core/parts/scalar';
import { wordOf } from '../../../server/src/core/trade/vocabulary';
import { ASKED, READ } from './sheet-spellings';

const fieldAt = (path: string): Field => {
  const [kind, ...steps] = path.split('.');
  let field: Field = { type: 'group', fields: kinds[kind as keyof typeof kinds] as Table, what: '', example: '' };
  for (const step of steps) {
    while (field.type === 'list') field = (field as ListField).of;
    field = (step === 'NAME' ? (field as NamedField).of : (field as GroupField).fields[step]) as Field;
  }
  return field.type === 'list' ? field.of : field;
};

/** A value as one text: a quantity in its base unit, with both ends where they differ. */
function shown(value: unknown): string {
  if (typeof value !== 'object' || value === null) return String(value);
  if (!('lo' in value && 'hi' in value)) return JSON.stringify(value);
  return value.lo === value.hi ? String(value.lo) : `${value.lo}..${value.hi}`;
}

describe('spellings of data sheets', () => {
  it.each(READ)('%s reads %s', (path, value, spellings) => {
    const field = fieldAt(path);
    for (const one of spellings) {
      if (field.type === 'named') expect(wordOf(field.names!, one), one).toBe(value);
      else {
        const { slip, value: read } = readScalar(field as ScalarField, one);
        expect(slip?.message, one).toBeUndefined();
        expect(shown(read), one).toBe(value);
      }
    }
  });

  it.each(ASKED)('%s asks, offering %s', (path, instead, spellings) => {
    const field = fieldAt(path);
    for (const one of spellings) {
      const slip = field.type === 'named' ? nameSlip(field.names!, one) : readScalar(field as ScalarField, one).slip;
      expect(slip?.instead.join(' or '), one).toBe(instead);
    }
  });
});
