// Promised display modes against what the output's link carries, and what the display shows.
import type { Build } from '../../build/build';
import { displaysOn, outputs, takes, type Display, type Output } from '../../figures/display';
import { sidesOf } from '../../figures/display-links';
import { comfortable, type PromisedMode } from '../../figures/display-rates';
import { copyWith, missing, type Figure } from '../../figures/figure';
import { sentence, type Sentence } from '../../figures/sentence';
import { all, any, atLeast, atMost, fits, given, lacking, type Truth } from '../../figures/truth';
import { bitsPerPixel, highestRefreshHz, MARGINAL_SHARE, type DisplayMode } from '../../trade/display';
import { clockBoundsMHz } from '../../trade/mode-clocks';
import { check } from '../check';
import { aspectOf, atKey, change, outcome, type FixIdea, type Outcome, type TextFix } from '../kit';
import { putIn } from './promise-kit';

export default check({
  id: 'display-mode-beyond-link',
  area: 'slots',
  grade: 'shortfall',
  what:
    'The link of each display’s output carries the mode promised on it, with one part in a hundred to spare, and ' +
    'the display plugged into it shows that mode.',
  why:
    'A mode beyond the link is not offered, or falls back in depth or rate; one at its very edge works with ' +
    'some cables and not with others.',
  source: 'VESA Coordinated Video Timings Standard 2.0; CTA-861; VESA DisplayPort Standard; HDMI Specification',
  limits: [
    'Without a stated blanking every timing counts that the mode may have.',
    'Only a display that lists its modes is held against the mode promised.',
    'What the cable between them is certified for is not seen.',
  ],
  remarks: ['Within one part in a hundred of the payload it is a note that says marginal.'],
  examples: [
    {
      faulty: `
parts:
  graphics: { outputs: { DP_1: { link: DisplayPort HBR2 } } }
expect:
  displays:
    - { mode: 3840x2160 @ 120 Hz, depth: 8 bit, port: DP_1, blanking: CVT-RB1 }
#             ^^^^^^^^^^^^^^^^^^
`,
      mended: `
parts:
  graphics: { outputs: { DP_1: { link: DisplayPort HBR2 } } }
expect:
  displays:
    - { mode: 3840x2160 @ 75 Hz, depth: 8 bit, port: DP_1, blanking: CVT-RB1 }
`,
    },
  ],
  test(build, report) {
    for (const promise of build.file.expect.displays.value ?? []) {
      const mode = promise.mode.value;
      if (!mode) continue;
      report(judge(build, promise, mode));
      for (const display of promise.port.value === undefined ? [] : displaysOn(build, promise.port.value))
        if (display.part.modes.value) report(shown(build, promise, mode, display));
    }
  },
});

function judge(build: Build, promise: PromisedMode, mode: DisplayMode): Outcome {
  const place = atKey(build, promise.mode);
  const { output, plain, carried, squeezed, carriedSqueezed } = sidesOf(build, promise);
  if (!plain)
    return outcome(place, lacking([missing(promise.mode, 'a timing of this mode')]), { broken: () => sentence`` });
  const which = [promise.port, ...outputs(build).decidedBy];
  if ('missingFacts' in output)
    return outcome(place, given(lacking(output.missingFacts), ...which), { broken: () => sentence`` });
  // Where the link is not known, the blanking is not what decides.
  const settled = (need: Figure, link: Figure): Figure =>
    link.missing.length > 0 && promise.depth.value !== undefined ? copyWith(need, { missing: [] }) : need;
  const ok = atMost(settled(plain, carried), comfortable(carried));
  const can = squeezed ? [...canCompress(build, output), fitsSqueezed(settled(squeezed, carriedSqueezed))] : [];
  const truth = squeezed ? any(ok, all(...can)) : ok;
  const isSqueezed = squeezed !== undefined && carriedSqueezed.hi > 0 && canCompress(build, output).every(isTrue);
  const [need, link] = isSqueezed ? [squeezed, carriedSqueezed] : [plain, carried];
  const marginal = atLeast(need, beyond(link)).is !== true;
  const ends = displaysOn(build, output.name);
  const asks = sentence`${promise.mode} at ${promise.depth} needs ${need}
    ${isSqueezed ? 'compressed' : 'uncompressed'}`;
  const through = ends.reduce((before, { label }) => sentence`${before} with ${label}`, sentence`${promise.port}`);
  return outcome(place, given(truth, ...which, ...ends.map(({ at }) => at.port)), {
    ...(marginal && truth.is === false ? { grade: 'note' as const } : {}),
    broken: () => sentence`${asks}; ${through} carries ${link}${marginal ? ': marginal' : ''}.`,
    ...opening(asks, through, link),
    fixes: () => fixes(build, promise, mode, output, carried),
  });

  function fitsSqueezed(wanted: Figure): Truth {
    return atMost(wanted, comfortable(carriedSqueezed));
  }
}

