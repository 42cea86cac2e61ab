// Acceptance values that let more pass than the build promises.
import { figure, type Figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { aboveZero } from '../../figures/guard';
import { atDistance } from '../../figures/noise';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome } from '../kit';

export default check({
  id: 'acceptance-beyond-promise',
  area: 'work',
  grade: 'shortfall',
  what:
    'The acceptance lets no more pass than is promised: power from the wall, noise at the distance ' +
    'promised, temperature.',
  why: 'A machine that passes its acceptance and breaks its promise comes back, and the acceptance is no help.',
  source: 'common practice',
  limits: ['A level measured elsewhere may fall to the distance promised as in a free field, or by any less.'],
  examples: [
    {
      faulty: `
expect: { temperature: { processor: 80 °C } }
acceptance:
  room-temperature: logged
  processor-temperature: 90 °C
#                        ^^^^^
`,
      mended: `
expect: { temperature: { processor: 80 °C } }
acceptance:
  room-temperature: logged
  processor-temperature: 80 °C
`,
    },
  ],
  test(build, report) {
    const { acceptance, expect } = build.file;
    const { noise } = acceptance;
    const here = expect.noise.at.node ? aboveZero(expect.noise.at, 'distance of the promise') : undefined;
    const there = aboveZero(noise.at, 'distance of the acceptance');
    const heard = (level: Figure): Figure => (here ? atDistance(level, there, here, 'the noise let pass') : level);
    const pairs = [
      [acceptance['wall-power'], expect.power.wall, 'power from the wall'],
      [acceptance['processor-temperature'], expect.temperature.processor, 'processor temperature'],
      [noise.at.value === undefined ? undefined : noise.level, expect.noise.level, 'noise'],
    ] as const;
    for (const [passed, promise, what] of pairs) {
      if (!passed?.node || !promise.node) continue;
      const [said, promised] = [figure(passed, `${what} that is let pass`), figure(promise, `${what} promised`)];
      const most = what === 'noise' ? heard(said) : said;
      report(
        outcome(atKey(build, passed), atMost(most, promised), {
          broken: () => sentence`The acceptance lets ${most} pass; ${promised} is promised. Ask for what is promised.`,
          fixes: () => (most === said ? [change(passed, promise.text, `Ask for ${promise.text}`)] : []),
        }),
      );
    }
  },
});
