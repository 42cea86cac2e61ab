// Stress tests too short for temperatures to settle.
import { figure, known } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { any, atLeast, sure } from '../../figures/truth';
import { STRESS_LEAST_S } from '../../trade/steps';
import { check } from '../check';
import { atKey, change, outcome, put } from '../kit';

const least = known(STRESS_LEAST_S, 'time', 'shortest stress test', { source: 'common practice' });

export default check({
  id: 'stress-test-short',
  area: 'work',
  grade: 'shortfall',
  what: 'A stress test lasts ten minutes at least, or until temperatures rise no more.',
  why: 'Cooler and case take minutes to warm through; what ends before has shown the first minutes only.',
  source: 'common practice: a run counts once the rise within ten minutes is under 1 K',
  examples: [
    {
      faulty: `
acceptance:
  room-temperature: logged
  stress-test: { lasts: 1 min, throttling: none }
#                       ^^^^^
`,
      mended: `
acceptance:
  room-temperature: logged
  stress-test: { lasts: 1 min, throttling: none, until-rise: 1 K }
`,
    },
  ],
  test(build, report) {
    const { lasts, 'until-rise': rise } = build.file.acceptance['stress-test'];
    if (!lasts.node) return;
    const time = figure(lasts, 'length of the stress test');
    report(
      outcome(atKey(build, lasts), any(sure(rise.value !== undefined, rise), atLeast(time, least)), {
        broken: () =>
          sentence`The stress test lasts ${time}; temperatures take ${least} to settle. Run it until they do.`,
        fixes: () => [
          put(
            build.doc,
            ['acceptance', 'stress-test', rise.key],
            '1 K',
            'Run it until temperatures rise by less than 1 K in ten minutes',
          ),
          change(lasts, '30 min', 'Run it for 30 min'),
        ],
      }),
    );
  },
});
