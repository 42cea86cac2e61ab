// The level promised against all parts that sound, added as energies at the distance promised.
import type { Build } from '../../build/build';
import { figure } from '../../figures/figure';
import { memo } from '../../figures/memo';
import { noiseLevel, noiseSources, promisedDistance } from '../../figures/noise';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome, swap } from '../kit';

export default check({
  id: 'noise-over-promise',
  area: 'costs',
  grade: 'shortfall',
  what: 'All parts that sound stay together under the level promised, at the distance promised.',
  why: 'Levels add as energies: two equal fans are 3 dB louder than one, and many quiet parts make a loud machine.',
  source: 'level addition in acoustics: 10 lg Σ 10^(L ÷ 10)',
  limits: [
    'A level at another distance is a range: from the free-field fall to none at all, since a room ' +
      'falls off less.',
  ],
  examples: [
    {
      faulty: `
parts:
  fans: [{ level: 30 dBA, level-at: 1 m, count: 2 }]
expect:
  noise: { level: 32 dBA, at: 1 m }
#                 ^^^^^^
`,
      mended: `
parts:
  fans: [{ level: 30 dBA, level-at: 1 m, count: 2 }]
expect:
  noise: { level: 34 dBA, at: 1 m }
`,
    },
  ],
  test(build, report) {
    const promise = build.file.expect.noise.level;
    const distance = promisedDistance(build);
    const reached = noiseLevel(build);
    if (!promise.node || !distance || !reached) return;
    const wanted = figure(promise, 'level promised');
    const loudest = loudestFirst(build);
    report(
      outcome(atKey(build, promise), atMost(reached, wanted), {
        broken: () =>
          loudest.length === 1
            ? sentence`The parts reach ${reached} at ${distance}; ${wanted} is promised.`
            : sentence`The parts reach ${reached} at ${distance} together, ${loudest[0]!.placed.label} alone
              ${loudest[0]!.level}; ${wanted} is promised.`,
        *fixes() {
          for (const placed of new Set(loudest.map((source) => source.placed))) yield swap(placed);
          const level = `${Math.ceil(reached.hi - 1e-9)} dBA`;
          if (Number.isFinite(reached.hi)) yield change(promise, level, `Raise the promise to ${level}`);
        },
      }),
    );
  },
});

const loudestFirst = memo((build: Build) => [...noiseSources(build)].sort((a, b) => b.level.lo - a.level.lo));
