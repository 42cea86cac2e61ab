// All kinds of part by name.
import { board } from './board';
import { card, display, drive, graphics, stick } from './devices';
import { fan, fixing, pcCase, radiator } from './housing';
import { supply } from './supply';
import { cable } from './supply';
import { cooler, memory, paste, processor } from './processing';

export const kinds = {
  board,
  processor,
  cooler,
  paste,
  memory,
  drive,
  graphics,
  card,
  supply,
  case: pcCase,
  fan,
  radiator,
  display,
  cable,
  fixing,
  stick,
} as const;

export type Kinds = typeof kinds;
export type Kind = keyof Kinds;

export const kindNames = Object.keys(kinds) as readonly Kind[];

export function isKind(word: string): word is Kind {
  return Object.hasOwn(kinds, word);
}
