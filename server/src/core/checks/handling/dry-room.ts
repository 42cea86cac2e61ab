// Dry air and the floor: what a person charges up to at the bench.
import type { Build } from '../../build/build';
import { between, derive, figure, known, missing, type Figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { atLeast, given, lacking } from '../../figures/truth';
import { wearsStrap, strapFacts } from '../../figures/strap';
import { chargeV, type Activity } from '../../trade/statics';
import { check } from '../check';
import { atKey, outcome } from '../kit';

const source = 'a computer maker’s service manual, typical electrostatic voltage levels';
const enough = known(40, 'percent', 'humidity from which charges stay moderate', {
  unit: '%',
  source: 'common practice, 40 to 60 %',
});

export default check({
  id: 'dry-room',
  area: 'handling',
  grade: 'note',
  caution: 'static-to-parts',
  what: 'The air at the bench is not so dry that every step charges a person up.',
  why:
    'In dry air, and most of all on carpet, a few steps charge a person to tens of thousands of volts; one ' +
    'discharge harms a part.',
  source:
    'a computer maker’s service manual, typical electrostatic voltage levels; humidity 40 to 60 %, common practice',
  remarks: ['On carpet it harms; with a strap worn that has a cord it is a note.'],
  examples: [
    {
      faulty: `
place: { humidity: 22 %, floor: carpet }
#                  ^^^^
`,
      instead:
        'Bring the humidity to 40 % or more, or stand on a dissipative mat; equalise again after every ' +
        'walk, and keep parts in their bags until then.',
    },
  ],
  test(build, report) {
    const { humidity, floor } = build.file.place;
    if (humidity.node === undefined && floor.node === undefined) return;
    const air = figure(humidity, 'humidity at the bench');
    const walk = activityOn(floor.value);
    report(
      outcome(
        atKey(build, humidity),
        humidity.value
          ? given(atLeast(air, enough), floor, build.file.bench.strap['clipped-to'], ...strapFacts(build))
          : lacking([missing(humidity, 'humidity at the bench')], floor),
        {
          broken: () => said(walk, air, drained(build)),
          ...(floor.value === 'carpet' && !drained(build) ? { grade: 'harm' as const } : {}),
        },
      ),
    );
  },
});

/** The row of the table for a floor; bare wood, concrete and a mat have none, so that only work at the bench counts. */
function activityOn(floor: string | undefined): Activity {
  return floor === 'carpet' ? 'walking on carpet' : floor === 'vinyl' ? 'walking on vinyl' : 'working at a bench';
}

/** Whether a strap with a cord is worn, which carries off at the bench what a walk brings. */
function drained(build: Build): boolean {
  const { kind, 'clipped-to': clip } = build.file.bench.strap;
  return wearsStrap(build) && kind.value !== 'cordless' && !/nothing|painted/.test(clip.value ?? '');
}

function said(activity: Activity, air: Figure, strapped: boolean): ReturnType<typeof sentence> {
  const volts = reached(activity, air);
  return strapped
    ? sentence`At ${air} ${activity} charges a person to ${volts}. Put the strap on after every walk, and keep the air
        at ${enough} or more.`
    : sentence`At ${air} ${activity} charges a person to ${volts}. Equalise after every walk, and keep the air at
        ${enough} or more.`;
}

/** What the table says between the rows around the humidity. */
function reached(activity: Activity, air: Figure): Figure {
  const lowest = chargeV(activity, Math.min(100, air.hi)).low;
  const highest = chargeV(activity, Math.max(0, air.lo)).high;
  const row = between(lowest, highest, 'voltage', `${activity} at that humidity`, { unit: 'V', source });
  return derive(
    `charge by ${activity}`,
    'voltage',
    [air, row],
    'the table’s row for that humidity',
    (_, volts) => volts,
    { unit: 'V' },
  );
}
