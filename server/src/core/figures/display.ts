// Figures of displays: the outputs of a build, what a promised mode needs, and what a link carries.
import type { Build, Placed } from '../build/build';
import type { Fact, Group } from '../parts/fact';
import type { expect } from '../manifest/build-file';
import { bitsPerPixel, MARGINAL_SHARE, parseDisplayLink, requiredGbps, type DisplayMode } from '../trade/display';
import { cvtTiming, type Blanking } from '../trade/timing';
import { between, derive, known, missing, unknown, type Figure, type Missing } from './figure';
import { memo } from './memo';
import { writtenAt } from './slots';

export type Promise = Group<(typeof expect)['fields']['displays']['of']['fields']>;
/** One output of a card, or of the board: what it is called and what it drives. */
export interface Output { readonly name: string; readonly link: Fact<string>; readonly on: Placed<'graphics'> | Placed<'board'> }
export interface Outputs { readonly list: readonly Output[]; readonly lacks: readonly Missing[] }

const bytesPerGbit = 1e9 / 8;
const timingSource = 'VESA Coordinated Video Timings Standard 1.2';
const linkSource = 'VESA DisplayPort Standard; HDMI Specification: line rate × coding';
/** Stream compression is stated as two to three times; from memory. */
const [leastCompression, mostCompression] = [2, 3];

/**
 * The outputs of a build: those of its cards, and the board’s where the processor has graphics or nothing denies it.
 * `lacks` names what would tell of more.
 */
export const outputs = memo((build: Build): Outputs => {
  const { graphics, board, processor } = build.parts;
  const list: Output[] = [];
  const lacks: Missing[] = [];
  for (const on of graphics) {
    for (const [name, output] of on.part.outputs.value ?? []) list.push({ name, link: output.link, on });
    if (on.part.outputs.value === undefined) lacks.push(missing(on.part.outputs, `outputs of ${on.label}`));
  }
  if (!board || processor?.part.graphics.value === false) return { list, lacks };
  const own = board.part['display-outputs'];
  for (const [name, output] of own.value ?? []) list.push({ name, link: output.link, on: board });
  if (own.value === undefined) lacks.push(missing(own, `display outputs of ${board.label}`));
  if (processor && processor.part.graphics.value === undefined) lacks.push(missing(processor.part.graphics, `graphics of ${processor.label}`));
  return { list, lacks };
});

/** The kind of plug behind a link’s name: its first word. */
export const plugOf = (link: string): string => link.trim().split(/\s+/)[0]!.toLowerCase();

/** What an output or input carries of pixels, in bytes a second; unknown for a name that does not say its rate. */
export function payload(link: Fact<string>, label: string): Figure {
  const read = link.value === undefined ? undefined : parseDisplayLink(link.value);
  if (!read) return unknown('data-rate', label, [missing(link, link.value === undefined ? `link of ${label}` : `rate of ${link.text} at ${label}`)]);
  return { ...known(read.payloadGbps * bytesPerGbit, 'data-rate', `payload of ${label}`, { unit: 'Gb/s', source: linkSource }), ...writtenAt(link) };
}

/** What is left of a payload when a link is not to be marginal. */
export function comfortable(of: Figure): Figure {
  const share = known(1 - MARGINAL_SHARE, 'count', 'share that is not marginal', { source: 'common practice' });
  return derive(`${of.label} less the margin`, 'data-rate', [of, share], 'payload × share', (rate, part) => rate! * part!, { unit: 'Gb/s' });
}

/** The clock in hertz that a mode needs; where the blanking is not stated, between reduced blanking of the second and the first version. */
export function pixelClock(mode: DisplayMode, promise: Promise): Figure {
  const hertz = (blanking: Blanking): number => cvtTiming(mode.widthPx, mode.heightPx, mode.refreshHz, blanking).pixelClockMHz * 1e6;
  const stated = promise.blanking.value;
  const look = { unit: 'MHz', source: timingSource } as const;
  if (stated) return { ...known(hertz(stated), 'frequency', 'pixel clock', look), ...writtenAt(promise.mode) };
  const open = between(hertz('CVT-RB2'), hertz('CVT-RB1'), 'frequency', 'pixel clock', look);
  return { ...open, missing: [missing(promise.blanking, 'blanking of the mode')] };
}

/** What a mode needs of a link, in bytes a second; undefined where the mode has no such timing. */
export function needed(mode: DisplayMode, promise: Promise): Figure | undefined {
  if (mode.widthPx < 8 || mode.heightPx < 8 || mode.refreshHz > 1000) return undefined;
  const depth = promise.depth.value as number | undefined;
  const bits = depth === undefined
    ? { ...between(bitsPerPixel(6), bitsPerPixel(16), 'count', 'bits a pixel', { source: 'VESA DisplayPort Standard' }), missing: [missing(promise.depth, 'depth of the mode')] }
    : { ...known(bitsPerPixel(depth), 'count', 'bits a pixel', { source: 'VESA DisplayPort Standard: three components a pixel' }), ...writtenAt(promise.depth) };
  return derive('payload needed', 'data-rate', [pixelClock(mode, promise), bits], 'clock × bits a pixel',
    (hertz, n) => requiredGbps(hertz! / 1e6, n!) * bytesPerGbit, { unit: 'Gb/s' });
}

/** The same with the picture compressed on the link. */
export function compressed(plain: Figure): Figure {
  const ratio = between(leastCompression, mostCompression, 'count', 'compression', { source: 'from memory: stream compression is stated as two to three times' });
  return derive('payload needed, compressed', 'data-rate', [plain, ratio], 'payload ÷ compression', (rate, by) => rate! / by!, { unit: 'Gb/s' });
}
