// Steps done to a part that the build does not have.
import { thingLists } from '../../build/named-things';
import { offeredBy } from '../../figures/places';
import { sentence } from '../../figures/sentence';
import { statedSteps } from '../../figures/steps';
import { given, sure } from '../../figures/truth';
import { nearest } from '../../text';
import { check } from '../check';
import { atFact, change, outcome } from '../kit';

export default check({
  id: 'step-part-unknown',
  area: 'work',
  grade: 'stop',
  what: 'Every part that a step names is one of the build.',
  why: 'Whoever follows the steps looks for a part that is not there, and what depends on the part is not judged.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
parts:
  drives: [{ name: scratch, shape: M.2 }, { name: system, shape: M.2 }]
steps:
  - { do: fit M.2 drive, part: scrach }
#                              ^^^^^^
`,
      mended: `
parts:
  drives: [{ name: scratch, shape: M.2 }, { name: system, shape: M.2 }]
steps:
  - { do: fit M.2 drive, part: scratch }
`,
    },
  ],
  test(build, report) {
    for (const step of statedSteps(build)) {
      const fact = step.group.part;
      if (fact.value === undefined || !fact.node) continue;
      report(
        outcome(atFact(fact, `${step.path}.part`), given(sure(step.part !== undefined, fact), step.partBy), {
          broken: () => sentence`No part of this build is called ${fact}; name one that it has.`,
          fixes: () => {
            const near = nearest(fact.value!, offeredBy(thingLists(build, 'part')).names);
            return near === undefined ? [] : [change(fact, near, `Write ${near}`)];
          },
        }),
      );
    }
  },
});
