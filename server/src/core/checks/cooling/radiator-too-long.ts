// A radiator's real length, end tanks included, against the place it is to go into.
import { figure } from '../../figures/figure';
import { radiatorLength, radiators } from '../../figures/radiators';
import { sentence } from '../../figures/sentence';
import { atMost, lacking } from '../../figures/truth';
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
        outcome(at(placed, mount), room ? atMost(length, room) : lacking(missingFacts), {
          broken: () => sentence`${label} is ${length} long with its end tanks; the case leaves ${room!} at ${mount}.`,
          fixes: () => elsewhere(build, radiator),
        }),
      );
    }
  },
});
