// Everything on the machine’s circuit against what it may carry for hours, by the rule of the site.
import type { Build } from '../../build/build';
import { circuitLimit, circuitLoad } from '../../figures/circuit';
import { wallPower } from '../../figures/mains';
import { sentence } from '../../figures/sentence';
import { missing } from '../../figures/figure';
import { atMost, lacking, type Truth } from '../../figures/truth';
import { check } from '../check';
import { atKey, outcome, swap } from '../kit';

export default check({
  id: 'circuit-overloaded',
  area: 'power',
  grade: 'harm',
  what: 'The machine, its displays and what shares their circuit stay within what the circuit may carry for hours.',
  why:
    'A circuit loaded for hours beyond its rule heats its wires and connectors; the breaker trips late or ' +
    'not at all. What the rule is, local code and an electrician say.',
  source: 'NFPA 70, National Electrical Code, 210.20(A), United States only; elsewhere the local electrical code',
  limits: ['What shares the circuit is taken at a power factor of one; the displays of the build are added to it.'],
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
    const { supply } = build.parts;
    if (!wall || !supply || !(mains.circuit.entry ?? mains['shared-load'].entry ?? mains.rule.entry)) return;
    const load = circuitLoad(build, supply, wall);
    const limit = circuitLimit(build);
    report(
      outcome(atKey(build, mains.circuit), sharedFirst(build, atMost(load, limit)), {
        broken: () =>
          sentence`The machine and what shares its circuit draw ${load}; the circuit may carry ${limit} for hours. Move
            one of them to another circuit.`,
        fixes: () => [swap(supply)],
      }),
    );
  },
});

/** What shares the circuit may be anything: while it is not stated, what the parts draw to a watt decides nothing. */
function sharedFirst({ file: { place } }: Build, truth: Truth): Truth {
  const { 'shared-load': shared, rule } = place.mains;
  if (truth.is !== undefined || shared.node) return truth;
  const asked = [missing(shared, 'shared load of the circuit')];
  return lacking(rule.node ? asked : [...asked, missing(rule, 'rule of the site for continuous load')], ...truth.uses);
}
