// Air that carries the parts' heat off, against what the fans really deliver in a filled case.
import { airNeeded, altitude, caseRise, deliveredAir, freeAir, riseAllowed } from '../../figures/air';
import { heatInCase, isOpenFrame } from '../../figures/case-heat';
import { heatLeft, stillHeat } from '../../figures/still-air';
import { marginFigure } from '../../figures/margins';
import { sentence } from '../../figures/sentence';
import { atLeast, atMost } from '../../figures/truth';
import { check } from '../check';
import { at, change, outcome, swap } from '../kit';

export default check({
  id: 'airflow-short',
  area: 'cooling',
  grade: 'shortfall',
  what:
    'The fans deliver enough air through the filled case to carry the parts’ heat off at the rise allowed, ' +
    'at the height of the place.',
  why:
    'Fans are stated by what they move in free air; behind grilles and filters it is about half, and thin ' +
    'air up high carries less heat.',
  source: 'Q = P ÷ (ρ · cₚ · ΔT); US Standard Atmosphere 1976; delivered, 0.4 to 0.7 of free air by common practice',
  limits: [
    'Without any fan the heat is held against what walls and gaps give off, 0 to 10 W/K, and what a supply draws out.',
    'A card with fans in such a case may give off its heat through an open side: that is left open.',
    'An open frame is not judged.',
  ],
  examples: [
    {
      faulty: `
place: { ambient: 25 °C, altitude: 40 m }
parts:
  graphics: [{ power: { sustained: 400 W } }]
  case: { fan-places: {} }
# ^^^^
  fans: [{ airflow: 90 m³/h, flow: out, draw: { peak: 3 W } }]
expect: { temperature: { rise: 15 K } }
`,
      mended: `
place: { ambient: 25 °C, altitude: 40 m }
parts:
  graphics: [{ power: { sustained: 400 W } }]
  case: { fan-places: {} }
  fans: [{ airflow: 90 m³/h, flow: out, draw: { peak: 3 W } }]
expect: { temperature: { rise: 34 K } }
`,
    },
  ],
  test(build, report) {
    const { case: box, fans } = build.parts;
    if (!box || isOpenFrame(build)) return;
    const rise = riseAllowed(build, marginFigure(build, 'room-rise', 'rise allowed in the case'));
    // Without any fan the heat rises and leaks through walls and gaps: there is no flow to hold against another.
    if (freeAir(build).hi === 0) {
      const heat = heatLeft(build);
      const given = stillHeat(build, rise);
      report(
        outcome(at(box), atMost(heat, given), {
          broken: () =>
            sentence`The parts give off ${heat}; without fans the case loses ${given} at a rise of ${rise}. Add fans, or
              choose a case that is rated for it.`,
        }),
      );
      return;
    }
    const delivered = deliveredAir(build);
    const needed = airNeeded(build, rise);
    report(
      outcome(at(box), atLeast(delivered, needed), {
        broken: () =>
          sentence`${heatInCase(build)} at a rise of ${rise} needs ${needed} of air, ${altitude(build)}
            above the sea; in
            the filled case the fans deliver ${delivered}. Add fans or faster ones.`,
        fixes: () => {
          const promise = build.file.expect.temperature.rise;
          const { hi } = caseRise(build);
          const lower =
            promise.entry && Number.isFinite(hi)
              ? change(promise, `${Math.ceil(hi)} K`, `Raise the promise to ${Math.ceil(hi)} K`)
              : undefined;
          return [...fans.map(swap), lower];
        },
      }),
    );
  },
});
