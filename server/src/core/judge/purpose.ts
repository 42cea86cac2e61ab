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
  if (kind === 'case') return isAsOpen(part as Placed<'case'>['part'], candidate);
  if (kind === 'drive') return holdsAsMuch(part as Placed<'drives'>['part'], candidate);
  if (!Object.hasOwn(toldBy, kind)) return true;
  const key = toldBy[kind as Kind];
  if (key === undefined) return false;
  const own = (part as unknown as Record<string, Fact<string>>)[key]!.value;
  const other = (partFacts(candidate, kind as Kind) as unknown as Record<string, Fact<string>>)[key]!.value;
  return own !== undefined && own === other;
}

/** A drive that holds less than the one in its place is no stand-in for it; for one that does not say, any may be. */
function holdsAsMuch({ capacity: { value: own } }: Placed<'drives'>['part'], candidate: Doc): boolean {
  const other = (partFacts(candidate, 'drive') as unknown as Placed<'drives'>['part']).capacity.value;
  return own === undefined || (other !== undefined && other.lo >= own.lo);
}

/** An open frame is no stand-in for a case with walls. */
const isAsOpen = ({ open }: Placed<'case'>['part'], candidate: Doc): boolean =>
  open.value === true || (partFacts(candidate, 'case') as unknown as Placed<'case'>['part']).open.value !== true;
