// Promised display modes against what the output's link carries.
import type { Build } from '../../build/build';
import { copyWith, least, missing, unknown, type Figure } from '../../figures/figure';
import {
  comfortable,
  compressed,
  displaysOn,
  inputPayload,
  needed,
  outputNamed,
  outputs,
  payload,
  type Output,
  type PromisedMode,
} from '../../figures/display';
import { memoOf } from '../../figures/memo';
import { sentence } from '../../figures/sentence';
import { all, any, atLeast, atMost, fits, given, lacking, type Truth } from '../../figures/truth';
import { bitsPerPixel, highestRefreshHz, MARGINAL_SHARE, type DisplayMode } from '../../trade/display';
import { check } from '../check';
import { atKey, change, outcome, type FixIdea, type Outcome } from '../kit';
import { putIn } from './promise-kit';

export default check({
  id: 'display-mode-beyond-link',
  area: 'slots',
  grade: 'shortfall',
  what: 'The link of each display’s output carries the mode promised on it, with one part in a hundred to spare.',
  why:
    'A mode beyond the link is not offered, or falls back in depth or rate; one at its very edge works with ' +
    'some cables and not with others.',
  source: 'VESA Coordinated Video Timings Standard 1.2; VESA DisplayPort Standard; HDMI Specification',
  limits: ['Within one part in a hundred of the payload it is a note that says marginal.'],
  examples: [
    {
      faulty: `
parts:
  graphics: { outputs: { DP_1: { link: DisplayPort HBR2 } } }
expect:
  displays:
    - { mode: 3840x2160 @ 120 Hz, depth: 8 bit, port: DP_1 }
#             ^^^^^^^^^^^^^^^^^^
`,
      mended: `
parts:
  graphics: { outputs: { DP_1: { link: DisplayPort HBR2 } } }
expect:
  displays:
    - { mode: 3840x2160 @ 75 Hz, depth: 8 bit, port: DP_1 }
`,
    },
  ],
  test(build, report) {
    for (const promise of build.file.expect.displays.value ?? []) {
      if (promise.mode.value) report(judge(build, promise, promise.mode.value));
    }
  },
});

/** What a promised mode needs, and what its output carries. */
const sidesOf = memoOf((build: Build, promise: PromisedMode) => {
  const output = outputNamed(build, promise.port);
  return {
    output,
    plain: promise.mode.value && needed(promise.mode.value, promise),
    carried: carriedBy(build, output),
  };
});

function judge(build: Build, promise: PromisedMode, mode: DisplayMode): Outcome {
  const place = atKey(build, promise.mode);
  const { output, plain, carried } = sidesOf(build, promise);
  if (!plain)
    return outcome(place, lacking([missing(promise.mode, 'a timing of this mode')]), { broken: () => sentence`` });
  const which = [promise.port, ...outputs(build).decidedBy];
  if ('missingFacts' in output)
    return outcome(place, given(lacking(output.missingFacts), ...which), { broken: () => sentence`` });
  const squeezed = promise.compression.value === true;
  const wanted = squeezed ? compressed(plain) : plain;
  // Where the link is not known, the blanking is not what decides.
  const ok = atMost(
    carried.missing.length > 0 && promise.depth.value !== undefined ? copyWith(plain, { missing: [] }) : plain,
    comfortable(carried),
  );
  const truth = squeezed ? any(ok, all(...canCompress(build, output), atMost(wanted, comfortable(carried)))) : ok;
  const marginal = atLeast(plain, beyond(carried)).is !== true;
  const ends = displaysOn(build, output.name);
  return outcome(place, given(truth, ...which, ...ends.map(({ at }) => at.port)), {
    ...(marginal ? { grade: 'note' as const } : {}),
    broken: () => {
      const how =
        squeezed && canCompress(build, output).every((one) => one.is === true) ? 'compressed' : 'uncompressed';
      const figure = how === 'compressed' ? wanted : plain;
      const plugged = ends.map(({ label }) => ` with ${label}`).join('');
      return sentence`${promise.mode} at ${promise.depth} needs ${figure} ${how}; ${promise.port}${plugged} carries
        ${carried}${marginal ? ': marginal' : ''}.`;
    },
    fixes: () => fixes(build, promise, mode, carried),
  });
}

/** What goes through an output: its own payload, and the input’s of a display that is plugged into it. */
function carriedBy(build: Build, output: ReturnType<typeof outputNamed>): Figure {
  if ('missingFacts' in output) return unknown('data-rate', 'payload of the output', output.missingFacts);
  const own = payload(output.link, output.name);
  const inputs = displaysOn(build, output.name).map((display) => inputPayload(display, output));
  return inputs.length === 0
    ? own
    : least(`payload between ${output.name} and its display`, [own, ...inputs], { unit: 'Gb/s' });
}

/** The least that is past the margin on the far side. */
const beyond = (carried: Figure): Figure =>
  copyWith(carried, { lo: carried.lo * (1 + MARGINAL_SHARE), hi: carried.hi * (1 + MARGINAL_SHARE) });

/** Whether both ends compress. */
function canCompress(build: Build, output: Output): readonly Truth[] {
  const ends = displaysOn(build, output.name).map((display) =>
    fits(display.part.compression, `compression of ${display.label}`, (can) => can),
  );
  return [fits(output.compression, `compression of ${output.on.label}`, (can) => can), ...ends];
}

function* fixes(
  build: Build,
  promise: PromisedMode,
  mode: DisplayMode,
  carried: Figure,
): Iterable<FixIdea | undefined> {
  for (const other of outputs(build).list)
    if (other.name !== promise.port.value) yield change(promise.port, other.name, `Use the output ${other.name}`);
  if (promise.compression.value !== true)
    yield putIn(build, promise, 'compression', true, 'Accept a compressed picture');
  const depth = promise.depth.value as number | undefined;
  if (depth === undefined) return;
  if (depth > 8) yield change(promise.depth, '8 bit', 'Lower the depth to 8 bit');
  const picture = { ...mode, bits: bitsPerPixel(depth), blanking: promise.blanking.value ?? ('CVT-RB1' as const) };
  const hertz = carried.lo > 0 ? highestRefreshHz(picture, (carried.lo * 8) / 1e9) : undefined;
  if (hertz !== undefined && hertz < mode.refreshHz)
    yield change(promise.mode, `${mode.widthPx}x${mode.heightPx} @ ${hertz} Hz`, `Lower the rate to ${hertz} Hz`);
}
