// Promised display modes against what displays of a finished machine offer, and the kind of output they hang on.
import type { Build, Placed } from '../../build/build';
import { outputKinds } from '../../figures/built-outputs';
import { displayPairs } from '../../figures/built-pairs';
import { portOf } from '../../figures/display-paths';
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import type { BuiltDisplay } from '../../manifest/as-built';
import type { DisplayMode } from '../../trade/display';
import { check } from '../check';
import { aspectOf, at, atFact, outcome, type Reporter } from '../kit';
import { described, notShown } from './built-kit';

export default check({
  id: 'built-display-mode',
  area: 'built',
  grade: 'shortfall',
  what: 'A display offers the machine each mode that is promised for its output, and hangs on that kind of output.',
  why: 'A mode that the display does not offer over the lead it hangs on cannot be chosen.',
  source: 'VESA Enhanced EDID Standard; Linux kernel: names of connectors',
  limits: ['The mode in use shows in no output.', 'Systems number outputs otherwise than boards print them.'],
  examples: [
    {
      faulty: `
parts:
  displays: [{ port: DP_1 }]
expect:
  displays: [{ mode: 3840x2160 @ 120 Hz, port: DP_1 }]
#                    ^^^^^^^^^^^^^^^^^^
`,
      instead: 'Try another lead and another input of the display, and its own settings.',
      beside: {
        'example.asbuilt.yaml':
          '\nfrom: [EDID]\ndisplays: [{ connector: DP-1, reports: P32, modes: [3840x2160 @ 60 Hz] }]\n',
      },
    },
  ],
  test(build, report) {
    if (!build.machine) return;
    for (const { placed, found, alike } of displayPairs(build).pairs)
      for (const display of found) {
        modes(build, placed, display, report);
        // Of alike displays nothing tells which is to hang on which output.
        if (alike.length === 1) output(build, placed, display, report);
      }
  },
});

type Display = Placed<'displays'>;

function modes(build: Build, placed: Display, display: BuiltDisplay, report: Reporter): void {
  const port = portOf(build, placed);
  for (const promise of build.file.expect.displays.value ?? []) {
    const { mode, port: on } = promise;
    const alone = build.parts.displays.length === 1;
    if (!mode.value || !(on.value === undefined ? alone : on.value === port.value)) continue;
    const wanted = mode.value;
    const offered = display.modes.value ?? [];
    const broken = () => sentence`${mode} is promised; the display on ${display.connector} does not offer it.`;
    if (offered.length === 0)
      report(notShown(atFact(mode), display.modes, 'which modes the display offers', { broken }));
    else
      report(
        outcome(
          atFact(mode),
          sure(
            offered.some(({ value }) => value && shows(value, wanted)),
            mode,
            ...offered,
          ),
          { broken },
        ),
      );
  }
}

/** A rate that is a little off, as 59.94 Hz, is the rate that it is named by. */
const shows = (offered: DisplayMode, { widthPx, heightPx, refreshHz }: DisplayMode): boolean =>
  offered.widthPx === widthPx && offered.heightPx === heightPx && Math.abs(offered.refreshHz - refreshHz) < 0.6;

/** By the kind of connector alone. */
function output(build: Build, placed: Display, display: BuiltDisplay, report: Reporter): void {
  const { port } = placed.at;
  const kinds = port.value === undefined ? undefined : outputKinds(build, placed, display);
  if (!kinds) return;
  report(
    outcome(aspectOf(at(placed, port), 'output'), sure(kinds.isSame, ...kinds.facts), {
      grade: 'note',
      broken: () =>
        sentence`${placed.label} is to hang on ${port}; the machine sees ${described(display)} on
          ${display.connector}.`,
    }),
  );
}
