// Steps that are to wait for one which the steps do not hold.
import { thingLists } from '../../build/named-things';
import { offeredBy } from '../../figures/places';
import { sentence } from '../../figures/sentence';
import { statedSteps } from '../../figures/steps';
import { sure } from '../../figures/truth';
import { nearest } from '../../text';
import { check } from '../check';
import { atFact, change, outcome } from '../kit';
import { takeNameOut } from './steps-kit';

export default check({
  id: 'step-after-unknown',
  area: 'work',
  grade: 'shortfall',
  what: 'Every step that another is to come after is among the steps.',
  why: 'A step that waits for one that is never done is either done too early, or never.',
  source: 'the format’s own rule',
  examples: [
    {
      faulty: `
steps:
  - fit cooler
  - { do: fit board, after: [fit processor] }
#                            ^^^^^^^^^^^^^
`,
      mended: `
steps:
  - fit cooler
  - { do: fit board }
`,
    },
  ],
  test(build, report) {
    const steps = statedSteps(build);
    if (!steps.some((step) => step.group.after.node)) return;
    const { names } = offeredBy(thingLists(build, 'step'));
    const stated = new Set(names);
    for (const step of steps)
      for (const [i, fact] of (step.group.after.value ?? []).entries()) {
        if (fact.value === undefined || !fact.node) continue;
        report(
          outcome(atFact(fact, `${step.path}.after:${fact.value}`), sure(stated.has(fact.value), fact), {
            broken: () =>
              sentence`${step.label} is to come after ${fact}, and no step does that; add the step, or take it out
                of \`after:\`.`,
            *fixes() {
              const near = nearest(fact.text, stated);
              if (near !== undefined) yield change(fact, near, `Write ${near}`);
              yield takeNameOut(build, step.group.after, i, fact.text);
            },
          }),
        );
      }
  },
});
