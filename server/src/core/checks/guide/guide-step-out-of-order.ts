// Marked steps that stand before one that has to come first.
import type { Outcome } from '../kit';
import { guideCheck } from '../check';
import { tellOfSteps } from './guide-kit';

export default guideCheck({
  id: 'guide-step-out-of-order',
  area: 'guide',
  grade: 'stop',
  what: 'The marked steps of a guide stand in an order that works for the parts of its build.',
  why: 'A step that comes too late means taking things out again, or parts ruined by a start without them.',
  source: 'makers’ handbooks; common practice',
  examples: [
    {
      file: 'guide.md',
      faulty: `
~~~pcbuild
parts:
  board: {}
  case: {}
  supply: {}
~~~

1. <!-- fettle: step fit board -->Screw the board down.
2. <!-- fettle: step set standoffs -->Set the standoffs.
#                    ^^^^^^^^^^^^^
3. <!-- fettle: step first start -->Start it.
`,
      mended: `
~~~pcbuild
parts:
  board: {}
  case: {}
  supply: {}
~~~

1. <!-- fettle: step set standoffs -->Set the standoffs.
2. <!-- fettle: step fit board -->Screw the board down.
3. <!-- fettle: step first start -->Start it.
`,
    },
  ],
  test(guide, report, ask) {
    for (const id of ['step-before-its-prerequisite', 'buried-part-late'])
      tellOfSteps(guide, ask(id), report, ({ grade, caution }: Outcome) => ({
        ...(grade ? { grade } : id === 'buried-part-late' ? { grade: 'shortfall' as const } : {}),
        ...(caution === undefined ? {} : { caution }),
      }));
  },
});
