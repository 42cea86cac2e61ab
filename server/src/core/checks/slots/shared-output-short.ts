// Several pictures through one output, in a chain of displays or through a hub, against what its link carries.
import type { Build } from '../../build/build';
import { outputNamed, type Display } from '../../figures/display';
import { portOf, sharesOutput } from '../../figures/display-paths';
import { sidesOf } from '../../figures/display-links';
import { comfortable, streamsPayload, type PromisedMode } from '../../figures/display-rates';
import { missing, number, total } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { atMost, given, lacking, sure } from '../../figures/truth';
import { carriesSeveral } from '../../trade/display-connectors';
import { check } from '../check';
import { aspectOf, at, atKey, outcome, type Reporter } from '../kit';

export default check({
  id: 'shared-output-short',
  area: 'slots',
  grade: 'shortfall',
  what: 'Displays that share one output share its rate as well, and only DisplayPort carries a picture for each.',
  why: 'In a chain or on a hub the last display stays at a lower mode, or dark; on HDMI all show one picture.',
  source: 'VESA DisplayPort Standard 1.2, multi-stream transport: 63 of 64 time slots carry pictures',
  limits: ['The modes are those promised for one and the same port, uncompressed.'],
  examples: [
    {
      faulty: `
parts:
  graphics: { outputs: { DP_1: { link: DisplayPort HBR2 } } }
expect:
  displays:
    - { mode: 2560x1440 @ 144 Hz, depth: 8 bit, port: DP_1, blanking: CVT-RB2 }
    - { mode: 2560x1440 @ 144 Hz, depth: 8 bit, port: DP_1, blanking: CVT-RB2 }
#             ^^^^^^^^^^^^^^^^^^
`,
      instead: 'Give one of the displays an output of its own, or promise a lower rate.',
    },
  ],
  test(build, report) {
    const promises = (build.file.expect.displays.value ?? []).filter(({ mode }) => mode.value !== undefined);
    for (const port of new Set(promises.flatMap((one) => one.port.value ?? []))) {
      const shared = promises.filter((one) => one.port.value === port);
      if (shared.length > 1) rates(build, shared, report);
    }
    for (const display of build.parts.displays) if (sharesOutput(build, display)) kind(build, display, report);
  },
});

function rates(build: Build, promises: readonly PromisedMode[], report: Reporter): void {
  const last = promises.at(-1)!;
  const { output } = sidesOf(build, last);
  const each = promises.flatMap((promise) => sidesOf(build, promise).plain ?? []);
  const place = aspectOf(atKey(build, last.mode), 'shared');
  const ports = promises.map(({ port }) => port);
  if ('missingFacts' in output || each.length < promises.length) {
    const lacks = 'missingFacts' in output ? output.missingFacts : [missing(last.mode, 'a timing of this mode')];
    report(outcome(place, given(lacking(lacks), ...ports), { broken: () => sentence`` }));
    return;
  }
  const needed = total('payload needed by all pictures', 'data-rate', each, { unit: 'Gb/s' });
  const carried = streamsPayload(output);
  report(
    outcome(place, given(atMost(needed, comfortable(carried)), ...ports), {
      broken: () =>
        sentence`${number(promises.length, 'modes on it')} modes on ${last.port} need ${needed} together; it carries
          ${carried}.`,
    }),
  );
}

/** Whether the output that displays share carries more than one picture at all. */
function kind(build: Build, display: Display, report: Reporter): void {
  const port = portOf(build, display);
  const output = outputNamed(build, port);
  const truth =
    'missingFacts' in output
      ? lacking(output.missingFacts)
      : output.connector === undefined
        ? lacking([missing(output.link, `link of ${output.name}`)])
        : sure(carriesSeveral(output.connector), output.link);
  report(
    outcome(aspectOf(at(display, display.at.through), 'pictures'), given(truth, port, display.at.through), {
      grade: 'stop',
      broken: () =>
        sentence`${display.label} shares ${port} with another display; its link carries one picture alone. Only
          DisplayPort carries one for each.`,
    }),
  );
}
