// Figures of display links: what a promised mode needs, and what outputs and inputs carry.
import type { Build, Placed } from '../build/build';
import type { Fact, Group } from '../parts/fact';
import type { expect } from '../manifest/build-file';
import {
  bitsPerPixel,
  COMPRESSED_BITS,
  compressedBounds,
  linkBounds,
  MARGINAL_SHARE,
  requiredGbps,
  type DisplayMode,
  type LinkBounds,
  type Sampling,
} from '../trade/display';
import { DUAL_MODE_CLOCK_MHZ, STREAMS_SHARE } from '../trade/display-connectors';
import { clockBoundsMHz } from '../trade/mode-clocks';
import { connectorOf, displaysOn, type outputNamed, reaches, type Display, type Output } from './display';
import { adapterOf } from './display-paths';
import { between, copyWith, decidedBy, derive, known, least, missing, unknown, writtenAt, type Figure } from './figure';
import { uniqueMissing } from './missing-facts';

export type PromisedMode = Group<(typeof expect)['fields']['displays']['of']['fields']>;
const bytesPerGbit = 1e9 / 8;
const timingSource = 'VESA Coordinated Video Timings Standard 2.0; CTA-861';
const linkSource = 'VESA DisplayPort Standard; HDMI Specification: line rate × coding';

export type Carries = (link: Fact<string>, label: string) => Figure;

/** What an output or input carries of pixels, in bytes a second; unknown for a name that does not say its rate. */
export const payload: Carries = (link, label) => carriedBy(link, `payload of ${label}`, label, linkBounds);

/** The same of a picture that is compressed. */
export const compressedPayload: Carries = (link, label) =>
  carriedBy(link, `payload of ${label}, compressed`, label, compressedBounds);

function carriedBy(
  link: Fact<string>,
  words: string,
  label: string,
  read: (text: string) => LinkBounds | undefined,
): Figure {
  const bounds = link.value === undefined ? undefined : read(link.value);
  if (!bounds)
    return unknown('data-rate', label, [
      missing(link, link.value === undefined ? `link of ${label}` : `rate of ${link.text} at ${label}`),
    ]);
  return copyWith(
    between(bounds.lowGbps * bytesPerGbit, bounds.highGbps * bytesPerGbit, 'data-rate', words, {
      unit: 'Gb/s',
      source: linkSource,
    }),
    { from: writtenAt(link) },
  );
}

/** What is left of a payload when a link is not to be marginal. */
export function comfortable(of: Figure): Figure {
  const share = known(1 - MARGINAL_SHARE, 'count', 'share that is not marginal', { source: 'common practice' });
  return derive(
    `${of.label} less the margin`,
    'data-rate',
    [of, share],
    'payload × share',
    (rate, part) => rate * part,
    { unit: 'Gb/s' },
  );
}

/** What an output carries of several pictures together, each in time slots of its own. */
export function streamsPayload(output: Output): Figure {
  const share = known(STREAMS_SHARE, 'count', 'share of time slots for pictures', {
    source: 'VESA DisplayPort Standard 1.2: 63 of 64',
  });
  return derive(
    `payload of ${output.name} for several pictures`,
    'data-rate',
    [payload(output.link, output.name), share],
    'payload × share',
    (rate, part) => rate * part,
    { unit: 'Gb/s' },
  );
}

/** The clock in hertz that a mode needs; where the blanking is not stated, of every timing that the mode may have. */
function pixelClock(mode: DisplayMode, promise: PromisedMode): Figure | undefined {
  const bounds = clockBoundsMHz(mode, promise.blanking.value);
  if (!bounds) return undefined;
  const clock = between(bounds[0] * 1e6, bounds[1] * 1e6, 'frequency', 'pixel clock', {
    unit: 'MHz',
    source: timingSource,
  });
  return promise.blanking.value
    ? copyWith(clock, { from: writtenAt(promise.mode) })
    : copyWith(clock, { missing: [missing(promise.blanking, 'blanking of the mode')] });
}

/** How the promised picture is sampled: in full, unless it says otherwise. */
const samplingOf = (promise: PromisedMode): Sampling => promise.sampling.value ?? '4:4:4';

function bitsOf(promise: PromisedMode, isHdmi: boolean): Figure {
  const bits = (depth: number): number => bitsPerPixel(depth, samplingOf(promise), isHdmi);
  const depth = promise.depth.value as number | undefined;
  const source = 'VESA DisplayPort Standard, HDMI Specification: pixel encodings';
  const own =
    depth === undefined
      ? copyWith(between(bits(6), bits(16), 'count', 'bits a pixel', { source }), {
          missing: [missing(promise.depth, 'depth of the mode')],
        })
      : copyWith(known(bits(depth), 'count', 'bits a pixel', { source }), { from: writtenAt(promise.depth) });
  return decidedBy(own, promise.sampling);
}

