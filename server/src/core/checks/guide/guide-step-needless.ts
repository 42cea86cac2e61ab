// Marked steps that nothing in a guide’s build calls for.
import { guideCheck } from '../check';
import { tellOfSteps } from './guide-kit';

export default guideCheck({
  id: 'guide-step-needless',
  area: 'guide',
  grade: 'note',
  what: 'The build of a guide has the part that each marked step is done to.',
  why: 'A step for a part that is not there makes its reader look for it.',
  source: 'common practice',
  examples: [
    {
      file: 'guide.md',
      faulty: `
~~~pcbuild
parts:
  supply: {}
  case: {}
~~~

1. <!-- fettle: step fit supply -->Put the supply in.
2. <!-- fettle: step fit memory -->Push the modules in until both latches close.
#                    ^^^^^^^^^^
3. <!-- fettle: step first start -->Start it.
`,
      instead: 'Take the step out of the guide, or put the part into the build.',
    },
  ],
  test(guide, report, ask) {
    tellOfSteps(guide, ask('step-needless'), report, () => ({}));
  },
});
