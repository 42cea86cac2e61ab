// A shielding bag used as a mat or to power a board on.
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome } from '../kit';
import { slipsIn } from '../work/steps-kit';

export default check({
  id: 'bag-as-mat',
  area: 'handling',
  grade: 'harm',
  caution: 'board-on-metal',
  what:
    'No board lies or starts on an antistatic bag. Notes among the steps are read for it too, by a short ' +
    'list of words.',
  why:
    'The outside of a shielding bag conducts: it joins contacts under a board with power on, and it keeps ' +
    'charge off only what is inside.',
  source: 'ANSI/ESD S541: the outside of a bag conducts',
  limits: ['Notes are read by word lists, in English only; a clause that denies it says nothing.'],
  examples: [
    {
      faulty: `
bench:
  equalise-by: touching bare chassis
  surface: antistatic bag
#          ^^^^^^^^^^^^^^
`,
      mended: `
bench:
  equalise-by: touching bare chassis
  surface: wood
`,
    },
  ],
  test(build, report) {
    const { surface, 'bench-start-on': start } = build.file.bench;
    for (const on of [surface, start]) {
      if (on.value === undefined) continue;
      report(
        outcome(atKey(build, on), sure(on.value !== 'antistatic bag', on), {
          broken: () =>
            sentence`The board ${on === start ? 'starts' : 'lies'} on an ${on}, whose outside conducts; lay it on bare
              wood, plain cardboard or a dissipative mat.`,
          fixes: () => [
            change(on, 'wood', 'Lay it on bare wood'),
            change(on, 'dissipative mat', 'Lay it on a dissipative mat'),
          ],
        }),
      );
    }
    slipsIn(build, report, {
      'bag as mat': {
        done: 'have a part lie on its bag, whose outside conducts',
        rather: 'lay it on bare wood or a dissipative mat',
        instead: 'Lay it on bare wood or a dissipative mat.',
      },
    });
  },
});