/** What a mode needs of a link, in bytes a second; undefined where the mode has no such timing. */
export function needed(mode: DisplayMode, promise: PromisedMode, isHdmi: boolean): Figure | undefined {
  return rateOf(mode, promise, 'payload needed', bitsOf(promise, isHdmi));
}

/** The same with the picture compressed on the link as far as the standard goes. */
export function compressed(mode: DisplayMode, promise: PromisedMode): Figure | undefined {
  const bits = known(COMPRESSED_BITS[samplingOf(promise)], 'count', 'bits a pixel, compressed', {
    source: 'Linux kernel, intel_dp.c: least compressed bits a pixel',
  });
  return rateOf(mode, promise, 'payload needed, compressed', decidedBy(bits, promise.sampling));
}

function rateOf(mode: DisplayMode, promise: PromisedMode, label: string, bits: Figure): Figure | undefined {
  const clock = pixelClock(mode, promise);
  return (
    clock &&
    derive(
      label,
      'data-rate',
      [clock, bits],
      'clock × bits a pixel',
      (hertz, n) => requiredGbps(hertz / 1e6, n) * bytesPerGbit,
      { unit: 'Gb/s' },
    )
  );
}

/** What a display takes from an output: the payload of its inputs with that connector; of several, one of them. */
function inputPayload(build: Build, display: Display, output: Output, carries: Carries): Figure {
  const { inputs } = display.part;
  const label = `payload that ${display.label} takes`;
  if (!inputs.value) return unknown('data-rate', label, [missing(inputs, `inputs of ${display.label}`)]);
  const from = adapterOf(build, display)?.part['display-adapter'].to.value?.toLowerCase() ?? output.connector;
  const fitting = [...inputs.value].filter(([name, { link }]) => {
    const connector = connectorOf(name, link.value);
    return connector === undefined || from === undefined || reaches(from, connector);
  });
  const each = fitting.map(([name, { link }]) => carries(link, `${name} of ${display.label}`));
  if (each.length < 2)
    return each[0] ?? unknown('data-rate', label, [missing(inputs, `an input of ${display.label} for ${output.name}`)]);
  return copyWith(
    between(Math.min(...each.map((one) => one.lo)), Math.max(...each.map((one) => one.hi)), 'data-rate', label, {
      unit: 'Gb/s',
      source: linkSource,
    }),
    { missing: uniqueMissing(each), inputs: each },
  );
}

/** What goes through an output: its own payload, and the input’s of each display that is plugged into it. */
export function carriedThrough(build: Build, output: ReturnType<typeof outputNamed>, carries: Carries): Figure {
  if ('missingFacts' in output) return unknown('data-rate', 'payload of the output', output.missingFacts);
  const own = carries(output.link, output.name);
  const plugged = displaysOn(build, output.name);
  const adapters = new Set(plugged.flatMap((display) => adapterOf(build, display) ?? []));
  const inputs = [
    ...plugged.map((display) => inputPayload(build, display, output, carries)),
    ...[...adapters].map((adapter) => adapterPayload(adapter, carries)),
  ];
  return inputs.length === 0
    ? own
    : least(`payload between ${output.name} and its display`, [own, ...inputs], { unit: 'Gb/s' });
}

/**
 * What an adapter carries: as stated; one without a chip from DisplayPort what the output speaks of the other signal;
 * else nobody knows.
 */
function adapterPayload({ part, label }: Placed<'cables'>, carries: Carries): Figure {
  const { from, to, active } = part['display-adapter'];
  if (part.link.entry) return carries(part.link, label);
  const words = `payload of ${label}`;
  if (from.value !== undefined && from.value === to.value)
    return between(0, Infinity, 'data-rate', words, { unit: 'Gb/s', source: 'the same signal on both sides' });
  if (active.value === false && from.value === 'DisplayPort' && to.value !== 'VGA')
    return decidedBy(
      between(
        requiredGbps(DUAL_MODE_CLOCK_MHZ.low, 24) * bytesPerGbit,
        requiredGbps(DUAL_MODE_CLOCK_MHZ.high, 24) * bytesPerGbit,
        'data-rate',
        words,
        { unit: 'Gb/s', source: 'VESA DisplayPort Dual-Mode Standard 1.1: 165 MHz, or 300 MHz of type 2' },
      ),
      active,
      from,
      to,
    );
  return unknown('data-rate', words, [missing(part.link, `link of ${label}`)]);
}
