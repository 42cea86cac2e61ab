// The film on a cooler's base: a step has to take it off.
import { statedSteps, stepList } from '../../figures/steps';
import { sentence } from '../../figures/sentence';
import { any, fits, given, sure } from '../../figures/truth';
import type { Build } from '../../build/build';
import { insertItem } from '../../yaml';
import { check } from '../check';
import { at, outcome, type TextFix } from '../kit';

export default check({
  id: 'film-left',
  area: 'cooling',
  grade: 'shortfall',
  what: 'Where a film covers the cooler’s base, a step takes it off before the cooler is fitted.',
  why: 'A film left on keeps the metal off the paste; the processor runs hot and the cooler has to come off again.',
  source: 'common practice',
  limits: [
    'It is judged where steps are stated; where none are, the order worked out from the parts holds ' + 'the step.',
  ],
  examples: [
    {
      faulty: `
parts:
  cooler: { film: true }
#                 ^^^^
steps: [apply paste, fit cooler]
`,
      mended: `
parts:
  cooler: { film: true }
steps: [remove film, apply paste, fit cooler]
`,
    },
  ],
  test(build, report) {
    const { cooler } = build.parts;
    const steps = statedSteps(build);
    // Where no step is stated, the order worked out from the parts has it.
    if (!cooler || steps.length === 0) return;
    const { film } = cooler.part;
    const fit = steps.find((step) => step.kind === 'fit cooler');
    const off = steps.find((step) => step.kind === 'remove film');
    const inTime = off !== undefined && (!fit || off.index < fit.index);
    report(
      outcome(
        at(cooler, film),
        any(
          given(sure(inTime), build.file.steps),
          fits(film, `film on the base of ${cooler.label}`, (covers) => !covers),
        ),
        {
          broken: () =>
            off
              ? sentence`A film covers the base of ${cooler.label}, and it comes off only after the cooler is fitted.`
              : sentence`A film covers the base of ${cooler.label}, and no step takes it off.`,
          fixes: () => (off ? [] : [takeOff(build)]),
        },
      ),
    );
  },
});

/** The step stands before the paste, or before the cooler. */
function takeOff(build: Build): TextFix | undefined {
  const list = stepList(build);
  const before = statedSteps(build).find((step) => step.kind === 'apply paste' || step.kind === 'fit cooler');
  const edits = list && insertItem(build.doc.parsed, list, before?.index ?? list.items.length, 'remove film');
  return (
    edits && {
      type: 'text',
      title: `Insert remove film${before ? ` before ${before.label}` : ''}`,
      doc: build.doc,
      edits,
    }
  );
}
