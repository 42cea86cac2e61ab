// The processor's steady temperature through the whole chain, against its limit and against what is promised.
import type { Build, Placed } from '../../build/build';
import { figure, missing, type Figure } from '../../figures/figure';
import { heatOf, hottestAllowed, powerWithin, processorTemperature, temperatureByRating } from '../../figures/heat';
import { inletTemperature } from '../../figures/air';
import { sentence } from '../../figures/sentence';
import { all, atLeast, atMost, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, atKey, change, outcome, putOn, swap, type FixIdea, type Outcome } from '../kit';

export default check({
  id: 'cooler-capacity-short',
  area: 'cooling',
  grade: 'shortfall',
  what:
    'At its sustained power the processor stays below its limit, and below what is promised, with the air at ' +
    'its worst.',
  why:
    'A processor that gets too hot slows itself down for as long as the work lasts; a cooler’s rating in ' +
    'watts alone does not say at what temperature.',
  source: 'processor thermal design guides: T = T(inlet) + P × ΣR; the room below the limit, by the house',
  limits: [
    'A rating in watts does not say at what rise it was rated: it is taken as at most 75 K from the air to the ' +
      'processor, so that nothing more is asked where it lies well above the power.',
  ],
  examples: [
    {
      faulty: `
place: { ambient: 31 °C }
parts:
  processor: { power: { sustained: 180 W }, hottest: 95 °C }
  cooler: { rated-power: 150 W }
#                        ^^^^^
`,
      instead: 'Choose a cooler rated for the processor’s power, and ask its maker for the thermal resistance.',
    },
  ],
  test(build, report) {
    const { processor, cooler } = build.parts;
    if (!processor || !cooler) return;
    const reached = processorTemperature(build, processor, cooler);
    report(
      cooler.part['thermal-resistance'].entry
        ? byTemperature(build, processor, cooler, reached)
        : byRating(build, processor, cooler),
    );
    const promise = build.file.expect.temperature.processor;
    if (!promise.entry) return;
    const wanted = figure(promise, 'promised temperature of the processor');
    report(
      outcome(atKey(build, promise), atMost(reached, wanted), {
        broken: () =>
          sentence`${processor.label} is promised to stay at or below ${wanted} and reaches ${reached} at
            ${heatOf(processor)}.`,
        fixes: () => [
          limitTo(processor, powerWithin(build, processor, cooler, wanted)),
          swap(cooler),
          Number.isFinite(reached.hi)
            ? change(promise, `${Math.ceil(reached.hi)} °C`, `Raise the promise to ${Math.ceil(reached.hi)} °C`)
            : undefined,
        ],
      }),
    );
  },
});

function byTemperature(
  build: Build,
  processor: Placed<'processor'>,
  cooler: Placed<'cooler'>,
  reached: Figure,
): Outcome {
  const limit = hottestAllowed(build)!;
  return outcome(at(cooler, cooler.part['thermal-resistance']), atMost(reached, limit), {
    broken: () =>
      sentence`At ${heatOf(processor)} and ${inletTemperature(build)} at the inlet ${processor.label}
        reaches ${reached};
        it is to stay at or below ${limit}.`,
    fixes: () => [limitTo(processor, powerWithin(build, processor, cooler, limit)), swap(cooler)],
  });
}

/**
 * A rating below the power is short; one not far above it still says nothing of a temperature, for want of the rise it
 * was rated at.
 */
function byRating(build: Build, processor: Placed<'processor'>, cooler: Placed<'cooler'>): Outcome {
  const rated = figure(cooler.part['rated-power'], `rated power of ${cooler.label}`);
  const power = heatOf(processor);
  const open = lacking(
    [missing(cooler.part['thermal-resistance'], `thermal resistance of ${cooler.label}`)],
    rated,
    power,
  );
  const cool = atMost(temperatureByRating(build, processor, cooler), hottestAllowed(build)!);
  return outcome(at(cooler, cooler.part['rated-power']), all(atLeast(rated, power), open), {
    ...(cool.is === true
      ? { usual: () => `${cooler.label}, rated well above its power, keeps ${processor.label} cool` }
      : {}),
    broken: () =>
      sentence`${processor.label} gives off ${power} for as long as it works; ${cooler.label} is rated to carry off
        ${rated}.`,
    fixes: () => [swap(cooler)],
  });
}

/** A limit below half of its own power makes another machine of it: nobody is offered that. */
function limitTo(processor: Placed<'processor'>, watts: number | undefined): FixIdea | undefined {
  if (watts === undefined || !(watts * 2 >= heatOf(processor).hi)) return undefined;
  return putOn(processor, 'power-limit', `${watts} W`, `Limit ${processor.label} to ${watts} W`);
}
