// Steps that a guide’s build asks for and that no marked step does.
import { guideCheck } from '../check';
import { tellOfSteps } from './guide-kit';

export default guideCheck({
  id: 'guide-step-missing',
  area: 'guide',
  grade: 'shortfall',
  what: 'A guide with marked steps has one for each step that the parts of its build ask for.',
  why: 'Whoever works by the guide leaves out what it leaves out.',
  source: 'makers’ handbooks; common practice',
  limits: ['Steps without a mark are prose, and are not read.'],
  examples: [
    {
      file: 'guide.md',
      faulty: `
~~~pcbuild
parts:
  memory: [{ count: 2 }]
  supply: {}
  case: {}
~~~

1. <!-- fettle: step fit supply -->Put the supply in.
#                    ^^^^^^^^^^
2. <!-- fettle: step first start -->Start it.
`,
      instead: 'Write the step, with its mark: `<!-- fettle: step fit memory -->`.',
    },
  ],
  test(guide, report, ask) {
    tellOfSteps(guide, ask('step-missing'), report, () => ({}));
  },
});
