// Facts of several lines put together: what agrees is one fact, what does not is told with both lines.
import { dimensions, readQuantity, type Dimension } from '../quantity';
import type { Drafted } from './draft';
import { labelKey } from './clean';

export interface Agreed {
  readonly facts: readonly Drafted[];
  readonly disagreeing: readonly (readonly Drafted[])[];
}

/** How far two roundings of one measure may stand apart. */
const roundedWithin = 0.012;

export function agree(found: readonly Drafted[]): Agreed {
  const byPath = new Map<string, Drafted[]>();
  for (const fact of found) {
    const key = fact.path.join('\u0000');
    byPath.set(key, [...(byPath.get(key) ?? []), fact]);
  }
  const facts: Drafted[] = [];
  const disagreeing: Drafted[][] = [];
  for (const same of byPath.values()) {
    const one = joined(same);
    if (one) facts.push(one);
    else disagreeing.push(firstOfEach(same));
  }
  return { facts, disagreeing };
}

/** The fact that all of them state; undefined where two differ. Lists of one heading’s lines are one list. */
function joined(same: readonly Drafted[]): Drafted | undefined {
  const [first, ...others] = same;
  if (others.length === 0) return first!;
  if (typeof first!.value !== 'string') return joinedLists(same);
  return others.every((other) => isSame(first!.value, other.value)) ? first! : undefined;
}

function joinedLists(same: readonly Drafted[]): Drafted | undefined {
  const lists = same.map(({ value }) => (typeof value === 'string' ? [value] : value));
  const [first, ...others] = lists;
  if (others.every((list) => sortedKey(list) === sortedKey(first!))) return same[0]!;
  const isListOfLines =
    same[0]!.path.join() === 'sockets' && new Set(same.map(({ said }) => said.split(':')[0])).size === same.length;
  if (!isListOfLines) return undefined;
  return { ...same[0]!, value: [...new Set(lists.flat())], said: same.map(({ said }) => said).join('; ') };
}

const sortedKey = (value: Drafted['value']): string =>
  (typeof value === 'string' ? [value] : [...value]).toSorted().join('\n');

/** Whether two values are one; of lists, whether they hold the same. */
export function isSame(one: Drafted['value'], other: Drafted['value']): boolean {
  if (typeof one !== 'string' || typeof other !== 'string') return sortedKey(one) === sortedKey(other);
  if (labelKey(one) === labelKey(other) && one.replace(/\s/g, '') === other.replace(/\s/g, '')) return true;
  const [a, b] = [one, other].map(measureOf);
  if (a === undefined || b === undefined || a.dimension !== b.dimension) return false;
  return Math.abs(a.value - b.value) <= (a.unit === b.unit ? 0 : Math.abs(a.value) * roundedWithin);
}

function measureOf(
  text: string,
): { readonly dimension: Dimension; readonly value: number; readonly unit: string } | undefined {
  for (const dimension of Object.keys(dimensions) as Dimension[]) {
    const { quantity, problem } = readQuantity(text, dimension);
    if (quantity && !problem) return { dimension, value: quantity.hi, unit: quantity.unit };
  }
  return undefined;
}

function firstOfEach(same: readonly Drafted[]): Drafted[] {
  const seen = new Set<string>();
  return same.filter(({ value }) => seen.size < seen.add(String(value)).size);
}
