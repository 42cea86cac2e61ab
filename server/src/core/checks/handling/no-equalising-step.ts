// Whether person, machine and part are brought to one potential before parts are handled.
import type { Build } from '../../build/build';
import { sentence } from '../../figures/sentence';
import { describesBench, describesPractice, firstStep, statedSteps } from '../../figures/steps';
import { strapFacts, wearsStrap } from '../../figures/strap';
import { given, sure } from '../../figures/truth';
import { EQUALISING, STATIC_SENSITIVE } from '../../trade/steps';
import { check } from '../check';
import { change, outcome, put, type FixIdea, type Outcome } from '../kit';
import { atBench, atStep, insertSteps, moveStep, stepAnswer } from '../work/steps-kit';

export default check({
  id: 'no-equalising-step',
  area: 'handling',
  grade: 'harm',
  caution: 'static-to-parts',
  what: 'Person, chassis and part are brought to one potential before a part is handled.',
  why:
    'People carry charges that they do not feel; a part can be harmed by a twentieth of what is felt, and ' +
    'often fails only later.',
  source: 'ANSI/ESD S20.20; common practice',
  limits: [
    'It is judged once `bench:` says anything beside a planned update, or a step handles a part that a ' +
      'discharge can harm.',
  ],
  remarks: [
    'A strap counts unless it is not worn or clipped to nothing; what is wrong with the strap is ' +
      'judged by its own checks.',
  ],
  examples: [
    {
      faulty: `
bench:
#^^^^
  surface: wood
`,
      mended: `
bench:
  surface: wood
  equalise-by: touching bare chassis
`,
    },
  ],
  test(build, report) {
    if (!describesBench(build)) return;
    const step = firstStep(build, EQUALISING);
    const touch = firstStep(build, STATIC_SENSITIVE);
    // A list in which nothing is touched that a discharge could harm asks for nothing.
    if (step && !byNothing(build)) report(late(build, step, touch));
    else if (touch || describesPractice(build)) report(never(build, touch));
    for (const again of afterStraps(build)) report(again);
  },
});

/** Whether the bench says that nothing equalises, or a strap whose clip holds on to nothing: then no step does. */
function byNothing(build: Build): boolean {
  const { 'equalise-by': by, strap } = build.file.bench;
  return by.value === 'nothing' || (by.value === 'strap' && strap['clipped-to'].value === 'nothing');
}

type Step = NonNullable<ReturnType<typeof firstStep>>;

function late(build: Build, step: Step, touch: Step | undefined): Outcome {
  return stepAnswer(build, atStep(build, step), sure(!touch || step.index < touch.index), {
    broken: () =>
      sentence`${step.label} comes only after ${touch!.label}: by then the part has met whatever charge there
        was. Equalise
        first.`,
    fixes: () => [moveStep(build, step, touch!.index, `Move ${step.label} before ${touch!.label}`)],
  });
}

/** Once the strap is off, its wearer charges up again: each first touch with nothing that equalises between. */
function* afterStraps(build: Build): Iterable<Outcome> {
  let off: Step | undefined;
  for (const step of statedSteps(build)) {
    if (step.kind === undefined) continue;
    if (step.kind === 'take off strap') off = step;
    else if (EQUALISING.has(step.kind)) off = undefined;
    else if (off && STATIC_SENSITIVE.has(step.kind)) {
      const taken = off;
      yield stepAnswer(build, atStep(build, step), sure(false), {
        broken: () =>
          sentence`${step.label} comes after ${taken.label}, with nothing that equalises between; wear the strap
            again.`,
        fixes: () => [insertSteps(build, step.index, ['wear strap'], `Insert wear strap before ${step.label}`)],
      });
      off = undefined;
    }
  }
}

function never(build: Build, touch: Step | undefined): Outcome {
  const { 'equalise-by': by, strap } = build.file.bench;
  const strapped = wearsStrap(build) && strap['clipped-to'].value !== 'nothing';
  const equalised = by.value !== 'nothing' && (strapped || by.value === 'touching bare chassis');
  const place =
    strap['clipped-to'].value === 'nothing' && !by.node
      ? { subject: by.path, underline: atBench(build, strap['clipped-to']).underline }
      : atBench(build, by);
  return outcome(place, given(sure(equalised), ...strapFacts(build), strap['clipped-to']), {
    broken: () => sentence`Nothing brings person, chassis and part to one potential before parts are handled; touch
        the bare chassis
        first.`,
    fixes: () => fixes(build, touch),
  });
}

function* fixes(build: Build, touch: Step | undefined): Iterable<FixIdea | undefined> {
  const { 'equalise-by': by, strap } = build.file.bench;
  if (touch) yield insertSteps(build, touch.index, ['equalise'], `Insert equalise before ${touch.label}`);
  if (strap['clipped-to'].value === 'nothing')
    yield change(strap['clipped-to'], 'bare chassis', 'Clip the strap to the bare chassis');
  yield put(build.doc, ['bench', by.key], 'touching bare chassis', 'Equalise by touching the bare chassis');
}
