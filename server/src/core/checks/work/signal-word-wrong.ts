// A caution’s signal word against what its consequence says.
import type { Build } from '../../build/build';
import { memo } from '../../figures/memo';
import { sentence } from '../../figures/sentence';
import { statedCautions } from '../../figures/steps';
import { given, sure } from '../../figures/truth';
import { weaker, wordFor } from '../../trade/caution-words';
import { SIGNAL_WORDS } from '../../trade/signal-words';
import { check } from '../check';
import { atFact, change, outcome } from '../kit';

export default check({
  id: 'signal-word-wrong',
  area: 'work',
  grade: 'note',
  what: 'Each caution’s signal word is not weaker than its consequence, which is read by lists of words.',
  why: 'NOTICE on what can kill is not heeded.',
  source: 'ANSI Z535.4: definitions of the signal words',
  limits: [
    'Free text is read by word lists, in English only; what they do not recognise is not judged.',
    'A word is only ever raised: whoever wrote a stronger one may know more.',
  ],
  examples: [
    {
      faulty: `
steps:
  - equalise
  - do: fit I/O shield
    caution:
      word: NOTICE
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
          given(sure(!weaker(word.value, due), word, consequence), step.group.do),
          {
            broken: () =>
              sentence`The caution says ${word}, but its consequence reads as one that ${SIGNAL_WORDS[due].means}; write
                ${due}.`,
            fixes: () => [change(word, due, `Write ${due}`)],
          },
        ),
      );
    }
  },
});

/** The least word that the consequence of each caution asks for; undefined where it does not say. */
const dueWords = memo((build: Build) =>
  statedCautions(build).map(({ step, group }) => ({
    step,
    group,
    due: group.consequence.value === undefined ? undefined : wordFor(group.consequence.value),
  })),
);
