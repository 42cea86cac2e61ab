// Known findings that let nothing stand: harm, and what nobody answers for or no day ends.
import { lackOf, type Lack } from '../../build/known-findings';
import { sentence, type Sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { knownCheck } from '../check';
import { outcome } from '../kit';
import { entryAt } from './known-kit';

const keyOf = { finding: 'finding', grade: 'grade', name: 'by', day: 'until' } as const;

const words: Record<Lack, () => Sentence> = {
  finding: () =>
    sentence`The entry does not say which check found what, so it lets nothing stand. Write \`finding\` and \`at\`, or
      take it out.`,
  grade: () =>
    sentence`What could hurt someone or ruin a part is never let stand as known, so the entry changes nothing. A build
      may accept such a finding, with a reason and a name.`,
  name: () => sentence`Nobody’s name stands under \`by\`, so the finding counts. Write who lets it stand.`,
  day: () => sentence`No day stands under \`until\`, so the finding counts. Write the day from which it counts again.`,
};

export default knownCheck({
  id: 'known-without-effect',
  area: 'text',
  grade: 'shortfall',
  what: 'Every known finding says what it is, who lets it stand and until when, and none is of grade harm.',
  why:
    'An entry that lacks any of these lets nothing stand: what nobody answers for and no day ends would stay for ' +
    'ever, and harm is weighed in its build, by a name.',
  source: 'the format’s own rule',
  examples: [
    {
      file: 'old.known.yaml',
      faulty: `
files:
  desk.pcbuild.yaml:
    findings:
      - finding: cooler-too-tall
#                ^^^^^^^^^^^^^^^
        at: parts.cooler
        grade: stop
        until: 2027-06-30
`,
      instead: 'Record the known findings anew with `--by` and `--until`, or mend what the entry stands for.',
    },
  ],
  test(known, _today, report) {
    for (const entry of known) {
      const lack = lackOf(entry);
      const fact = entry.stated[keyOf[lack ?? 'finding']];
      report(outcome(entryAt(entry, fact), sure(lack === undefined, fact), { broken: words[lack ?? 'finding'] }));
    }
  },
});
