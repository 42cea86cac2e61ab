// A radiator's real length, end tanks included, against the place it is to go into.
import { figure } from '../../figures/figure';
import { radiatorLength, radiators, type Radiator, type RadiatorPlace } from '../../figures/radiators';
import { spoken } from '../../figures/lists';
import { sentence } from '../../figures/sentence';
import { agree, atMost, lacking, type Truth } from '../../figures/truth';
import { classTakes } from '../../trade/forms';
import { check } from '../check';
import { at, outcome } from '../kit';
import { elsewhere } from './cooling-kit';

export default check({
  id: 'radiator-too-long',
  area: 'cooling',
  grade: 'stop',
  what: 'Each radiator, end tanks included, is no longer than its place in the case.',
  why:
    'A radiator’s class is fan size times number of fans; the real one is longer by its tanks, and those ' +
    'meet the case first.',
  source: 'common practice: a class of 240 is about 275 mm long',
  limits: ['Where the case prints radiator classes and no length, the class decides.'],
  examples: [
    {
      faulty: `
parts:
  cooler: { mount: top, radiator: { class: "240", length: 277 mm }, tube-length: 400 mm }
#                  ^^^
  case: { radiator-places: { top: { length: 270 mm } } }
`,
      instead: 'Mount it where the case leaves its real length, or choose a smaller one.',
    },
  ],
  test(build, report) {
    for (const radiator of radiators(build)) {
      const { placed, label, mount, place, missingFacts } = radiator;
      if (!place && missingFacts.length === 0) continue;
      const length = radiatorLength(radiator);
      const room = place && figure(place.length, `room for a radiator at ${mount.value}`);
      report(
        outcome(at(placed, mount), room ? (byClass(radiator, place) ?? atMost(length, room)) : lacking(missingFacts), {
          broken: () =>
            place!.length.value
              ? sentence`${label} is ${length} long with its end tanks; the case leaves ${room!} at ${mount}.`
              : sentence`${label} is of class ${radiator.facts.class}; the case takes
                  ${spoken(place!.classes.value!)} at ${mount}.`,
          fixes: () => elsewhere(build, radiator),
        }),
      );
    }
  },
});

/** Where the case prints classes and no length, the class decides; undefined where a length is stated, or no class. */
function byClass({ facts, label, mount }: Radiator, place: RadiatorPlace): Truth | undefined {
  const { classes, length } = place;
  if (length.value || !classes.value) return undefined;
  return agree(facts.class, `class of ${label}`, classes, `radiator classes at ${mount.value}`, (own, taken) =>
    taken.some((one) => one.value !== undefined && classTakes(one.value, own)),
  );
}
