// Fans of the build at the place of a radiator: beside it in the row, or on its other side, and nowhere else.
import type { Build } from '../../build/build';
import { known, times } from '../../figures/figure';
import { many } from '../../figures/lists';
import { besideIt, countOf, fansAt, perSide } from '../../figures/radiator-fans';
import { radiators, type Radiator } from '../../figures/radiators';
import { sentence } from '../../figures/sentence';
import { any, atMost, given } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, type Reporter } from '../kit';
import { elsewhere } from './cooling-kit';

export default check({
  id: 'radiator-place-crowded',
  area: 'cooling',
  grade: 'stop',
  what: 'Fans at the place of a radiator stand beside it in the row, or on its sides, no more than those take.',
  why: 'A radiator takes up the places of its fans: case fans that were to hang there have nowhere to go.',
  source: 'common practice: fans on one side of a radiator, or on both, one for each of its places',
  limits: ['Fans that the case brings are taken to come off where a radiator goes in.'],
  examples: [
    {
      faulty: `
parts:
  case: { fan-places: { front: { sizes: [120 mm], count: 3 } }, radiator-places: { front: { thickness: 90 mm } } }
  cooler: { mount: front, radiator: { class: "240", thickness: 27 mm }, fans: { count: 2, thickness: 25 mm } }
  fans: [{ size: 120 mm, thickness: 25 mm, count: 3, mount: front }]
#                                                           ^^^^^
`,
      instead: 'Mount the fans at another place, or leave those out that find no room.',
    },
  ],
  test(build, report) {
    for (const radiator of radiators(build)) judge(build, radiator, report);
  },
});

function judge(build: Build, radiator: Radiator, report: Reporter): void {
  const { placed, facts, label, mount } = radiator;
  const fans = fansAt(build, mount.value);
  const last = fans.at(-1);
  if (!last || mount.value === undefined) return;
  const ofCooler = placed.role === 'cooler';
  const count = countOf(fans);
  const side = perSide(facts, label);
  const sides = known(ofCooler ? 1 : 2, 'count', 'sides that are free', { source: 'common practice' });
  const room = times(side, sides, `fans on ${label}`);
  const onIt = atMost(count, room);
  report(
    outcome(
      at(last, last.at.mount),
      given(
        ofCooler ? any(onIt, besideIt(build, facts, label, mount.value)) : onIt,
        mount,
        ...fans.map((fan) => fan.at.mount),
      ),
      {
        broken: () =>
          ofCooler
            ? sentence`The place ${last.at.mount} is to take ${many(count, 'fan')} beside ${label}: its other side takes
                ${room}, and the row has no room for more.`
            : sentence`The place ${last.at.mount} is to take ${many(count, 'fan')}; both sides of ${label} take
                ${room}.`,
        fixes: () => elsewhere(build, radiator),
      },
    ),
  );
}
