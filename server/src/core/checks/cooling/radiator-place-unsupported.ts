// A radiator's fans and width against what its place in the case takes.
import { figure, type Figure } from '../../figures/figure';
import { listsClass, radiators, type Radiator, type RadiatorPlace } from '../../figures/radiators';
import { spoken } from '../../figures/lists';
import { sentence } from '../../figures/sentence';
import { agree, all, atMost, lacking, type Truth } from '../../figures/truth';
import { check } from '../check';
import { at, outcome } from '../kit';
import { elsewhere } from './cooling-kit';

export default check({
  id: 'radiator-place-unsupported',
  area: 'cooling',
  grade: 'stop',
  what: 'Each radiator’s fan size and width are among those its place in the case takes.',
  why: 'The holes of a place follow the size of the fans: a radiator of another size has nothing to be screwed to.',
  source: 'common practice',
  remarks: ['A place that the case does not have is judged by `place-unknown`.'],
  examples: [
    {
      faulty: `
parts:
  cooler: { mount: top, radiator: { fan-size: 140 mm, width: 140 mm }, tube-length: 400 mm }
#                  ^^^
  case: { radiator-places: { top: { fan-sizes: [120 mm], width: 140 mm } } }
`,
      instead: 'Choose a radiator for the fan size that the case takes.',
    },
  ],
  test(build, report) {
    for (const radiator of radiators(build)) {
      const { placed, label, mount, place, missingFacts } = radiator;
      if (!place && missingFacts.length === 0) continue;
      const width = figure(radiator.facts.width, `width of ${label}`);
      const fits = place && sizeFits(radiator, place);
      const narrow = place && atMost(width, widthOf(radiator, place));
      report(
        outcome(at(placed, mount), fits && narrow ? all(fits, narrow) : lacking(missingFacts), {
          broken: () =>
            fits!.is === false
              ? sentence`${label} takes fans of ${radiator.facts['fan-size']}; the case takes
                ${spoken(place!['fan-sizes'].value!)} at ${mount}.`
              : sentence`${label} is ${width} wide; the case leaves ${widthOf(radiator, place!)} at ${mount}.`,
          fixes: () => elsewhere(build, radiator),
          ...(listsClass(radiator) && !place!['fan-sizes'].node && !place!.width.node
            ? { usual: () => `the place ${mount.value} takes radiators of the class it lists, as ${label}` }
            : {}),
        }),
      );
    }
  },
});

const widthOf = ({ mount }: Radiator, place: RadiatorPlace): Figure =>
  figure(place.width, `width for a radiator at ${mount.value}`);

function sizeFits({ facts, label, mount }: Radiator, place: RadiatorPlace): Truth {
  return agree(
    facts['fan-size'],
    `fan size of ${label}`,
    place['fan-sizes'],
    `fan sizes of radiators at ${mount.value}`,
    (size, sizes) => sizes.some((one) => one.value?.lo === size.lo),
  );
}
