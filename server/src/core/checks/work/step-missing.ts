// Steps that the build’s parts ask for and that its list leaves out.
import type { Build } from '../../build/build';
import { say } from '../../figures/say';
import { statedSteps, type Step } from '../../figures/steps';
import { not, sure } from '../../figures/truth';
import { askedSteps, type AskedStep } from '../../figures/work-order';
import { STEP_KINDS, type StepKind } from '../../trade/steps';
import { ORDER_RULES } from '../../trade/work-order';
import type { Value } from '../../yaml';
import { check } from '../check';
import { outcome } from '../kit';
import { atSteps, insertSteps } from './steps-kit';

export default check({
  id: 'step-missing',
  area: 'work',
  grade: 'stop',
  what: 'Where the order of work is stated, it fits every part of the build. Leads without which a start harms are judged at the start.',
  why: 'A sheet that leaves a step out is followed as it stands; what was forgotten is found when the case is closed.',
  source: 'common practice',
  examples: [{
    faulty: `
parts:
  processor: { socket: AM5 }
  memory: [{ slots: [A2] }]
steps:
#^^^^
  - equalise
  - fit processor
`,
    mended: `
parts:
  processor: { socket: AM5 }
  memory: [{ slots: [A2] }]
steps:
  - equalise
  - fit processor
  - fit memory
`,
  }],
  *test(build) {
    const steps = statedSteps(build);
    if (!steps.some((step) => step.kind !== undefined)) return;
    for (const asked of askedSteps(build)) {
      const stated = steps.some((step) => does(step, asked));
      if (!stated && asked.truth.is === false) continue;
      const what = asked.part ? `${asked.kind} ${asked.part.label}` : asked.kind;
      yield outcome(atSteps(build, asked.part?.path ?? what), stated ? sure(true) : not(asked.truth), {
        broken: () => say`The steps leave out ${what}, which the parts ask for.`,
        fixes: () => [insertSteps(build, placeFor(build, asked.kind), [written(build, asked)], `Insert ${what}`)],
      });
    }
  },
});

/** Whether a step does what is asked: of the right kind, and for this part or for all of its kind. */
function does(step: Step, asked: AskedStep): boolean {
  if (step.kind === undefined || !(asked.instead ?? [asked.kind]).includes(step.kind)) return false;
  return !asked.part || step.group.part.value === undefined || step.part === asked.part;
}

function written(build: Build, { kind, part }: AskedStep): Value {
  const several = part && askedSteps(build).some((other) => other.kind === kind && other.part !== part);
  return several ? { do: kind, part: part.label } : kind;
}

/** Where a new step may stand: behind what it needs, before what needs it, and there by the order of the kinds. */
function placeFor(build: Build, kind: StepKind): number {
  const steps = statedSteps(build);
  const needs = ORDER_RULES.filter((rule) => rule.after === kind);
  const neededBy = ORDER_RULES.filter((rule) => rule.before === kind);
  const from = 1 + Math.max(-1, ...steps.filter((step) => needs.some((rule) => rule.before === step.kind)).map((step) => step.index));
  const to = steps.find((step) => step.index >= from && neededBy.some((rule) => rule.after === step.kind))?.index ?? steps.length;
  const rank = STEP_KINDS.indexOf(kind);
  return steps.find((step) => step.index >= from && step.index < to && step.kind !== undefined && STEP_KINDS.indexOf(step.kind) > rank)?.index ?? to;
}
