// The sustained sum of all parts against the supply’s rating, and what hangs on 12 V against its rails.
import { figure } from '../../figures/figure';
import { sustainedDraw } from '../../figures/power';
import { twelveVoltDraw, twelveVoltLimit } from '../../figures/rails';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';
import { limitProcessor } from './power-kit';

export default check({
  id: 'supply-overloaded',
  area: 'power',
  grade: 'harm',
  what: 'All parts together draw no more than the supply delivers for as long as asked, on the whole and at 12 V.',
  why:
    'An overloaded supply shuts off under load at best; at worst its cables and connectors overheat. Nearly ' +
    'all load of today’s parts hangs on 12 V.',
  source: 'ATX Version 3 design guide, doc. 336521: the rating is the continuous sum of the outputs',
  limits: [
    'The whole sum and the 12 V rails together are judged; which part hangs on which single rail no ' + 'file states.',
  ],
  caution: 'overloaded-supply',
  examples: [
    {
      faulty: `
parts:
  processor: { power: { sustained: 253 W } }
  graphics: { power: { sustained: 320 W } }
  supply: { rating: 550 W, rails: { +12V: { voltage: 12 V, current: 50 A } } }
# ^^^^^^
`,
      instead: 'Choose a supply rated above 573 W with the house’s headroom, or limit the processor’s power.',
    },
  ],
  test(build, report) {
    const { supply } = build.parts;
    if (!supply) return;
    const rating = figure(supply.part.rating, `rating of ${supply.label}`);
    const drawn = sustainedDraw(build);
    report(
      outcome(at(supply), atMost(drawn, rating), {
        broken: () => sentence`The parts draw ${drawn} for as long as they work; the supply delivers ${rating}.`,
        fixes: () => [swap(supply), limitProcessor(build, drawn, rating)],
      }),
    );
    const drawn12 = twelveVoltDraw(build);
    const rails = twelveVoltLimit(supply);
    report(
      outcome(at(supply, supply.part.rails, 'rails'), atMost(drawn12, rails), {
        broken: () => sentence`The parts draw ${drawn12} at 12 V; the supply’s 12 V rails deliver ${rails}.`,
        fixes: () => [swap(supply), limitProcessor(build, drawn12, rails)],
      }),
    );
  },
});
