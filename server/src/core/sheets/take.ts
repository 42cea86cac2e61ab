// One value of a sheet held against a field of any type: what it says plainly, and what it may say.
import type { ChoiceField, Field, ListField, QuantityField, ScalarField } from '../parts/field';
import { readScalar } from '../parts/scalar';
import type { Quantity } from '../quantity';
import { wordOf } from '../trade/vocabulary';
import { isBlank } from './clean';
import { canonical, takeQuantity, withDots } from './take-quantity';
import { doubtful, nothing, plain, type Place, type Take } from './taken';
import { takerOf } from './takers';

/** Reads a value for a field: by the way of the field’s own where it has one, else as its type is written. */
export function take(value: string, place: Place): Take {
  if (isBlank(value)) return nothing;
  const own = takerOf(place)?.(value, place);
  if (own) return own;
  const { field } = place;
  if (field.type === 'quantity') return takeQuantity(value, place);
  if (field.type === 'list') return takeList(value, place, field);
  if (field.type === 'group' || field.type === 'named') return nothing;
  const text = scalarOf(field, value);
  if (text === undefined) return nothing;
  const fact = { path: place.path, value: text };
  return place.said.isMost ? doubtful(fact) : plain(fact);
}

/** The canonical text of a scalar that is plain; undefined for anything else. */
export function scalarOf(field: ScalarField, value: string): string | undefined {
  const text = withDots(value.trim());
  const { value: read, slip } = readScalar(field, text);
  if (field.type === 'flag') return flagOf(read, slip?.instead);
  if (slip || read === undefined) return undefined;
  switch (field.type) {
    case 'quantity':
      return canonical(read as Quantity, field as QuantityField);
    case 'choice':
      return read as string;
    case 'text':
      return field.closed || field.spellings ? wordIn(field, read as string) : shortText(read as string);
    case 'form':
    case 'date':
      return text;
    case 'version':
      return shortText(read as string);
    case 'count':
      return String(read);
  }
}

const flagOf = (read: unknown, instead: readonly string[] | undefined): string | undefined =>
  typeof read === 'boolean' ? String(read) : instead?.length === 1 ? instead[0] : undefined;

/** A field with words of its own takes no others from a sheet. */
function wordIn({ spellings }: { readonly spellings?: ChoiceField['spellings'] }, read: string): string | undefined {
  return spellings ? wordOf(spellings, read) : read;
}

/** A name, and no sentence. */
const shortText = (text: string): string | undefined =>
  text.length <= 60 && !/[.!?] |[.!?]$|[:;|]/.test(text) ? text : undefined;

const SEPARATORS = /\s?[,;•·\n]\s?|\s\/\s|\s(?:and|und|&|\+)\s|(?<=[a-z])\/(?=[a-z])/i;

/** Every one of a list must be plain. */
function takeList(value: string, place: Place, { of }: ListField): Take {
  const inner = of as Field;
  if (inner.type === 'group' || inner.type === 'list' || inner.type === 'named') return nothing;
  const parts = value.split(SEPARATORS).filter((part) => part.trim() !== '');
  const read = parts.map((part) => scalarOf(inner, part));
  if (read.length === 0 || read.some((one) => one === undefined)) return nothing;
  const fact = { path: place.path, value: [...new Set(read as string[])] };
  return place.said.isMost ? doubtful(fact) : plain(fact);
}
