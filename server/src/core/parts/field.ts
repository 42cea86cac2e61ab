// The words in which a table of fields is written: one line a fact, with its meaning, unit and an example.
import type { Dimension, UnitName } from '../quantity';
import type { Vocabulary } from '../trade/vocabulary';
import { ranges, type Range } from './ranges';

/** What a name can stand for: the things that files list by name. */
export const referents = [
  'drive',
  'slot',
  'port',
  'header',
  'memory slot',
  'fan place',
  'radiator place',
  'bay',
  'display output',
  'firmware version',
  'part file',
  'part',
  'step',
  'check',
  'finding',
] as const;
export type Referent = (typeof referents)[number];

/** Of a field whose text is such a name; of a map of names, its keys are. */
interface Refers {
  readonly refersTo?: Referent | readonly Referent[];
  /** Words that may stand there instead of a name. */
  readonly besides?: readonly string[];
}

/** What every field says of itself; hover, completion, the JSON Schemas and the documentation read it. */
export interface About {
  /** One sentence: what the fact is, and from where to where it is measured. */
  readonly what: string;
  /** A value as someone would write it. */
  readonly example: string;
  /** Where such a fact is usually printed, when that is not plain. */
  readonly printed?: string;
  /** What data sheets call it, English and German. */
  readonly labels?: readonly string[];
  /** A sheet’s text put into the words of this field, where it is one of those that such a field is printed in. */
  readonly sheet?: (text: string) => string | undefined;
}

export interface QuantityField extends About {
  readonly type: 'quantity';
  readonly dimension: Dimension;
  readonly unit: UnitName;
  /** What can be, in the dimension’s base unit, both ends included; outside it a value is a slip. */
  readonly range: Range;
  /** Whether it is room for a part: a limit stated for it is the room itself. */
  readonly room?: true;
  /** Whether it is meant at full speed: of a sheet’s sweep from the slowest, the upper end. */
  readonly full?: true;
  /** Bounds of what parts have, in base units, by which `1.752` is told from 1752; else those of the dimension. */
  readonly likely?: Range;
}
export interface CountField extends About {
  readonly type: 'count';
  readonly least: number;
  readonly most: number;
}
export interface TextField extends About, Refers {
  readonly type: 'text';
  readonly usual?: readonly string[];
  /** Spellings that are read as one word; a text outside them stays as it is, unless `closed` says otherwise. */
  readonly spellings?: Vocabulary;
  /** Whether a text outside the vocabulary is understood by nobody. */
  readonly closed?: boolean;
}
export interface VersionField extends About, Refers {
  readonly type: 'version';
}
export interface DateField extends About {
  readonly type: 'date';
}
export interface FlagField extends About {
  readonly type: 'flag';
}
export interface ChoiceField<C extends string = string> extends About, Refers {
  readonly type: 'choice';
  readonly choices: readonly C[];
  /** Other spellings of the choices. */
  readonly spellings?: Vocabulary<C>;
  /** Set where words of the writer's own may stand beside the choices; what they stand for, in words. */
  readonly own?: string;
}
/** A text with a form of its own, such as `PCIe 5 x4`; `parse` gives undefined for a text not of that form. */
export interface FormField<T = unknown> extends About, Refers {
  readonly type: 'form';
  readonly form: string;
  readonly parse: (text: string) => T | undefined;
  readonly usual?: readonly string[];
  /** What a text that is not of the form may have meant, best first. */
  readonly meant?: (text: string) => readonly string[] | undefined;
}
export interface ListField<E extends Field = Field> extends About {
  readonly type: 'list';
  readonly of: E;
  /** How many are read, where that is not the number set for any list. */
  readonly most?: number;
}
/**
 * A map whose keys are names of someone's own, such as a board's slots, or words of a vocabulary, such as kinds of
 * connector; every value is of one field.
 */
