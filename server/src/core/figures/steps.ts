// The steps a build states: what each does, to which part, and where it stands.
import type { Build, Placed } from '../build/build';
import { namedBy, partNamed } from '../build/named-things';
import type { Fact, Group } from '../parts/fact';
import type { step as stepField } from '../manifest/steps';
import { mayHoldSlip } from '../trade/bench-words';
import { ENERGISING, type StepKind } from '../trade/steps';
import type { ListNode, Node, ScalarNode } from '../yaml';
import { memo } from './memo';

type StepGroup = Group<(typeof stepField)['fields']>;

/** One step as the file states it. */
export interface Step {
  readonly index: number;
  /** Undefined for a caution that stands by itself, and for a step that cannot be read. */
  readonly kind?: StepKind;
  readonly group: StepGroup;
  /** The part it names; undefined when it names none, or one that the build does not have. */
  readonly part?: Placed;
  /** By what it has that name: a name of its own, its part file, its slot. */
  readonly partBy?: Fact<string>;
  /** As it is called in a sentence: `fit M.2 drive scratch`. */
  readonly label: string;
  /**
   * `steps.fit processor`, the second of them `steps.fit processor (2)`: a place that stays the same when others come
   * before it.
   */
  readonly path: string;
  /** What a finding about it underlines: the words that say what is done. */
  readonly node?: Node;
}

/** The steps of a build in their order; empty where it states none. */
export const statedSteps = memo((build: Build): readonly Step[] => {
  const seen = new Map<string, number>();
  return (build.file.steps.value ?? []).map((group, index) => {
    const kind = group.do.value;
    const part = group.part.value === undefined ? undefined : partNamed(build, group.part.value);
    const partBy = part && namedBy(part, group.part.value!);
    const node = group.do.node;
    const label = [group.do.text, group.part.text].filter((text) => text !== '').join(' ') || 'caution';
    const count = (seen.get(label) ?? 0) + 1;
    seen.set(label, count);
    return {
      index,
      group,
      label,
      path: `steps.${label}${count > 1 ? ` (${count})` : ''}`,
      ...(kind ? { kind } : {}),
      ...(part ? { part } : {}),
      ...(partBy ? { partBy } : {}),
      ...(node ? { node } : {}),
    };
  });
});

/** The steps that a build says in words of its own. */
export const ownSteps = memo((build: Build): readonly ScalarNode[] =>
  (build.file.steps.value ?? []).flatMap(({ do: { value, node } }) =>
    value === undefined && node?.type === 'scalar' && node.text !== '' ? [node] : [],
  ),
);

/** The first step of one of these kinds, from a number on. */
export function firstStep(build: Build, kinds: ReadonlySet<StepKind>, from = 0): Step | undefined {
  return statedSteps(build).find((step) => step.index >= from && step.kind !== undefined && kinds.has(step.kind));
}

/** Whether a step has the board on the mains. A firmware update has too, unless a service does it elsewhere. */
export function powers(build: Build, { kind }: Step): boolean {
  if (kind === 'update firmware') return build.file.bench['firmware-update'].by.value !== 'service';
  return kind !== undefined && ENERGISING.has(kind);
}

/** Whether the build says anything of how it is put together. A planned firmware update by itself does not. */
export const describesBench = memo(
  (build: Build): boolean => statedSteps(build).length > 0 || describesPractice(build),
);

/** Whether `bench:` says anything beside a firmware update. */
export function describesPractice(build: Build): boolean {
  const { map } = build.file.bench.$;
  return map?.entries.some(({ key }) => key !== 'firmware-update') ?? false;
}

/** The list itself, for edits; undefined where it is no list. */
export function stepList(build: Build): ListNode | undefined {
  const { node } = build.file.steps;
  return node?.type === 'list' ? node : undefined;
}

/** Everything that a step says in free text: its note and its caution. */
export interface Words {
  readonly step: Step;
  readonly fact: Fact<string>;
  /** Whether it has a word without which no slip can be read out of it. */
  readonly mayHoldSlip: boolean;
}

/** The notes of all steps, and what stands for a step without being a word of the list. */
export const notes = memo((build: Build): readonly Words[] =>
  statedSteps(build).flatMap((step) => {
    const { do: done, note } = step.group;
    const said: Fact<string>[] =
      step.kind === undefined && done.node?.type === 'scalar' && done.text !== '' ? [done as Fact<string>] : [];
    if (note.value !== undefined) said.push(note);
    return said.map((fact) => ({ step, fact, mayHoldSlip: mayHoldSlip(fact.text, step.kind) }));
  }),
);

/** A caution that a step carries, or that stands in the list by itself, and the kind of step it belongs to. */
export interface StatedCaution {
  readonly step: Step;
  readonly group: StepGroup['caution'];
  readonly kind?: StepKind;
  readonly text: string;
}

/** All cautions among the steps. */
export const statedCautions = memo((build: Build): readonly StatedCaution[] =>
  statedSteps(build).flatMap((step) => {
    const group = step.group.caution;
    if (!group.$.stated) return [];
    const kind = group.for.value ?? step.kind;
    const text = [group.hazard, group.consequence, group.avoidance].map((fact) => fact.text).join(' ');
    return [{ step, group, text, ...(kind ? { kind } : {}) }];
  }),
);
