// A level promised without the distance at which it is meant.
import { promisedDistance } from '../../figures/noise';
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import { check } from '../check';
import { atKey, outcome, put } from '../kit';

/** Where most makers of fans and supplies state their levels. */
const usualDistance = '1 m';

export default check({
  id: 'noise-distance-missing',
  area: 'costs',
  grade: 'shortfall',
  what: 'A promised sound level names the distance at which it is meant.',
  why: 'Twice as near is up to 6 dB louder: a level without its distance is no promise.',
  source: 'ISO 9296: sound pressure is stated for a place; 1 m: common practice',
  remarks: [
    'Only the promise is asked for its distance; a part’s level without one leaves ' + '`noise-over-promise` unknown.',
  ],
  examples: [
    {
      faulty: `
parts:
  fans: [{ level: 24 dBA, level-at: 1 m }]
expect:
  noise: { level: 32 dBA }
#                 ^^^^^^
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
    if (!noise.level.node) return;
    report(
      outcome(atKey(build, noise.level), sure(promisedDistance(build) !== undefined, noise.level, noise.at), {
        broken: () => sentence`${noise.level} is promised without the distance at which it is meant.`,
        fixes: () => [
          put(build.doc, ['expect', 'noise', 'at'], usualDistance, `Say that it is meant at ${usualDistance}`),
        ],
      }),
    );
  },
});
