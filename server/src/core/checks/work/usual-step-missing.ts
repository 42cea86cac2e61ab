// What a good bench does and a list that leads to a whole machine leaves out.
import type { Build } from '../../build/build';
import { sentence } from '../../figures/sentence';
import { isStart } from '../../figures/start-needs';
import { statedSteps } from '../../figures/steps';
import { sure } from '../../figures/truth';
import {
  dryCooler,
  isWhole,
  notAgain,
  reopened,
  unplugged,
  unreadyUpdate,
  usualLeftOut,
} from '../../figures/usual-steps';
import { listed } from '../../text';
import { check } from '../check';
import { aspectOf, type Reporter } from '../kit';
import { atStep, atSteps, insertSteps, stepAnswer } from './steps-kit';

export default check({
  id: 'usual-step-missing',
  area: 'work',
  grade: 'note',
  what:
    'A list that leads from the parts to a machine has what a good bench does beside: handbooks read, surfaces ' +
    'cleaned, the inside checked, the charge drained and equalised each time hands go in again.',
  why: 'What is left to habit is left out by whoever has another habit; written down, it is done.',
  source: 'makers’ handbooks and service manuals; common practice',
  limits: ['Nothing is judged in a list that is begun only, or that is about a part of the work.'],
  remarks: ['What the parts cannot do without, and what a start harms without, have checks of their own.'],
  examples: [
    {
      faulty: `
parts:
  processor: { socket: AM5 }
  cooler: { fans: { count: 0 }, paste: pad applied, back-plate: false, film: false }
steps:
#^^^^
  - read handbooks
  - equalise
  - take parts from bags
  - fit processor
  - fit cooler
  - connect 24-pin
  - connect EPS
  - plug in mains
  - first start
  - install system
  - stress test
  - measure
  - record settings
  - hand over
`,
      instead: 'Put the step in where the others of its kind stand: `clean surfaces` before the cooler.',
    },
  ],
  test(build, report) {
    if (!isWhole(build)) return;
    const left = usualLeftOut(build);
    report(
      stepAnswer(build, atSteps(build, 'usual'), sure(left.length === 0), {
        broken: () =>
          sentence`A good bench also does ${listed(shortened(left))}; add ${left.length > 1 ? 'them' : 'it'}
            where your work has
            ${left.length > 1 ? 'them' : 'it'}.`,
      }),
    );
    handsInAgain(build, report);
    mainsFirst(build, report);
    pluggedAgain(build, report);
    beforeUpdate(build, report);
    freshPaste(build, report);
  },
});

/** No more than a reader takes in at once. */
const shortened = (kinds: readonly string[]): readonly string[] =>
  kinds.length > 6 ? [...kinds.slice(0, 5), 'others'] : kinds;

function handsInAgain(build: Build, report: Reporter): void {
  for (const { power, next, lacks } of reopened(build)) {
    report(
      stepAnswer(build, atStep(build, next), sure(false), {
        broken: () =>
          sentence`Hands go in again for ${next.label} after ${power.label} without ${listed(lacks)}; do ${
            lacks.length > 1 ? 'them' : 'it'
          } first.`,
        fixes: () => [insertSteps(build, next.index, lacks, `Insert ${listed(lacks)} before ${next.label}`)],
      }),
    );
  }
}

function mainsFirst(build: Build, report: Reporter): void {
  const step = unplugged(build);
  if (!step) return;
  report(
    stepAnswer(build, atStep(build, step), sure(false), {
      broken: () => sentence`${step.label} needs power, and no step before it plugs in the mains; plug it in first.`,
      fixes: () => [insertSteps(build, step.index, ['plug in mains'], `Insert plug in mains before ${step.label}`)],
    }),
  );
}

function pluggedAgain(build: Build, report: Reporter): void {
  for (const start of statedSteps(build).filter(isStart)) {
    const cables = start.kind === 'first start' ? notAgain(build, start) : [];
    if (cables.length === 0) continue;
    report(
      stepAnswer(build, atStep(build, start), sure(false), {
        broken: () =>
          sentence`Since the board went into the case no step does ${listed(cables)} again; see that
            ${cables.length > 1 ? 'they are' : 'it is'} plugged in before ${start.label}.`,
      }),
    );
  }
}

function beforeUpdate(build: Build, report: Reporter): void {
  const found = unreadyUpdate(build);
  if (!found) return;
  const { step, lacks } = found;
  report(
    stepAnswer(build, aspectOf(atStep(build, step), 'on a processor'), sure(false), {
      broken: () => sentence`${step.label} runs on a processor, as any start does, and comes without ${listed(lacks)}.`,
    }),
  );
}

function freshPaste(build: Build, report: Reporter): void {
  const step = dryCooler(build);
  if (!step) return;
  report(
    stepAnswer(build, atStep(build, step), sure(false), {
      broken: () =>
        sentence`The cooler goes on twice, this time without fresh paste; spread some before each ${step.label}.`,
      fixes: () => [insertSteps(build, step.index, ['apply paste'], `Insert apply paste before ${step.label}`)],
    }),
  );
}
