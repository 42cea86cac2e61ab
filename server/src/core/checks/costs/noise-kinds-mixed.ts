// A promise of sound power, which no sum of the parts' sound pressures can keep or break.
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { check } from '../check';
import { atKey, outcome, takeOut } from '../kit';

export default check({
  id: 'noise-kinds-mixed',
  area: 'costs',
  grade: 'unknown',
  what: 'Noise is promised as a sound pressure at a distance, as the parts state theirs.',
  why:
    'Sound power is of the machine, in bels; sound pressure is at a place, in decibels. One does not tell ' +
    'the other.',
  source: 'ISO 9296: sound power is declared in bels, sound pressure in decibels, so that nobody compares them',
  examples: [
    {
      faulty: `
parts:
  fans: [{ level: 24 dBA, level-at: 1 m }]
expect:
  noise: { level: 32 dBA, at: 1 m, sound-power: 4.1 bel }
#                                               ^^^^^^^
`,
      mended: `
parts:
  fans: [{ level: 24 dBA, level-at: 1 m }]
expect:
  noise: { level: 32 dBA, at: 1 m }
`,
    },
  ],
  test(build, report) {
    const { noise } = build.file.expect;
    if (!noise.$.stated) return;
    const declared = noise['sound-power'];
    report(
      outcome(atKey(build, declared), sure(!declared.node, declared), {
        broken: () =>
          sentence`${declared} is a sound power, which is measured on the whole machine: the parts state sound pressure
            at a distance.`,
        fixes: () => [
          noise.level.node ? takeOut(declared, 'Take the sound power out; the level is promised') : undefined,
        ],
      }),
    );
  },
});
