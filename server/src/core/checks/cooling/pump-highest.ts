// Where the air of a liquid cooler gathers: never at the pump, nor where the pump draws from.
import { missing } from '../../figures/figure';
import { radiators } from '../../figures/radiators';
import { sentence } from '../../figures/sentence';
import { fits, lacking, sure, type Truth } from '../../figures/truth';
import type { Placed } from '../../build/build';
import { check } from '../check';
import { at, outcome, putOn } from '../kit';

/** The places whose height beside the pump their names tell. */
const places: readonly string[] = ['top', 'bottom', 'front', 'rear', 'side'];

export default check({
  id: 'pump-highest',
  area: 'cooling',
  grade: 'shortfall',
  what: 'The pump of a liquid cooler is not the highest point of its loop, and does not draw from where air gathers.',
  why:
    'Some air is in every loop and gathers at its top; a pump that runs in it cools less, is loud and wears ' +
    'out early.',
  source: 'common practice',
  limits: ['Loops built from single parts are not judged.'],
  remarks: ['An upright radiator with its tubes up is a note: its top may still stand above the pump.'],
  examples: [
    {
      faulty: `
parts:
  cooler: { mount: bottom, radiator: { class: "240" } }
#                  ^^^^^^
  case: { radiator-places: { bottom: {}, top: {} } }
`,
      mended: `
parts:
  cooler: { mount: top, radiator: { class: "240" } }
  case: { radiator-places: { bottom: {}, top: {} } }
`,
    },
  ],
  test(build, report) {
    for (const { placed, label, mount } of radiators(build)) {
      // The pump of a loop built from single parts stands where its builder puts it.
      if (placed.role !== 'cooler' || (mount.value !== undefined && !places.includes(mount.value))) continue;
      const { tubes } = placed.at;
      const low = mount.value === 'bottom';
      report(
        outcome(at(placed, mount), airStaysOff(placed, label), {
          broken: () =>
            low
              ? sentence`With ${label} at the ${mount}, the pump is the highest point of the loop.`
              : sentence`With ${label} at the ${mount} and its tubes ${tubes}, the pump draws from where air gathers.`,
          ...(low ? {} : { grade: 'note' }),
          fixes: () => [
            ...(low
              ? []
              : [putOn(placed, 'tubes', 'down', 'Turn the radiator so that its tubes leave it at the bottom')]),
            ...[...(build.parts.case?.part['radiator-places'].value?.keys() ?? [])]
              .filter((name) => name !== mount.value)
              .map((name) => putOn(placed, 'mount', name, `Mount the radiator at ${name}`)),
          ],
        }),
      );
    }
  },
});

/** At the top air stays in the radiator; at an upright one it depends on the end at which the tubes leave. */
function airStaysOff({ at: { mount, tubes } }: Placed<'cooler'>, label: string): Truth {
  if (mount.value === undefined) return lacking([missing(mount, `place of ${label}`)]);
  if (mount.value === 'top' || mount.value === 'bottom') return sure(mount.value === 'top', mount);
  return fits(tubes, `which way the tubes of ${label} leave`, (way) => way !== 'up');
}