const isTrue = (one: Truth): boolean => one.is === true;

/** Where a link’s name leaves its rate open: what the mode takes, and what the name allows. */
function opening(asks: Sentence, through: Sentence, link: Figure): Pick<Outcome, 'open'> {
  if (link.missing.length > 0 || link.lo === link.hi) return {};
  return { open: () => sentence`${asks}; ${through} carries ${link}, by what the names of the links allow.` };
}

/** Whether the display shows a mode: one that it lists is as large and as fast. */
function shown(build: Build, promise: PromisedMode, mode: DisplayMode, display: Display): Outcome {
  const { modes } = display.part;
  const has = (one: DisplayMode): boolean =>
    one.widthPx >= mode.widthPx && one.heightPx >= mode.heightPx && one.refreshHz >= mode.refreshHz;
  const listed = modes.value!.flatMap(({ value }) => value ?? []);
  const truth =
    listed.length < modes.value!.length && !listed.some(has)
      ? lacking([missing(modes, `modes of ${display.label}`)])
      : fits(modes, `modes of ${display.label}`, () => listed.some(has));
  return outcome(
    aspectOf(atKey(build, promise.mode), `shown by ${display.label}`),
    given(truth, promise.mode, promise.port, display.at.port),
    {
      broken: () =>
        sentence`${promise.mode} is promised on ${promise.port}; ${display.label} shows ${listOf(display)}.`,
      *fixes() {
        const same = modes.value!.filter(
          ({ value }) => value?.widthPx === mode.widthPx && value.heightPx === mode.heightPx,
        );
        const best = same.toSorted((a, b) => b.value!.refreshHz - a.value!.refreshHz)[0];
        if (best?.text) yield change(promise.mode, best.text, `Promise ${best.text}`);
      },
    },
  );
}

function listOf({ part: { modes } }: Display): Sentence {
  const [first, ...others] = modes.value ?? [];
  return others.reduce((said, one) => sentence`${said} or ${one}`, first ? sentence`${first}` : sentence`no mode`);
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
  output: Output,
  carried: Figure,
): Iterable<FixIdea | undefined> {
  yield* otherOutputs(build, promise, output);
  if (promise.compression.value !== true)
    yield putIn(build, promise, 'compression', true, 'Accept a compressed picture');
  const depth = promise.depth.value as number | undefined;
  if (depth === undefined) return;
  if (depth > 8) yield change(promise.depth, '8 bit', 'Lower the depth to 8 bit');
  const clock = (refreshHz: number): number | undefined =>
    clockBoundsMHz({ ...mode, refreshHz }, promise.blanking.value)?.[1];
  const bits = bitsPerPixel(depth, promise.sampling.value, output.connector === 'hdmi');
  const hertz = carried.lo > 0 ? highestRefreshHz(clock, bits, (carried.lo * 8) / 1e9) : undefined;
  if (hertz !== undefined && hertz < mode.refreshHz)
    yield change(promise.mode, `${mode.widthPx}x${mode.heightPx} @ ${hertz} Hz`, `Lower the rate to ${hertz} Hz`);
}

/** Outputs that nobody is plugged into, for the promise and for what is plugged in, which must take them. */
function* otherOutputs(build: Build, promise: PromisedMode, output: Output): Iterable<TextFix | undefined> {
  const plugged = displaysOn(build, output.name);
  for (const other of outputs(build).list) {
    if (other.name === output.name || displaysOn(build, other.name).length > 0) continue;
    if (!plugged.every((display) => takes(display, other))) continue;
    const title = plugged.length > 0 ? `Plug the display into ${other.name}` : `Use the output ${other.name}`;
    const moves = [promise.port, ...plugged.map((display) => display.at.port)].map((at) =>
      change(at, other.name, title),
    );
    const sound = moves.every((one): one is TextFix => one?.doc === build.doc);
    if (sound) yield { ...moves[0]!, edits: moves.flatMap((one) => one.edits) };
  }
}
