// Lists of facts: what stands in them, and how they read in a sentence.
import type { Fact } from '../parts/fact';
import { missing, type Figure, type Missing, between, copyWith, counted, number, unknown, writtenAt } from './figure';
import { sentence, type Sentence } from './sentence';
import { lacking, sure, type Truth } from './truth';
import { unreadNames } from '../parts/facts';

/** Facts as a list in a sentence: `A1 and B1`; `nothing` for none. */
export function spoken(facts: readonly Fact<unknown>[]): Sentence {
  if (facts.length === 0) return sentence`nothing`;
  return facts
    .slice(1)
    .reduce(
      (said, fact, i) => (i === facts.length - 2 ? sentence`${said} and ${fact}` : sentence`${said}, ${fact}`),
      sentence`${facts[0]!}`,
    );
}

/** A count with its noun: `1 module`, `4 modules`, `at least 2 modules`. */
export function many(count: Figure, one: string, several = `${one}s`): Sentence {
  return sentence`${count} ${count.lo === 1 && count.hi === 1 ? one : several}`;
}

/**
 * A count under a name in a map of counts that a part states. A map that is stated is complete: what it leaves out is
 * none. `list`: what the map is called where no file states it.
 */
export function countedIn(
  map: Fact<ReadonlyMap<string, Fact<number>>>,
  name: string,
  of: string,
  { label, list }: { readonly label: string; readonly list: string },
): Figure {
  if (!map.value) return unknown('count', label, [missing(map, list)]);
  const one = map.value.get(name);
  const unread = unreadNames(map, name);
  if (unread.length > 0)
    return copyWith(between(one?.value ?? 0, Infinity, 'count', label, { source: 'a name in its list is not clear' }), {
      missing: unread.map((fact) => missing(fact, `what ${fact.key} of ${of} is`)),
    });
  return one ? counted(one, label) : copyWith(number(0, label, 'not among those it lists'), { from: writtenAt(map) });
}

/** Whether a list states what another fact says; undecided when either is not stated, or an item cannot be read. */
export function among<T>(list: Fact<readonly Fact<T>[]>, listWhat: string, fact: Fact<T>, what: string): Truth {
  const missingFacts: Missing[] = [];
  if (list.value === undefined) missingFacts.push(missing(list, listWhat));
  if (fact.value === undefined) missingFacts.push(missing(fact, what));
  if (missingFacts.length > 0) return lacking(missingFacts, list, fact);
  if (list.value!.some((item) => item.value === fact.value)) return sure(true, list, fact);
  const unread = list.value!.find((item) => item.value === undefined);
  return unread ? lacking([missing(unread, listWhat)], list, fact) : sure(false, list, fact);
}

/** The values of a list that can be read; undefined when the list is not stated or one of its items cannot be read. */
export function valuesOf<T>(list: Fact<readonly Fact<T>[]>): readonly T[] | undefined {
  const values = list.value?.map((item) => item.value);
  return values === undefined || values.includes(undefined) ? undefined : (values as T[]);
}
