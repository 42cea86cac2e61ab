// Steps that stand before one that has to come first.
import type { Build } from '../../build/build';
import { certain, mayMove, ordered, type Fault, type Ordered } from '../../figures/step-order';
import { sentence } from '../../figures/sentence';
import { statedSteps, type Step } from '../../figures/steps';
import { sure } from '../../figures/truth';
import { check } from '../check';
import type { FixIdea } from '../kit';
import { aroundPower, atStep, atSteps, insertSteps, moveStep, removeStep, stepAnswer } from './steps-kit';

export default check({
  id: 'step-before-its-prerequisite',
  area: 'work',
  grade: 'stop',
  what:
    'No step stands before one that it needs, by the order that this build’s parts give and by the build’s ' +
    'own `after:`.',
  why:
    'What was put in too early comes out again: with the paste spread twice, the board out of the case once ' +
    'more, or the machine opened under load.',
  source: 'makers’ handbooks and service manuals; common practice',
  limits: ['One finding for a step that comes too late, not one for each step that needed it.'],
  remarks: [
    'Only what fails or is undone out of order is judged, not what custom decides; handbooks read late ' +
      'are a note.',
  ],
  examples: [
    {
      faulty: `
steps:
  - equalise
  - fit cooler
  - fit processor
#   ^^^^^^^^^^^^^
`,
      mended: `
steps:
  - equalise
  - fit processor
  - fit cooler
`,
    },
  ],
  test(build, report) {
    const late = ordered(build, 'needed');
    if (late.length === 0 && statedSteps(build).length > 0)
      report(
        stepAnswer(build, atSteps(build, 'order'), sure(true), {
          broken: () => sentence`The steps stand out of order.`,
        }),
      );
    for (const one of late) {
      report(
        stepAnswer(build, atStep(build, one.group.steps[0]), one.truth, {
          broken: () => {
            const { later, because } = worst(one);
            return sentence`${one.group.steps[0].label} comes after ${later.steps[0].label}; do it before: ${because}.`;
          },
          ...gradeOf(one),
          fixes: () => fixes(build, one),
        }),
      );
    }
  },
});

/** The fault to be told of: one that damages parts, else the first. */
function worst({ faults }: Ordered): Fault {
  const known = certain(faults);
  return known.find(({ hurts }) => hurts) ?? known[0]!;
}

/** A handbook read late spoils nothing by itself; a start without cooler or coolant ruins parts. */
function gradeOf(one: Ordered): { readonly grade?: 'note' | 'harm'; readonly caution?: string } {
  if (one.group.kind === 'read handbooks') return { grade: 'note' };
  return certain(one.faults).some(({ hurts }) => hurts) ? { grade: 'harm', caution: 'start-uncooled' } : {};
}

/** The step before the first that needs it; or, where only one does, that one behind it. */
function* fixes(build: Build, { group, faults }: Ordered): Iterable<FixIdea | undefined> {
  const laters = certain(faults).map((fault) => fault.later);
  const step = group.steps[0];
  const first = laters[0]!.steps[0];
  if (step.kind === 'update firmware' && step.node?.type === 'scalar' && !step.group.note.node)
    yield updateBefore(build, step, first);
  if (mayMove(build, step, first.index))
    yield moveStep(build, step, first.index, `Move ${step.label} before ${first.label}`);
  const last = laters[0]!.steps.at(-1)!;
  if (new Set(laters).size === 1 && step.kind !== 'read handbooks' && mayMove(build, last, step.index + 1))
    yield moveStep(build, last, step.index, `Move ${first.label} behind ${step.label}`);
}

/** An update is moved with what undoes it: the cable comes out before hands go in. */
function updateBefore(build: Build, step: Step, first: Step): FixIdea | undefined {
  const title = `Move ${step.label} before ${first.label}`;
  const [out, put] = [
    removeStep(build, step, title),
    insertSteps(build, first.index, aroundPower(build, first.index, 'update firmware'), title),
  ];
  return out && put && { ...out, edits: [...put.edits, ...out.edits] };
}
