// Judges names: whether what a name is to stand for is listed, and which listed name is nearest to it.
import { thingLists, type Scope } from '../../build/named-things';
import type { Reference } from '../../build/references';
import { offeredBy, type Offered } from '../../figures/places';
import { sentence, type Sentence } from '../../figures/sentence';
import { any, given, lacking, sure, type Truth } from '../../figures/truth';
import type { Fact } from '../../parts/fact';
import { nearest } from '../../text';
import { renameKey } from '../../yaml';
import { atFact, change, outcome, type FixIdea, type Reporter } from '../kit';

/** Whether a name is among those listed; open while a list that may hold it is not stated. */
export function isListed(fact: Fact<string>, { names, lists, namedBy, missingFacts }: Offered): Truth {
  const listed = given(sure(names.includes(fact.value!), fact), namedBy.get(fact.value!), ...lists);
  return any(listed, missingFacts.length > 0 ? lacking(missingFacts) : sure(false));
}

/** The outcome for one name; none where nothing in reach could list it. */
export function reportName(scope: Scope, reference: Reference, report: Reporter, broken?: Sentence): void {
  const { fact, to } = reference;
  const lists = to.flatMap((kind) => thingLists(scope, kind));
  if (lists.length === 0) return;
  const offered = offeredBy(lists);
  const [by] = offered.by;
  report(
    outcome(atFact(fact), isListed(fact, offered), {
      broken: () => broken ?? sentence`${by?.label ?? 'The board'} has no ${to.join(' or ')} called ${fact}.`,
      fixes: () => [nearestName(reference, offered.names)],
    }),
  );
}

/** The nearest of the names that may stand there, in place of the one that does. */
export function nearestName({ fact, name, keyOf }: Reference, names: readonly string[]): FixIdea | undefined {
  const near = nearest(name, keyOf ? names.filter((other) => !keyOf.get(other)) : names);
  if (near === undefined) return undefined;
  if (!keyOf) return change(fact, near, `Write ${near}`);
  const edits = renameKey(fact.doc.parsed, keyOf, name, near);
  return edits && { type: 'text', title: `Write ${near}`, doc: fact.doc, edits };
}
