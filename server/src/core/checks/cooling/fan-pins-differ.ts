// A fan's connector against its header: how the speed can be set where one has three pins and the other four.
import { headerLoads } from '../../figures/headers';
import { sentence } from '../../figures/sentence';
import { agree, lacking } from '../../figures/truth';
import { check } from '../check';
import { aspectOf, at, outcome } from '../kit';

export default check({
  id: 'fan-pins-differ',
  area: 'cooling',
  grade: 'note',
  what: 'A fan and its header have the same number of pins.',
  why:
    'The connector fits either way, but the speed is set by PWM only where both have the fourth pin; else ' +
    'the fan runs at full speed unless the header varies its voltage.',
  source: '4-Wire Pulse Width Modulation (PWM) Controlled Fans Specification, 2.1.4; common practice',
  examples: [
    {
      faulty: `
parts:
  board: { headers: { SYS_FAN_1: { kind: fan, pins: 4, current: 1 A } } }
  fans: [{ pins: 3, current: 0.2 A, start-current: 0.4 A, header: SYS_FAN_1 }]
#                                                                 ^^^^^^^^^
`,
      instead: 'Set the header to vary the voltage in the firmware, or use a fan with four pins.',
    },
  ],
  test(build, report) {
    for (const { name, header, missingFacts, connectors } of headerLoads(build)) {
      for (const one of connectors) {
        // A pump is to run at full speed whatever its connector.
        if (one.pump) continue;
        const place = at(one.placed, one.header);
        const truth = header
          ? agree(one.pins, `pins of ${one.label}`, header.pins, `pins of ${name}`, (a, b) => a === b)
          : lacking(missingFacts, one.header);
        report(
          outcome(aspectOf(place, 'pins'), truth, {
            broken: () =>
              sentence`The connector of ${one.label} has ${one.pins} pins and ${name} has ${header!.pins}: PWM does not
                reach it, only a change of voltage.`,
          }),
        );
      }
    }
  },
});
