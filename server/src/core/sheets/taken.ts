// What is taken from one value of a sheet: facts that are plain, or what it may have meant.
import type { Field } from '../parts/field';
import type { Kind } from '../parts/kinds';
import type { Qualified } from './label-index';

/** A fact in canonical spelling: keys from the part file’s root, and the value’s text. */
export interface Taken {
  readonly path: readonly string[];
  /** A list of texts stands for a list of scalars, which lines of one label add to; `{}` for a group of no keys. */
  readonly value: string | readonly string[];
}

export interface Take {
  readonly facts: readonly Taken[];
  /** Read, and not plain. */
  readonly perhaps: readonly Taken[];
}

export const nothing: Take = { facts: [], perhaps: [] };
export const plain = (...facts: readonly Taken[]): Take => ({ facts, perhaps: [] });
export const doubtful = (...perhaps: readonly Taken[]): Take => ({ facts: [], perhaps });
export const together = (takes: readonly Take[]): Take => ({
  facts: takes.flatMap(({ facts }) => facts),
  perhaps: takes.flatMap(({ perhaps }) => perhaps),
});

/** Where a value stands, for those who read it. */
export interface Place {
  readonly kind: Kind;
  readonly path: readonly string[];
  readonly field: Field;
  readonly label: string;
  readonly heading: string;
  readonly said: Qualified;
  /** All labels and values of the sheet, in lower case: what kind of thing it speaks of. */
  readonly whole: string;
}

/** Reads a value for the field of a place; undefined where it has no way of its own, and is read as any other. */
export type Taker = (value: string, place: Place) => Take | undefined;
