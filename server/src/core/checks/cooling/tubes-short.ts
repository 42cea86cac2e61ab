// A liquid cooler's tubes against the path to its radiator.
import { figure } from '../../figures/figure';
import { listsClass, radiators } from '../../figures/radiators';
import { sentence } from '../../figures/sentence';
import { atMost, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';
import { elsewhere } from './cooling-kit';

export default check({
  id: 'tubes-short',
  area: 'cooling',
  grade: 'stop',
  what: 'The tubes of a liquid cooler reach from the processor to where its radiator goes.',
  why: 'Tubes cannot be lengthened, and a tube pulled tight kinks or pulls at its fitting until it leaks.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  cooler: { mount: front, tubes: down, radiator: { class: "240" }, tube-length: 350 mm }
#                  ^^^^^
  case: { radiator-places: { front: { tube-path: 420 mm } } }
`,
      instead: 'Mount the radiator nearer to the processor, or choose a cooler with longer tubes.',
    },
  ],
  test(build, report) {
    for (const radiator of radiators(build)) {
      const { placed, label, mount, place, missingFacts } = radiator;
      if (placed.role !== 'cooler' || (!place && missingFacts.length === 0)) continue;
      const tubes = figure(placed.part['tube-length'], `length of the tubes of ${placed.label}`);
      const path = place && figure(place['tube-path'], `path of tubes to ${mount.value}`);
      report(
        outcome(at(placed, mount), path ? atMost(path, tubes) : lacking(missingFacts), {
          broken: () =>
            sentence`The tubes of ${placed.label} are ${tubes} long; the way to ${label} at ${mount} takes ${path!}.`,
          fixes: () => elsewhere(build, radiator),
          ...(listsClass(radiator) && tubes.lo >= usualTubesMm && !place!['tube-path'].node
            ? { usual: () => `tubes of ${usualTubesMm} mm and more reach ${mount.value}` }
            : {}),
        }),
      );
    }
  },
});

/** Tubes of this length reach every place that a case lists for a radiator of their class. Source: common practice. */
const usualTubesMm = 350;
