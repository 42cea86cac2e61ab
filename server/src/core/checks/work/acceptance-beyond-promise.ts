// Acceptance values that let more pass than the build promises.
import { figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome } from '../kit';

export default check({
  id: 'acceptance-beyond-promise',
  area: 'work',
  grade: 'shortfall',
  what:
    'The acceptance lets no more pass than is promised: power from the wall, noise at the same distance, ' +
    'temperature.',
  why: 'A machine that passes its acceptance and breaks its promise comes back, and the acceptance is no help.',
  source: 'common practice',
  limits: ['Noise is held against its promise only where both are at one distance.'],
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
    const sameDistance =
      noise.at.value !== undefined && noise.at.text === (expect.noise.at.text || noise.at.text)
        ? noise.level
        : undefined;
    const pairs = [
      [acceptance['wall-power'], expect.power.wall, 'power from the wall'],
      [acceptance['processor-temperature'], expect.temperature.processor, 'processor temperature'],
      [sameDistance, expect.noise.level, 'noise'],
    ] as const;
    for (const [passed, promise, what] of pairs) {
      if (!passed?.node || !promise.node) continue;
      const [most, promised] = [figure(passed, `${what} that is let pass`), figure(promise, `${what} promised`)];
      report(
        outcome(atKey(build, passed), atMost(most, promised), {
          broken: () => sentence`The acceptance lets ${most} pass; ${promised} is promised. Ask for what is promised.`,
          fixes: () => [change(passed, promise.text, `Ask for ${promise.text}`)],
        }),
      );
    }
  },
});
