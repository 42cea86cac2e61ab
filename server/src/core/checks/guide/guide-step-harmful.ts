// Marked steps that start a machine before it is ready for it, or have hands inside while it is on the mains.
import { guideCheck } from '../check';
import { tellOfSteps } from './guide-kit';

export default guideCheck({
  id: 'guide-step-harmful',
  area: 'guide',
  grade: 'harm',
  caution: 'start-uncooled',
  what:
    'The marked steps of a guide start the machine only once its cooler and cables are in place, and have no hands ' +
    'inside while it is on the mains.',
  why: 'Whoever works by the guide leaves out what it leaves out.',
  source: 'makers’ service manuals: unplug before opening; common practice',
  limits: ['Steps without a mark are prose, and are not read.'],
  examples: [
    {
      file: 'guide.md',
      faulty: `
~~~pcbuild
parts:
  cooler: { fans: { count: 1 } }
~~~

1. <!-- fettle: step connect 24-pin -->Plug it in.
2. <!-- fettle: step connect EPS -->Plug it in.
3. <!-- fettle: step connect fan cables -->Plug them in.
4. <!-- fettle: step first start -->Start it.
#                    ^^^^^^^^^^^
`,
      instead: 'Write the step, with its mark, before the start: `<!-- fettle: step fit cooler -->`.',
    },
  ],
  test(guide, report, ask) {
    tellOfSteps(guide, ask('start-without-fan-or-eps'), report, () => ({}));
    tellOfSteps(guide, ask('inside-before-unplugging'), report, () => ({ caution: 'powered-inside' }));
  },
});
