// The earth contact of the machine’s mains.
import { sentence } from '../../figures/sentence';
import { fits } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome } from '../kit';
import { slipsIn } from '../work/steps-kit';

export default check({
  id: 'earth-defeated',
  area: 'power',
  grade: 'harm',
  what: 'The earth contact is connected.',
  why: 'Without earth the supply’s filter puts half the mains voltage on the case, and a fault puts all of it there.',
  source: 'common practice; the local electrical code',
  limits: [
    'It is judged from `place.mains.earth` and from the notes of steps, which are read by word lists, in English only.',
  ],
  caution: 'no-earth',
  examples: [
    {
      faulty: `
place: { mains: { earth: lifted } }
#                        ^^^^^^
`,
      mended: `
place: { mains: { earth: connected } }
`,
    },
  ],
  test(build, report) {
    const { earth } = build.file.place.mains;
    slipsIn(build, report, {
      'earth lifted': {
        done: 'take the earth contact away, and a fault puts mains voltage on the case',
        rather: 'keep it connected, and look for what hums elsewhere',
        instead: 'Keep the earth contact connected.',
      },
    });
    if (!earth.entry) return;
    report(
      outcome(
        atKey(build, earth),
        fits(earth, 'earth contact', (is) => is === 'connected'),
        {
          broken: () =>
            earth.value === 'none'
              ? sentence`The mains has no earth contact; have a licensed electrician put one in before the machine is
                plugged in.`
              : sentence`The earth contact is ${earth}; it is to be connected.`,
          // An outlet without an earth contact is an electrician’s work: no change of text stands for it.
          fixes: () => (earth.value === 'lifted' ? [change(earth, 'connected', 'Connect the earth contact')] : []),
        },
      ),
    );
  },
});
