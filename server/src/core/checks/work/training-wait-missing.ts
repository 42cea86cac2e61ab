// The first start of DDR5 memory, which takes minutes without a picture.
import { sentence } from '../../figures/sentence';
import { statedSteps } from '../../figures/steps';
import { any, fits, not, sure } from '../../figures/truth';
import { check } from '../check';
import { atStep, insertSteps, stepAnswer } from './steps-kit';

export default check({
  id: 'training-wait-missing',
  area: 'work',
  grade: 'note',
  what: 'After the first start of DDR5 memory a step waits for the board to train it.',
  why:
    'The first start can stay dark for minutes while the board measures its memory; whoever switches off in ' +
    'between starts it over, and hunts a fault that is none.',
  source: 'makers’ handbooks of boards with DDR5; common practice',
  examples: [
    {
      faulty: `
parts:
  memory: [{ type: DDR5 }]
steps:
  - equalise
  - fit memory
  - connect 24-pin
  - connect EPS
  - first start
#   ^^^^^^^^^^^
`,
      mended: `
parts:
  memory: [{ type: DDR5 }]
steps:
  - equalise
  - fit memory
  - connect 24-pin
  - connect EPS
  - first start
  - wait for memory training
`,
    },
  ],
  test(build, report) {
    const steps = statedSteps(build);
    const start = steps.find((step) => step.kind === 'bench start' || step.kind === 'first start');
    const { memory } = build.parts;
    if (!start || memory.length === 0) return;
    const waits = steps.some((step) => step.index > start.index && step.kind === 'wait for memory training');
    const trains = any(...memory.map((kit) => fits(kit.part.type, `type of ${kit.label}`, (type) => type === 'DDR5')));
    report(
      stepAnswer(build, atStep(build, start), waits ? sure(true) : not(trains), {
        broken: () =>
          sentence`After ${start.label} no step waits for the DDR5 memory’s training, which stays dark for minutes;
            add one.`,
        fixes: () => [
          insertSteps(
            build,
            start.index + 1,
            ['wait for memory training'],
            `Insert wait for memory training behind ${start.label}`,
          ),
        ],
      }),
    );
  },
});
