// A radiator with its fans against the depth of its place.
import { figure } from '../../figures/figure';
import { isUsuallyThick, listsClass, radiators, thicknessWithFans } from '../../figures/radiators';
import { sentence } from '../../figures/sentence';
import { atMost, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';
import { elsewhere } from './cooling-kit';

export default check({
  id: 'radiator-too-thick',
  area: 'cooling',
  grade: 'stop',
  what: 'Each radiator with its fans stays within the depth of its place.',
  why: 'What stands too deep meets the board, its memory or a card’s far end.',
  source: 'common practice',
  examples: [
    {
      faulty: `
parts:
  cooler: { mount: top, radiator: { thickness: 38 mm }, fans: { thickness: 25 mm }, tube-length: 400 mm }
#                  ^^^
  case: { radiator-places: { top: { thickness: 60 mm } } }
`,
      instead: 'Mount it where the case leaves its depth, or choose a thinner one.',
    },
  ],
  test(build, report) {
    for (const radiator of radiators(build)) {
      const { placed, label, mount, place, missingFacts } = radiator;
      if (!place && missingFacts.length === 0) continue;
      const thickness = thicknessWithFans(radiator);
      const room = place && figure(place.thickness, `depth for a radiator at ${mount.value}`);
      report(
        outcome(at(placed, mount), room ? atMost(thickness, room) : lacking(missingFacts), {
          broken: () => sentence`${label} is ${thickness} thick with its fans; the case leaves ${room!} at ${mount}.`,
          fixes: () => elsewhere(build, radiator),
          ...(listsClass(radiator) && isUsuallyThick(radiator) && !place!.thickness.node
            ? { usual: () => `the place ${mount.value} has the depth for ${label}, which is no thicker than most` }
            : {}),
        }),
      );
    }
  },
});
