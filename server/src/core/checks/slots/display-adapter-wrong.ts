// Adapters and hubs between an output and displays: connectors on both sides, the way of the signal, how many hang on.
import type { Build, Placed } from '../../build/build';
import { connectorsOf, inputLinks, linkWords, outputNamed, reaches, type Display } from '../../figures/display';
import { adapterOf, isChained, throughMissing } from '../../figures/display-paths';
import { counted, missing, number } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { atMost, given, lacking, sure, type Truth } from '../../figures/truth';
import { worksPassive } from '../../trade/display-connectors';
import { check } from '../check';
import { aspectOf, at, outcome, swap, type Reporter } from '../kit';

type Adapter = Placed<'cables'>;

export default check({
  id: 'display-adapter-wrong',
  area: 'slots',
  grade: 'stop',
  what: 'An adapter or hub fits the output and the display, and makes the one signal of the other.',
  why:
    'An adapter from DisplayPort to HDMI does not work the other way round, and one without a chip makes nothing ' +
    'that the output does not speak: the display stays dark.',
  source: 'VESA DisplayPort Dual-Mode Standard 1.1; HDMI Specification; common practice',
  remarks: ['What an adapter carries is judged with the mode, by `display-mode-beyond-link`.'],
  examples: [
    {
      faulty: `
parts:
  graphics: { outputs: { HDMI_1: { link: HDMI 2.0 } } }
  displays: [{ port: HDMI_1, through: adapter, inputs: { DP: { link: DisplayPort HBR2 } } }]
#                                     ^^^^^^^
  cables: [{ name: adapter, connector: display, display-adapter: { from: HDMI, to: DisplayPort, active: false } }]
`,
      instead: 'Use an active adapter made for that way, or an output of the display’s own connector.',
    },
  ],
  test(build, report) {
    for (const display of build.parts.displays) {
      const { through } = display.at;
      if (through.value === undefined || isChained(build, display)) continue;
      const adapter = adapterOf(build, display);
      if (adapter) judge(build, display, adapter, report);
      else
        report(
          outcome(at(display, through), lacking(throughMissing(build, display), through), { broken: () => sentence`` }),
        );
    }
  },
});

function judge(build: Build, display: Display, adapter: Adapter, report: Reporter): void {
  const { from, to, outputs } = adapter.part['display-adapter'];
  const place = at(display, display.at.through);
  const fixes = () => [swap(adapter)];
  const output = outputNamed(build, display.at.port);
  report(
    outcome(aspectOf(place, 'output'), given(fitsOutput(output, adapter), display.at.port, from), {
      broken: () =>
        sentence`${adapter.label} plugs into ${from}; ${display.at.port} is
          ${'missingFacts' in output ? '' : linkWords(output.name, output.link)}.`,
      fixes,
    }),
  );
  report(
    outcome(aspectOf(place, 'display'), given(fitsDisplay(display, adapter), to), {
      broken: () => sentence`${adapter.label} offers ${to}; ${display.label} takes ${inputLinks(display)}.`,
      fixes,
    }),
  );
  report(
    outcome(aspectOf(place, 'signal'), makesSignal(adapter), {
      broken: () => sentence`${adapter.label} makes no ${to} of ${from} without a chip of its own.`,
      fixes,
    }),
  );
  if (!outputs.entry) return;
  const on = build.parts.displays.filter((one) => one.at.through.value === display.at.through.value);
  if (on[0] !== display) return;
  report(
    outcome(
      aspectOf(place, 'hub'),
      atMost(number(on.length, 'displays on it'), counted(outputs, `displays that ${adapter.label} feeds`)),
      {
        broken: () => sentence`${number(on.length, 'displays on it')} displays hang on ${adapter.label}, which feeds
          ${outputs}.`,
        fixes,
      },
    ),
  );
}

function fitsOutput(output: ReturnType<typeof outputNamed>, { part, label }: Adapter): Truth {
  const { from } = part['display-adapter'];
  if ('missingFacts' in output) return lacking(output.missingFacts);
  if (from.value === undefined) return lacking([missing(from, `what ${label} plugs into`)]);
  if (output.connector === undefined) return lacking([missing(output.link, `link of ${output.name}`)]);
  return sure(reaches(output.connector, from.value.toLowerCase()), output.link);
}

function fitsDisplay(display: Display, { part, label }: Adapter): Truth {
  const { to } = part['display-adapter'];
  const { connectors, missingFacts } = connectorsOf(display);
  if (to.value === undefined) return lacking([missing(to, `what ${label} offers`)]);
  const meets = [...connectors].some((one) => reaches(to.value!.toLowerCase(), one));
  return meets || missingFacts.length === 0 ? sure(meets, display.part.inputs) : lacking(missingFacts);
}

function makesSignal({ part, label }: Adapter): Truth {
  const { from, to, active } = part['display-adapter'];
  if (from.value === undefined || to.value === undefined)
    return lacking(
      [from, to].filter((one) => one.value === undefined).map((one) => missing(one, `${one.key} of ${label}`)),
    );
  if (active.value === true || worksPassive(from.value, to.value)) return sure(true, active, from, to);
  return active.value === undefined
    ? lacking([missing(active, `whether a chip is in ${label}`)], from, to)
    : sure(false, active, from, to);
}
