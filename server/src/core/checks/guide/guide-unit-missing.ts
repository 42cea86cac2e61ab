// Numbers of a guide without their unit: marked values, and amounts and torques in the prose of marked steps.
import type { Guide } from '../../guide/guide';
import { printed, readPrinted } from '../../guide/value';
import { bareAmounts } from '../../guide/amounts';
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { quoted } from '../../text';
import { guideCheck } from '../check';
import { outcome, type Reporter } from '../kit';
import { inGuide, numbered, rewrite } from './guide-kit';

export default guideCheck({
  id: 'guide-unit-missing',
  area: 'guide',
  grade: 'shortfall',
  what: 'A marked value, and each amount or torque in the prose of a marked step, carries its unit.',
  why: 'A torque of 6 is right in kgf·cm and tears a thread in N·m; whoever works by the guide has to guess.',
  source: 'common practice',
  limits: ['Prose is read by a short list of words, in English only; what it does not recognise is not judged.'],
  examples: [
    {
      file: 'guide.md',
      faulty: `
~~~pcbuild
parts:
  memory: [{ capacity: 32 GiB, modules: 2 }]
~~~

It has <!-- fettle: memory.capacity -->32<!-- /fettle --> of memory.
#                                      ^^
`,
      mended: `
~~~pcbuild
parts:
  memory: [{ capacity: 32 GiB, modules: 2 }]
~~~

It has <!-- fettle: memory.capacity -->32 GiB<!-- /fettle --> of memory.
`,
    },
    {
      file: 'guide.md',
      faulty: `
~~~pcbuild
parts:
  cooler: {}
~~~

1. <!-- fettle: step fit cooler -->Tighten the screws crosswise to 0.6, each a turn at a time.
#                                                                  ^^^
`,
      instead: 'Write the unit that the cooler’s handbook states behind the number.',
    },
  ],
  test(guide, report) {
    values(guide, report);
    const subject = numbered();
    for (const { says, prose } of guide.ties.steps)
      for (const { text, span } of bareAmounts(guide.doc.text, prose))
        report(
          outcome(inGuide(guide, subject(`steps.${says}.amount`), span), sure(false), {
            broken: () => sentence`${quoted(text)} stands without its unit; write the one that the handbook states.`,
          }),
        );
  },
});

function values(guide: Guide, report: Reporter): void {
  const subject = numbered();
  for (const { name, text, span } of guide.ties.values) {
    const figure = guide.figures.get(name);
    if (!figure) continue;
    const { problem } = readPrinted(text, figure);
    if (problem?.code !== 'unit-missing') continue;
    report(
      outcome(inGuide(guide, subject(`values.${name}`), span), sure(false), {
        broken: () => sentence`${quoted(text)} stands without its unit; ${name} of the build is ${figure}.`,
        fixes: () =>
          Number.isFinite(figure.lo + figure.hi)
            ? [...new Set([...problem.suggestions, printed(figure)])].map((one) =>
                rewrite(guide.doc, span, one, `Write ${one}`),
              )
            : [],
      }),
    );
  }
}
