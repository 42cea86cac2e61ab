// A radiator with its fans against the depth of its place, and a front radiator against the cards behind it.
import type { Build } from '../../build/build';
import { derive, figure, type Figure } from '../../figures/figure';
import { isUsuallyThick, listsClass, radiators, thicknessWithFans, type Radiator } from '../../figures/radiators';
import { sentence } from '../../figures/sentence';
import { atMost, lacking } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap, type Reporter } from '../kit';
import { elsewhere } from './cooling-kit';

export default check({
  id: 'radiator-too-thick',
  area: 'cooling',
  grade: 'stop',
  what:
    'Each radiator with its fans stays within the depth of its place, and a front one leaves room for the ' +
    'cards behind it.',
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
      if (mount.value === 'front') cardsBehind(build, radiator, report);
    }
  },
});

/** The case states its room for cards with fans at the front: a radiator there takes its own thickness off. */
function cardsBehind(build: Build, radiator: Radiator, report: Reporter): void {
  const { case: box, graphics, cards } = build.parts;
  const inputs: Figure[] = [
    figure(box!.part['card-length'], `room for a card in ${box!.label}`),
    figure(radiator.facts.thickness, `thickness of ${radiator.label}`),
  ];
  const left = derive(
    'room for a card behind the radiator',
    'length',
    inputs,
    'room for a card − thickness of the radiator',
    (room, thick) => room - thick,
    { unit: 'mm' },
  );
  for (const card of [...graphics, ...cards]) {
    const length = figure(card.part.length, `length of ${card.label}`);
    report(
      outcome(at(card), atMost(length, left), {
        broken: () => sentence`${card.label} is ${length} long; behind ${radiator.label} at the front ${left} is left.`,
        fixes: () => [...elsewhere(build, radiator), swap(card)],
      }),
    );
  }
}
