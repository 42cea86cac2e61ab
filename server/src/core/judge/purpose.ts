// Whether one part does the work of another: a screw is no standoff, a display cable no power adapter. Where that is
// not known, none stands in for it.
import type { Placed } from '../build/placed';
import { partFacts } from '../build/placed';
import type { Doc } from '../parts/doc';
import type { Fact } from '../parts/fact';
import type { Kind } from '../parts/kinds';

/** Kinds that hold parts of many purposes, and the fact that tells them apart; none tells what a card is there for. */
const toldBy: Partial<Record<Kind, string | undefined>> = { cable: 'connector', fixing: 'item', card: undefined };

export function servesAs({ kind, part }: Placed, candidate: Doc): boolean {
  if (!Object.hasOwn(toldBy, kind)) return true;
  const key = toldBy[kind as Kind];
  if (key === undefined) return false;
  const own = (part as unknown as Record<string, Fact<string>>)[key]!.value;
  const other = (partFacts(candidate, kind as Kind) as unknown as Record<string, Fact<string>>)[key]!.value;
  return own !== undefined && own === other;
}
