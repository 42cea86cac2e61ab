// The sustained sum of all parts against the supply’s rating at its mains, and what hangs on its rails against them.
import type { Build, Placed } from '../../build/build';
import { sustainedDraw } from '../../figures/power';
import { fiveVoltDraw, fiveVoltLimit, namedRails, twelveVoltDraw, twelveVoltLimit } from '../../figures/rails';
import { sentence } from '../../figures/sentence';
import { lowMainsLimit, ratingOf } from '../../figures/supply-rating';
import { any, atMost, lessThan } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap, type Reporter } from '../kit';
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
    'The whole sum, the 12 V rails together, those named for processor or cards and the 5 V rail are judged; which ' +
      'part hangs on which other 12 V rail no file states.',
    'Without its rails a supply is taken to deliver 80 to 100 % of its rating at 12 V.',
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
    const rating = ratingOf(build, supply);
    const drawn = sustainedDraw(build);
    report(
      outcome(at(supply), atMost(drawn, rating), {
        broken: () => sentence`The parts draw ${drawn} for as long as they work; the supply delivers ${rating}.`,
        fixes: () => [swap(supply), limitProcessor(build, drawn, rating)],
      }),
    );
    const drawn12 = twelveVoltDraw(build);
    const rails = twelveVoltLimit(build, supply);
    report(
      outcome(at(supply, supply.part.rails, 'rails'), atMost(drawn12, rails), {
        broken: () => sentence`The parts draw ${drawn12} at 12 V; the supply’s 12 V rails deliver ${rails}.`,
        fixes: () => [swap(supply), limitProcessor(build, drawn12, rails)],
      }),
    );
    ownRails(build, supply, report);
    fiveVolts(build, supply, report);
    lowMains(build, supply, report);
  },
});

/** The 12 V rails that the label names for what hangs on them. */
function ownRails(build: Build, supply: Placed<'supply'>, report: Reporter): void {
  for (const { name, feeds, draw, limit } of namedRails(build, supply))
    report(
      outcome(at(supply, supply.part.rails, name), atMost(draw, limit), {
        broken: () =>
          feeds === 'processor'
            ? sentence`The processor draws ${draw}; the rail for it delivers ${limit}.`
            : sentence`The cards draw ${draw} through their connectors; the rail for them delivers ${limit}.`,
        fixes: () => [swap(supply), ...(feeds === 'processor' ? [limitProcessor(build, draw, limit)] : [])],
      }),
    );
}

/** The 5 V rail, where drives hang on it that take nothing else. */
function fiveVolts(build: Build, supply: Placed<'supply'>, report: Reporter): void {
  const drawn = fiveVoltDraw(build);
  if (!drawn) return;
  const limit = fiveVoltLimit(supply);
  report(
    outcome(at(supply, supply.part.rails, '5 V'), atMost(drawn, limit), {
      broken: () => sentence`The 2.5 in drives draw ${drawn} at 5 V; the supply delivers ${limit} there.`,
      fixes: () => [swap(supply)],
    }),
  );
}

/** A large rating may hold at the higher mains voltage only: worth asking, never more. */
function lowMains(build: Build, supply: Placed<'supply'>, report: Reporter): void {
  const limit = lowMainsLimit(build, supply);
  if (!limit) return;
  const drawn = sustainedDraw(build);
  const rating = ratingOf(build, supply);
  const { voltage } = build.file.place.mains;
  report(
    outcome(at(supply, undefined, 'ratings'), any(atMost(drawn, limit), lessThan(rating, drawn)), {
      grade: 'note',
      broken: () =>
        sentence`The parts draw ${drawn}; one plug of ${voltage} feeds ${limit} for hours, and the ${rating} may hold
          at the higher mains voltage only. Look up the rating at ${voltage}.`,
    }),
  );
}
