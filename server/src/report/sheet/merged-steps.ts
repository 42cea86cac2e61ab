// The steps of the work as they are printed: those that the parts give, joined with those that the build states.
import type { Build } from '../../core/build/build';
import { statedSteps, type Step } from '../../core/figures/steps';
import { workOrder, type WorkStep } from '../../core/figures/work-order';
import type { Finding } from '../../core/judge/finding';
import type { StepKind } from '../../core/trade/steps';

/** A step of the one list, of the other, or of both. */
export interface MergedStep {
  readonly kind?: StepKind;
  readonly derived?: WorkStep;
  readonly stated?: Step;
  /** Cautions that stand by themselves before it in the build’s list. */
  readonly before: readonly Step[];
}

/** Whose order is followed: the parts’, the build’s own, or the parts’ with steps of the build put between. */
export type OrderOf = 'parts' | 'build' | 'both';

export interface Merged {
  readonly of: OrderOf;
  readonly steps: readonly MergedStep[];
}

/**
 * The build’s own order where it leaves nothing out and nothing in it harms or fails; else the order that the parts
 * give, with what the build alone lists put behind the step that it stands behind there.
 */
export function mergedSteps(build: Build, findings: readonly Finding[]): Merged {
  const derived = workOrder(build);
  const stated = withCautions(statedSteps(build));
  if (stated.length === 0) return { of: 'parts', steps: derived.map((step) => mergedOf(step, undefined)) };
  const pairs = paired(derived, stated);
  const sound = !findings.some(
    ({ subject, grade, check }) =>
      subject.startsWith('steps') && (grade === 'harm' || grade === 'stop' || check.id === 'buried-part-late'),
  );
  if (sound && derived.every((step) => pairs.of.has(step)))
    return { of: 'build', steps: stated.map((one) => mergedOf(pairs.by.get(one), one)) };
  return { of: 'both', steps: inserted(derived, stated, pairs) };
}

/** A stated step with the cautions that stand by themselves before it. */
interface Listed {
  readonly step?: Step;
  readonly before: readonly Step[];
}

function withCautions(steps: readonly Step[]): readonly Listed[] {
  const listed: Listed[] = [];
  let before: Step[] = [];
  for (const step of steps) {
    if (step.group.do.text === '' && step.group.caution.$.stated) {
      before.push(step);
      continue;
    }
    listed.push({ step, before });
    before = [];
  }
  return before.length > 0 ? [...listed, { before }] : listed;
}

interface Pairs {
  readonly of: ReadonlyMap<WorkStep, Listed>;
  readonly by: ReadonlyMap<Listed, WorkStep>;
}

/** Each stated step with the first derived one of its kind, and of its part, that no other has. */
function paired(derived: readonly WorkStep[], stated: readonly Listed[]): Pairs {
  const of = new Map<WorkStep, Listed>();
  const by = new Map<Listed, WorkStep>();
  for (const one of stated) {
    const kind = one.step?.kind;
    if (kind === undefined) continue;
    const free = derived.filter((step) => step.step === kind && !of.has(step));
    const match = free.find((step) => step.part === one.step!.part) ?? free.find((step) => !step.part);
    const found = match ?? (one.step!.part ? undefined : free[0]);
    if (!found) continue;
    of.set(found, one);
    by.set(one, found);
  }
  return { of, by };
}

/** The derived order with what the build alone lists behind what it stands behind there. */
function inserted(derived: readonly WorkStep[], stated: readonly Listed[], { of, by }: Pairs): MergedStep[] {
  const behind = new Map<WorkStep | undefined, Listed[]>();
  let last: WorkStep | undefined;
  for (const one of stated) {
    const match = by.get(one);
    if (match) last = match;
    else {
      const own = behind.get(last) ?? [];
      own.push(one);
      behind.set(last, own);
    }
  }
  const own = (step: WorkStep | undefined): MergedStep[] =>
    (behind.get(step) ?? []).map((one) => mergedOf(undefined, one));
  return [...own(undefined), ...derived.flatMap((step) => [mergedOf(step, of.get(step)), ...own(step)])];
}

function mergedOf(derived: WorkStep | undefined, listed: Listed | undefined): MergedStep {
  const { step, before = [] } = listed ?? {};
  const kind = derived?.step ?? step?.kind;
  return { before, ...(kind ? { kind } : {}), ...(derived ? { derived } : {}), ...(step ? { stated: step } : {}) };
}
