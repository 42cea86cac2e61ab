// Cold parts in a warm, humid room: whether water settles on them, and whether they lie long enough first.
import { dewPoint } from '../../figures/air';
import { between, figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { any, atLeast, lessThan, sure } from '../../figures/truth';
import { WARM_UP_H } from '../../trade/air';
import { check } from '../check';
import { atKey, outcome, put } from '../kit';

const secondsAnHour = 3600;
const enough = between(
  WARM_UP_H.low * secondsAnHour,
  WARM_UP_H.high * secondsAnHour,
  'time',
  'time until parts are as warm as the room',
  {
    unit: 'h',
    source: 'a computer maker’s handbook; ASHRAE, Cold Weather Shipping Acclimation and Best Practices',
  },
);

export default check({
  id: 'dew-on-parts',
  area: 'cooling',
  grade: 'harm',
  what: 'Parts that come in colder than the room’s dew point lie sealed until they are warm.',
  why: 'Water settles on a cold part within minutes of unpacking; powered while wet, it shorts.',
  source:
    'WMO Guide to Instruments and Methods of Observation (No. 8), annex 4.B; ASHRAE, Cold Weather Shipping ' +
    'Acclimation and Best Practices',
  limits: ['Between 2 h and 24 h of warming up it stays open.'],
  caution: 'dew',
  examples: [
    {
      faulty: `
place: { ambient: 25 °C, humidity: 50 %, brought-from: 5 °C }
#                                                      ^^^^
`,
      mended: `
place: { ambient: 25 °C, humidity: 50 %, brought-from: 5 °C, warm-up: 24 h }
`,
    },
  ],
  test(build, report) {
    const { place } = build.file;
    const cold = place['brought-from'];
    const rest = place['warm-up'];
    if (!cold.entry) return;
    const from = figure(cold, 'temperature that the parts come from');
    const dew = dewPoint(build);
    const rested = figure(rest, 'time that the parts lie sealed');
    report(
      outcome(atKey(build, cold), any(lessThan(dew, from), rest.entry ? atLeast(rested, enough) : sure(false)), {
        broken: () =>
          rest.entry
            ? sentence`Parts from ${from} come into air with a dew point of ${dew}, and lie sealed for ${rested} only.
              Leave them sealed for ${enough}.`
            : sentence`Parts from ${from} come into air with a dew point of ${dew}: water settles on them as they are
              unpacked. Leave them sealed until they are as warm as the room.`,
        fixes: () => [
          put(
            build.doc,
            ['place', 'warm-up'],
            `${WARM_UP_H.high} h`,
            `Let the parts lie sealed for ${WARM_UP_H.high} h`,
          ),
        ],
      }),
    );
  },
});
