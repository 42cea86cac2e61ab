// The processor’s temperature that a finished machine logged under load, against promise, acceptance and its limit.
import type { Build } from '../../build/build';
import { figure, least, type Figure } from '../../figures/figure';
import { hottestAllowed } from '../../figures/heat';
import { sentence } from '../../figures/sentence';
import { atMost, given } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';
import { notShown, undecided } from './built-kit';

export default check({
  id: 'built-too-hot',
  area: 'built',
  grade: 'shortfall',
  what: 'Under load the processor stays as cool as is promised, as the acceptance asks, and below its own limit.',
  why: 'What is too warm on the bench in a cool room slows down where it will stand.',
  source: 'Linux kernel: names of temperature inputs; common practice',
  limits: ['What was logged while the machine was idle tells only of a machine that is too hot already.'],
  examples: [
    {
      faulty: `
parts:
  processor: { model: C7 840 }
# ^^^^^^^^^
expect: { temperature: { processor: 80 °C } }
`,
      instead: 'Look at the cooler’s seat, its paste, its film and its fan.',
      beside: {
        'example.asbuilt.yaml':
          '\nfrom: [sensors under load]\n' +
          'temperatures: [{ sensor: k10temp Tctl, temperature: 88 °C, of: processor, read: load }]\n',
      },
    },
  ],
  test(build, report) {
    if (!build.machine) return;
    const { processor } = build.parts;
    const limits = limitsOf(build);
    if (!processor || limits.length === 0) return;
    const limit = least('temperature that the processor may reach', limits);
    const target = at(processor, undefined, 'temperature');
    const own = (build.machine.temperatures.value ?? []).filter(({ of }) => of.value === 'processor');
    const hottest = own.reduce(
      (a, b) => ((b.temperature.value?.hi ?? 0) > (a?.temperature.value?.hi ?? 0) ? b : a),
      own[0],
    );
    if (!hottest?.temperature.value) {
      const broken = () => sentence`The processor gets too hot.`;
      return report(notShown(target, build.machine.temperatures, 'the processor’s temperature under load', { broken }));
    }
    const got = figure(hottest.temperature, 'temperature of the processor');
    const cool = given(atMost(got, limit), hottest.read, hottest.sensor);
    const broken =
      () => sentence`The processor reached ${got}; ${limit} is the most that is allowed. Look at cooler, paste
      and fans.`;
    const isIdle = hottest.read.value !== 'load';
    report(
      outcome(target, isIdle && cool.is !== false ? undecided(hottest.temperature) : cool, {
        broken,
        open: () => sentence`The processor was at ${got} while the machine was idle; log it under load.`,
      }),
    );
  },
});

/** What anyone asks for, and the processor’s own limit less the margin where no other margin is asked for. */
function limitsOf(build: Build): Figure[] {
  const { expect, acceptance } = build.file;
  const asked = [
    [expect.temperature.processor, 'processor temperature promised'],
    [acceptance['processor-temperature'], 'processor temperature that the acceptance lets pass'],
  ] as const;
  const own = hottestAllowed(build);
  return [
    ...asked.flatMap(([fact, label]) => (fact.value ? [figure(fact, label)] : [])),
    ...(own && own.missing.length === 0 ? [own] : []),
  ];
}
