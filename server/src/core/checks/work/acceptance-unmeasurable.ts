// Lines of an acceptance that hold nothing to be measured.
import type { Build } from '../../build/build';
import { sentence, type Sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { check } from '../check';
import { atFact, outcome, put, target, type FixIdea, type Outcome, type Reporter, type Target } from '../kit';
import { atGroup } from './acceptance-kit';

export default check({
  id: 'acceptance-unmeasurable',
  area: 'work',
  grade: 'shortfall',
  what: 'Every line of the acceptance says how much, how long or how many.',
  why: 'A test without its measure is passed by whoever is in a hurry.',
  source: 'common practice',
  limits: ['Free text is read by short word lists, in English only; what they do not recognise is not judged.'],
  examples: [
    {
      faulty: `
acceptance:
  other: [Runs quietly.]
#         ^^^^^^^^^^^^^
`,
      instead: 'Write what is measured, and the number that is to be met: `Copies 100 GB to archive in under 12 min.`',
    },
  ],
  test(build, report) {
    const { acceptance } = build.file;
    if (!acceptance.$.stated) return;
    ofTests(build, report);
    for (const line of acceptance.other.value ?? []) {
      if (!line.node) continue;
      report(
        measured(
          atFact(line),
          /\d/.test(line.text),
          () => sentence`“${line}” holds no number to be met; write how much, how long or how many.`,
        ),
      );
    }
  },
});

function ofTests(build: Build, report: Reporter): void {
  const { 'memory-test': memory, 'stress-test': stress, noise, 'drive-tests': drives } = build.file.acceptance;
  const add = (keys: readonly string[], value: string | number, title: string) => () => [
    put(build.doc, ['acceptance', ...keys], value, title),
  ];
  if (memory.$.stated)
    report(
      measured(
        atGroup(build, memory),
        !!memory.passes.node,
        () => sentence`The memory test does not say how many passes; ask for one at least.`,
        add(['memory-test', 'passes'], 1, 'Ask for one full pass'),
      ),
    );
  if (stress.$.stated)
    report(
      measured(
        atGroup(build, stress),
        !!(stress.lasts.node || stress['until-rise'].node),
        () => sentence`The stress test does not say how long it lasts; give a time, or the rise at which it ends.`,
        add(['stress-test', 'until-rise'], '1 K', 'Run it until temperatures rise by less than 1 K in ten minutes'),
      ),
    );
  if (noise.$.stated) {
    report(
      measured(
        atGroup(build, noise, 'acceptance.noise.level'),
        !!noise.level.node,
        () => sentence`The noise is without its level; write the most that is let pass.`,
      ),
    );
    report(
      measured(
        atGroup(build, noise, 'acceptance.noise.at'),
        !!noise.at.node,
        () => sentence`The noise is without its distance; write where it is measured.`,
        add(['noise', 'at'], '1 m', 'Measure at 1 m'),
      ),
    );
  }
  for (const [i, test] of (drives.value ?? []).entries()) {
    report(
      measured(
        target(`acceptance.drive-tests[${i}]`, build.doc, test.$.span),
        !!test.test.node,
        () => sentence`This test of drives does not say what is run; write which test.`,
      ),
    );
  }
}

function measured(
  at: Target,
  is: boolean,
  broken: () => Sentence,
  fixes?: () => Iterable<FixIdea | undefined>,
): Outcome {
  return outcome(at, sure(is), { broken, ...(fixes ? { fixes } : {}) });
}
