// A fan’s thickness against the depth that its place in the case states.
import { fanSeats } from '../../figures/fan-places';
import { figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { atMost, given } from '../../figures/truth';
import { check } from '../check';
import { at, aspectOf, outcome, swap } from '../kit';

export default check({
  id: 'fan-too-thick',
  area: 'cooling',
  grade: 'stop',
  what: 'No fan is thicker than the depth that its place in the case states.',
  why: 'Small cases leave room for slim fans only; one of the usual 25 mm meets the board, its cables or the panel.',
  source: 'common practice; fans are 25 mm thick where they are not called slim',
  limits: ['It is judged where the case states the depth of the place.'],
  examples: [
    {
      faulty: `
parts:
  case: { fan-places: { top: { sizes: [120 mm], count: 2, thickness: 15 mm } } }
  fans: [{ size: 120 mm, thickness: 25 mm, mount: top }]
#                                                 ^^^
`,
      instead: 'Choose a slim fan, or mount it elsewhere.',
    },
  ],
  test(build, report) {
    for (const { fan, name, place } of fanSeats(build)) {
      if (!place?.thickness.entry) continue;
      const thickness = figure(fan.part.thickness, `thickness of ${fan.label}`);
      const room = figure(place.thickness, `depth for a fan at ${name}`);
      report(
        outcome(aspectOf(at(fan, fan.at.mount), 'thickness'), given(atMost(thickness, room), fan.at.mount), {
          broken: () => sentence`${fan.label} is ${thickness} thick; the case takes ${room} at ${fan.at.mount}.`,
          fixes: () => [swap(fan)],
        }),
      );
    }
  },
});
