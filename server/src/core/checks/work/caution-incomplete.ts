// Cautions that lack one of their parts.
import { sentence } from '../../figures/sentence';
import { statedCautions } from '../../figures/steps';
import { sure } from '../../figures/truth';
import { missingParts } from '../../trade/signal-words';
import { listed } from '../../text';
import { check } from '../check';
import { outcome, target } from '../kit';
import { ownCaution } from './caution-kit';

export default check({
  id: 'caution-incomplete',
  area: 'work',
  grade: 'harm',
  what: 'Each caution has its signal word, the hazard, the consequence and how to avoid it.',
  why: 'A hazard without its avoidance frightens and does not help; an order without its reason is skipped.',
  source: 'ANSI Z535.4 and Z535.6: parts of a safety message',
  examples: [
    {
      faulty: `
steps:
  - equalise
  - do: fit I/O shield
    caution: { word: CAUTION, hazard: Its edges are sharp., consequence: They could cut fingers. }
#            ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Say what to do, and what not to: `avoidance: Hold it by its rim.`',
    },
  ],
  test(build, report) {
    for (const { step, group } of statedCautions(build)) {
      const { word, hazard, consequence, avoidance } = group;
      const missingFacts = [
        ...(word.node ? [] : ['signal word']),
        ...missingParts({ hazard: hazard.text, consequence: consequence.text, avoidance: avoidance.text }),
      ];
      const span = group.$.map?.style === 'flow' ? group.$.span : (group.$.entry?.keySpan ?? group.$.span);
      report(
        outcome(target(`${step.path}.caution`, build.doc, span), sure(missingFacts.length === 0), {
          broken: () => sentence`This caution lacks its ${listed(missingFacts)}; add what is missing.`,
          ...ownCaution(group.for.value ?? step.kind),
          ...(word.value === 'NOTICE' ? { grade: 'note' as const } : {}),
        }),
      );
    }
  },
});
