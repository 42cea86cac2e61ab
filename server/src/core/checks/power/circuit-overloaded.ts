// Everything on the machine’s circuit against what it may carry for hours, by the rule of the site.
import { circuitLimit, circuitLoad, wallPower } from '../../figures/mains';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { atKey, outcome, swap } from '../kit';

export default check({
  id: 'circuit-overloaded',
  area: 'power',
  grade: 'harm',
  what: 'The machine and what shares its circuit stay within what the circuit may carry for hours.',
  why:
    'A circuit loaded for hours beyond its rule heats its wires and connectors; the breaker trips late or ' +
    'not at all. What the rule is, local code and an electrician say.',
  source: 'NFPA 70, National Electrical Code, 210.20(A), United States only; elsewhere the local electrical code',
  limits: ['The circuit is held against watts, as if the power factor were one.'],
  caution: 'circuit-overload',
  examples: [
    {
      faulty: `
place:
  mains: { voltage: 120 V, circuit: 15 A, shared-load: 1000 W, rule: 80 percent continuous }
#                                   ^^^^
parts:
  processor: { power: { sustained: 500 W } }
  supply: { rating: 1000 W, efficiency: [{ load: 50 %, percent: 90 % }] }
`,
      instead: 'Move the machine or what shares its circuit to another one; ask a licensed electrician.',
    },
  ],
  test(build, report) {
    const { mains } = build.file.place;
    const wall = wallPower(build);
    if (!wall || !(mains.circuit.entry ?? mains['shared-load'].entry ?? mains.rule.entry)) return;
    const load = circuitLoad(build, wall);
    const limit = circuitLimit(build);
    report(
      outcome(atKey(build, mains.circuit), atMost(load, limit), {
        broken: () =>
          sentence`The machine and what shares its circuit draw ${load}; the circuit may carry ${limit} for hours.`,
        fixes: () => (build.parts.supply ? [swap(build.parts.supply)] : []),
      }),
    );
  },
});
