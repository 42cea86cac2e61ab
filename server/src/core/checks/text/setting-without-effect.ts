// House settings that would make lighter what no setting can: harm, and what was not read.
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { atLeastAsBad } from '../../build/workspace-config';
import { isFirm, settingsCheck } from '../check';
import { atFact, outcome, takeOut } from '../kit';

export default settingsCheck({
  id: 'setting-without-effect',
  area: 'text',
  grade: 'note',
  what: 'The settings give no lighter grade to a check of harm, nor to one that says what could not be read.',
  why:
    'What could hurt someone is accepted in one build, by a name; and a file that was not read is not checked at ' +
    'all. Neither is switched off for a whole house, so such a line changes nothing.',
  source: 'the format’s own rule',
  examples: [
    {
      file: 'fettle.yaml',
      faulty: `
grades: { price-old: off, supply-overloaded: off }
#                                            ^^^
`,
      mended: `
grades: { price-old: off }
`,
    },
  ],
  test(settings, checkNamed, report) {
    for (const [id, fact] of settings.file?.grades.value ?? []) {
      const check = checkNamed(id);
      const set = fact.value;
      if (!check || set === undefined) continue;
      const isLighter = set === 'off' || !atLeastAsBad(set, check.grade);
      report(
        outcome(atFact(fact), sure(!(isLighter && isFirm(check)), fact), {
          broken: () =>
            check.unread
              ? sentence`${id} stays ${check.grade}: what it finds was not read and is not checked, and no setting makes
                  that lighter.`
              : sentence`${id} stays ${check.grade}: what could hurt someone or ruin a part is not switched off for a
                  whole house. A build may accept such a finding, with a reason and a name.`,
          fixes: () => [takeOut(fact, `Take ${id} out of the settings`)],
        }),
      );
    }
  },
});
