// Marks of steps and cautions whose words are none.
import type { MarkedCaution, MarkedStep } from '../../guide/ties';
import { sentence, type Sentence } from '../../figures/sentence';
import { ownSteps } from '../../figures/steps';
import { sure } from '../../figures/truth';
import { CAUTIONS } from '../../trade/cautions';
import { STEP_KINDS } from '../../trade/steps';
import { nearest, quoted } from '../../text';
import { guideCheck } from '../check';
import { outcome } from '../kit';
import { inGuide, numbered, rewrite, tellOfSteps } from './guide-kit';

const cautions = Object.keys(CAUTIONS);

export default guideCheck({
  id: 'guide-step-unknown',
  area: 'guide',
  grade: 'shortfall',
  what:
    'Each marked step, and each marked caution, bears a name that there is; a step may also be one that its build ' +
    'says in words of its own.',
  why: 'Under a misspelled name a step is held against nothing, and a caution warns of nothing.',
  source: 'the format’s own rule',
  examples: [
    {
      file: 'guide.md',
      faulty: `
~~~pcbuild
parts:
  case: {}
~~~

1. <!-- fettle: step chek inside -->Look for loose screws.
#                    ^^^^^^^^^^^
2. <!-- fettle: step first start -->Start it.
`,
      mended: `
~~~pcbuild
parts:
  case: {}
~~~

1. <!-- fettle: step check inside -->Look for loose screws.
2. <!-- fettle: step first start -->Start it.
`,
    },
  ],
  test(guide, report, ask) {
    const subject = numbered();
    const tell = (
      { says, span }: MarkedStep | MarkedCaution,
      isKnown: boolean,
      known: readonly string[],
      broken: () => Sentence,
    ): void =>
      report(
        outcome(inGuide(guide, subject(`marks.${says}`), span), sure(isKnown), {
          broken,
          fixes: () => {
            const near = nearest(says, known);
            return near === undefined ? [] : [rewrite(guide.doc, span, near, `Write ${near}`)];
          },
        }),
      );
    const own = guide.build ? ownSteps(guide.build).map(({ text }) => text) : [];
    const known = [...STEP_KINDS, ...own];
    for (const step of guide.ties.steps)
      tell(
        step,
        step.kind !== undefined || own.includes(step.says),
        known,
        () => sentence`No step is called ${quoted(step.says)}.`,
      );
    for (const caution of guide.ties.cautions)
      tell(caution, caution.id !== undefined, cautions, () => sentence`No caution is called ${quoted(caution.says)}.`);
    tellOfSteps(guide, ask('step-part-unknown'), report, () => ({}));
  },
});