export interface NamedField<F = Field> extends About, Refers {
  readonly type: 'named';
  readonly of: F;
  readonly names?: Vocabulary;
  /** How many are read, where that is not the number set for any map of names. */
  readonly most?: number;
}
export interface GroupField<T extends Table = Table> extends About {
  readonly type: 'group';
  readonly fields: T;
  /** In a list: the key that a bare text stands for, `fit board` for `{ do: fit board }`. */
  readonly bare?: string;
}

export type ScalarField =
  | QuantityField
  | CountField
  | TextField
  | VersionField
  | DateField
  | FlagField
  | ChoiceField
  | FormField;
export type Field = ScalarField | ListField | NamedField | GroupField;

/** Whether more fields stand within it. */
export const isDeep = (field: Field): field is ListField | NamedField | GroupField =>
  field.type === 'group' || field.type === 'named' || field.type === 'list';

export type Table = {
  // biome-ignore lint/suspicious/noExplicitAny: a table with inferred value types may stand where any is asked for
  readonly [key: string]: ScalarField | FormField<any> | ListField<any> | NamedField<any> | GroupField<any>;
};

export type Words = { printed?: string; sheet?: (text: string) => string | undefined };
type Measured = Words & { range?: Range; room?: true; full?: true; likely?: Range };

export const quantity = (
  dimension: Dimension,
  unit: UnitName,
  what: string,
  example: string,
  { range = ranges[dimension], ...more }: Measured = {},
): QuantityField => ({ type: 'quantity', dimension, unit, range, what, example, ...more });
export const length = (what: string, example: string, more?: Measured): QuantityField =>
  quantity('length', 'mm', what, example, more);
export const power = (what: string, example: string, more?: Measured): QuantityField =>
  quantity('power', 'W', what, example, more);
/** No machine has more of anything that is counted. */
const mostOfAKind = 10_000;

export const count = (
  what: string,
  example: string,
  more: Words & { least?: number; most?: number } = {},
): CountField => ({
  type: 'count',
  least: more.least ?? 0,
  most: more.most ?? mostOfAKind,
  what,
  example,
  ...(more.printed ? { printed: more.printed } : {}),
  ...(more.sheet ? { sheet: more.sheet } : {}),
});
export const text = (
  what: string,
  example: string,
  more: Words & Refers & Pick<TextField, 'usual' | 'spellings' | 'closed'> = {},
): TextField => ({
  type: 'text',
  what,
  example,
  ...more,
});
export const version = (what: string, example: string, more: Words & Refers = {}): VersionField => ({
  type: 'version',
  what,
  example,
  ...more,
});
export const date = (what: string, example: string, more: Words = {}): DateField => ({
  type: 'date',
  what,
  example,
  ...more,
});
export const flag = (what: string, more: Words & { example?: string } = {}): FlagField => ({
  type: 'flag',
  what,
  example: 'true',
  ...more,
});
export const choice = <const C extends string>(
  choices: readonly C[],
  what: string,
  more: Words & Refers & { example?: C; spellings?: Vocabulary<NoInfer<C>>; own?: string } = {},
): ChoiceField<C> => ({ type: 'choice', choices, what, ...more, example: more.example ?? choices[0]! });
export const form = <T>(
  name: string,
  parse: (text: string) => T | undefined,
  what: string,
  example: string,
  more: Words & Refers & Pick<FormField, 'usual' | 'meant'> = {},
): FormField<T> => ({ type: 'form', form: name, parse, what, example, ...more });
export const list = <E extends Field>(
  of: E,
  what: string,
  example: string,
  more: Words & { most?: number } = {},
): ListField<E> => ({
  type: 'list',
  of,
  what,
  example,
  ...more,
});
export const group = <T extends Table>(
  fields: T,
  what: string,
  example = '',
  more: Words & { bare?: keyof T & string } = {},
): GroupField<T> => ({ type: 'group', fields, what, example, ...more });
export const named = <F extends Field>(
  of: F,
  what: string,
  example: string,
  more: Words & Refers & { names?: Vocabulary; most?: number } = {},
): NamedField<F> => ({
  type: 'named',
  of,
  what,
  example,
  ...more,
});
