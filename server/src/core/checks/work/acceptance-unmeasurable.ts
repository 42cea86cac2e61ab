// Lines of an acceptance that hold nothing to be measured.
import type { Build } from '../../build/build';
import { say, type Said } from '../../figures/say';
import { sure } from '../../figures/truth';
import { check } from '../check';
import { outcome, put, type FixIdea, type Outcome, type Place, type Tell } from '../kit';
import { atGroup } from './acceptance-kit';

export default check({
  id: 'acceptance-unmeasurable',
  area: 'work',
  grade: 'shortfall',
  what: 'Every line of the acceptance says how much, how long or how many.',
  why: 'A test without its measure is passed by whoever is in a hurry.',
  source: 'common practice',
  examples: [{
    faulty: `
acceptance:
  other: [Runs quietly.]
#         ^^^^^^^^^^^^^
`,
    instead: 'Write what is measured, and the number that is to be met: `Copies 100 GB to archive in under 12 min.`',
  }],
  test(build, tell) {
    const { acceptance } = build.file;
    if (!acceptance.$.stated) return;
    ofTests(build, tell);
    for (const line of acceptance.other.value ?? []) {
      if (!line.node) continue;
      tell(measured({ doc: build.doc, span: line.node.span, path: line.path }, /\d/.test(line.text), () => say`“${line}” holds no number to be met.`));
    }
  },
});

function ofTests(build: Build, tell: Tell): void {
  const { 'memory-test': memory, 'stress-test': stress, noise, 'drive-tests': drives } = build.file.acceptance;
  const add = (keys: readonly string[], value: string | number, title: string) => () => [put(build.doc, ['acceptance', ...keys], value, title)];
  if (memory.$.stated) tell(measured(atGroup(build, memory), !!memory.passes.node, () => say`The memory test does not say how many passes.`, add(['memory-test', 'passes'], 1, 'Ask for one full pass')));
  if (stress.$.stated) tell(measured(atGroup(build, stress), !!(stress.lasts.node || stress['until-rise'].node), () => say`The stress test does not say how long it lasts.`, add(['stress-test', 'until-rise'], '1 K', 'Run it until temperatures rise by less than 1 K in ten minutes')));
  if (noise.$.stated) {
    tell(measured(atGroup(build, noise, 'acceptance.noise.level'), !!noise.level.node, () => say`The noise is without its level.`));
    tell(measured(atGroup(build, noise, 'acceptance.noise.at'), !!noise.at.node, () => say`The noise is without its distance.`, add(['noise', 'at'], '1 m', 'Measure at 1 m')));
  }
  for (const [i, test] of (drives.value ?? []).entries()) {
    tell(measured({ doc: build.doc, span: test.$.span, path: `acceptance.drive-tests[${i}]` }, !!test.test.node, () => say`This test of drives does not say what is run.`));
  }
}

function measured(place: Place, is: boolean, broken: () => Said, fixes?: () => Iterable<FixIdea | undefined>): Outcome {
  return outcome(place, sure(is), { broken, ...(fixes ? { fixes } : {}) });
}
