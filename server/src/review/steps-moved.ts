// Steps of the work before and after: those that came, went, or stand elsewhere among those that stayed.
import type { Build, Placed } from '../core/build/build';
import { statedSteps } from '../core/figures/steps';
import { workOrder } from '../core/figures/work-order';
import type { StepChange } from './comparison';
import { identities, plainNames } from './fingerprint';

interface Step {
  /** By what it is the same step on both sides. */
  readonly key: string;
  readonly step: string;
}

/** Changes of the order that the parts give, then of the one that the build states. */
export function stepChanges(before: Build, after: Build): StepChange[] {
  return [...changes(derived(before, after), derived(after, before)), ...changes(stated(before), stated(after))];
}

/** A part that the other side knows by its path is the same there; another by what it is. */
function derived(build: Build, other: Build): Step[] {
  const tokens = identities(build);
  const paths = new Set(other.all().map(({ path }) => path));
  const keyOf = (part: Placed): string => (paths.has(part.path) ? part.path : tokens.get(part)!);
  return counted(
    workOrder(build).map(({ step, part }) => ({
      key: `${step}\n${part ? keyOf(part) : ''}`,
      step: part ? `${step} ${part.label}` : step,
    })),
  );
}

function stated(build: Build): Step[] {
  const plain = plainNames(build);
  return counted(statedSteps(build).map(({ label }) => ({ key: plain(label), step: `as stated: ${label}` })));
}

/** The second of alike steps is a step of its own. */
function counted(steps: readonly Step[]): Step[] {
  const seen = new Map<string, number>();
  return steps.map(({ key, step }) => {
    const nth = (seen.get(key) ?? 0) + 1;
    seen.set(key, nth);
    return { key: `${key}\n${nth}`, step };
  });
}

function changes(before: readonly Step[], after: readonly Step[]): StepChange[] {
  const at = new Map(before.map(({ key }, i) => [key, i]));
  const now = new Set(after.map(({ key }) => key));
  const stayed = after.filter(({ key }) => at.has(key));
  const still = inSequence(stayed.map(({ key }) => at.get(key)!));
  return [
    ...after.filter(({ key }) => !at.has(key)).map(({ step }) => ({ kind: 'added' as const, step })),
    ...before.filter(({ key }) => !now.has(key)).map(({ step }) => ({ kind: 'removed' as const, step })),
    ...stayed.filter((_, i) => !still.has(i)).map(({ step }) => ({ kind: 'moved' as const, step })),
  ];
}

/** The longest run of numbers that rise, by their places: what is not among them has moved. */
function inSequence(numbers: readonly number[]): ReadonlySet<number> {
  const ends: number[] = [];
  const from: (number | undefined)[] = [];
  numbers.forEach((value, i) => {
    let [low, high] = [0, ends.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (numbers[ends[middle]!]! < value) low = middle + 1;
      else high = middle;
    }
    from[i] = ends[low - 1];
    ends[low] = i;
  });
  const kept = new Set<number>();
  for (let i = ends.at(-1); i !== undefined; i = from[i]) kept.add(i);
  return kept;
}
