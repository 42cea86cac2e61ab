// A caution’s signal word against what its consequence says.
import type { Build } from '../../build/build';
import { memo } from '../../figures/memo';
import { sentence } from '../../figures/sentence';
import { statedCautions } from '../../figures/steps';
import { given, sure } from '../../figures/truth';
import { wordFor } from '../../trade/caution-words';
import { SIGNAL_WORDS } from '../../trade/signal-words';
import { check } from '../check';
import { atFact, change, outcome } from '../kit';

export default check({
  id: 'signal-word-wrong',
  area: 'work',
  grade: 'note',
  what: 'Each caution’s signal word is the one for its consequence, which is read by a short list of words.',
  why: 'DANGER on a scratched finger makes the next DANGER go unread; NOTICE on what can kill is not heeded.',
  source: 'ANSI Z535.4: definitions of the signal words',
  limits: ['Free text is read by short word lists, in English only; what they do not recognise is not judged.'],
  examples: [
    {
      faulty: `
steps:
  - equalise
  - do: fit I/O shield
    caution:
      word: DANGER
#           ^^^^^^
      hazard: Its edges are sharp.
      consequence: They could cut fingers.
      avoidance: Hold it by its rim.
`,
      mended: `
steps:
  - equalise
  - do: fit I/O shield
    caution:
      word: CAUTION
      hazard: Its edges are sharp.
      consequence: They could cut fingers.
      avoidance: Hold it by its rim.
`,
    },
  ],
  test(build, report) {
    for (const { step, group, due } of dueWords(build)) {
      const { word, consequence } = group;
      if (word.value === undefined || due === undefined) continue;
      report(
        outcome(
          atFact(word, `${step.path}.caution.word`),
          given(sure(word.value === due, word, consequence), step.group.do),
          {
            broken: () =>
              sentence`The consequence reads as one that ${SIGNAL_WORDS[due].means}; that is a ${due}, and the caution
                says ${word}.`,
            fixes: () => [change(word, due, `Write ${due}`)],
          },
        ),
      );
    }
  },
});

/** The word that the consequence of each caution asks for; undefined where it does not say. */
const dueWords = memo((build: Build) =>
  statedCautions(build).map(({ step, group }) => ({
    step,
    group,
    due: group.consequence.value === undefined ? undefined : wordFor(group.consequence.value),
  })),
);
