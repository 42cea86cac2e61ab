// Figures of displays: the outputs of a build, what a promised mode needs, and what a link carries.
import type { Build, Placed } from '../build/build';
import type { Fact, Group } from '../parts/fact';
import type { expect } from '../manifest/build-file';
import {
  bitsPerPixel,
  MARGINAL_SHARE,
  linkBounds,
  plainLinkName,
  requiredGbps,
  type DisplayMode,
} from '../trade/display';
import { cvtTiming, type Blanking } from '../trade/timing';
import { uniqueMissing } from './missing-facts';
import { copyWith, between, derive, known, missing, unknown, writtenAt, type Figure, type Missing } from './figure';
import { memo } from './memo';
import { sentence, type Sentence } from './sentence';

export type PromisedMode = Group<(typeof expect)['fields']['displays']['of']['fields']>;
/** One output of a card, or of the board: what it is called and what it drives. */
export interface Output {
  readonly name: string;
  readonly link: Fact<string>;
  readonly compression: Fact<boolean>;
  readonly on: Placed<'graphics'> | Placed<'board'>;
}
export type Display = Placed<'displays'>;
export interface Outputs {
  readonly list: readonly Output[];
  /** What decides which outputs those are: the lists, and for the board's the processor's graphics. */
  readonly decidedBy: readonly Fact<unknown>[];
  readonly missingFacts: readonly Missing[];
}

const bytesPerGbit = 1e9 / 8;
const timingSource = 'VESA Coordinated Video Timings Standard 1.2';
const linkSource = 'VESA DisplayPort Standard; HDMI Specification: line rate × coding';
/** Stream compression is stated as two to three times; from memory. */
const [leastCompression, mostCompression] = [2, 3];

/**
 * The outputs of a build: those of its cards, and the board’s where the processor has graphics, or no processor is
 * there to deny it. `missingFacts` names what would tell of more.
 */
export const outputs = memo((build: Build): Outputs => {
  const { graphics, board, processor } = build.parts;
  const list: Output[] = [];
  const lists: Fact<unknown>[] = graphics.map(({ part }) => part.outputs);
  const missingFacts: Missing[] = [];
  for (const on of graphics) {
    for (const [name, output] of on.part.outputs.value ?? [])
      list.push({ name, link: output.link, compression: on.part.compression, on });
    if (on.part.outputs.value === undefined) missingFacts.push(missing(on.part.outputs, `outputs of ${on.label}`));
  }
  if (!board) return { list, decidedBy: lists, missingFacts };
  const own = board.part['display-outputs'];
  const decidedBy = [...lists, own, ...(processor ? [processor.part.graphics] : [])];
  if (processor?.part.graphics.value === false) return { list, decidedBy, missingFacts };
  if (processor && processor.part.graphics.value === undefined)
    return {
      list,
      decidedBy,
      missingFacts: [...missingFacts, missing(processor.part.graphics, `graphics of ${processor.label}`)],
    };
  for (const [name, output] of own.value ?? [])
    list.push({ name, link: output.link, compression: output.compression, on: board });
  if (own.value === undefined) missingFacts.push(missing(own, `display outputs of ${board.label}`));
  return { list, decidedBy, missingFacts };
});

/** The output of a name that a build gives; or what would tell of it. */
export function outputNamed(build: Build, port: Fact<string>): Output | { readonly missingFacts: readonly Missing[] } {
  if (port.value === undefined) return { missingFacts: [missing(port, 'output of the display')] };
  const { list, missingFacts } = outputs(build);
  const found = list.find((output) => output.name === port.value);
  if (found) return found;
  const board = build.parts.board?.part['display-outputs'];
  const homes = [...build.parts.graphics.map((card) => card.part.outputs), ...(board ? [board] : [])];
  const absent = homes.map((home) => ({
    doc: home.doc,
    path: `${home.path}.${port.value}`,
    fact: home,
    what: `the output ${port.value}`,
  }));
  if (missingFacts.length > 0) return { missingFacts };
  return { missingFacts: absent.length > 0 ? absent : [missing(port, `the output ${port.value}`)] };
}

/** The displays that a build plugs into an output. */
export const displaysOn = (build: Build, output: string): readonly Display[] =>
  build.parts.displays.filter((display) => display.at.port.value === output);

/** What a display takes from an output: the payload of its inputs with that connector; of several, one of them. */
export function inputPayload(display: Display, output: Output): Figure {
  const { inputs } = display.part;
  const label = `payload that ${display.label} takes`;
  if (!inputs.value) return unknown('data-rate', label, [missing(inputs, `inputs of ${display.label}`)]);
  const fitting = [...inputs.value].filter(
    ([, { link }]) => link.value === undefined || connectorOf(link.value) === connectorOf(output.link.value ?? ''),
  );
  const each = fitting.map(([name, { link }]) => payload(link, `${name} of ${display.label}`));
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

/** The kinds of connector that a display takes, and what would tell of more. */
export function connectorsOf({ part: { inputs }, label }: Display): {
  readonly connectors: ReadonlySet<string>;
  readonly missingFacts: readonly Missing[];
} {
  if (!inputs.value) return { connectors: new Set(), missingFacts: [missing(inputs, `inputs of ${label}`)] };
  const links = [...inputs.value].map(([name, { link }]) => ({ name, link }));
  return {
    connectors: new Set(links.flatMap(({ link }) => (link.value === undefined ? [] : [connectorOf(link.value)]))),
    missingFacts: links.flatMap(({ name, link }) =>
      link.value === undefined ? [missing(link, `link of ${name} of ${label}`)] : [],
    ),
  };
}

/** The links that a display takes, as a list in a sentence. */
export function inputLinks(display: Display): Sentence {
  const links = [...(display.part.inputs.value?.values() ?? [])].map(({ link }) => link);
  return links
    .slice(1)
    .reduce(
      (said, link) => sentence`${said} or ${link}`,
      links[0] ? sentence`${links[0]}` : sentence`no link that is stated`,
    );
}

interface Matching {
  readonly served: ReadonlySet<Display>;
  readonly missingFacts: readonly Missing[];
}

/** Displays that name no output, each with one of its own among the outputs nobody names, as many as can be served. */
const matching = memo((build: Build): Matching => {
  const { list, missingFacts } = outputs(build);
  const named = new Set(build.parts.displays.map((display) => display.at.port.value));
  const free = list.filter((output) => !named.has(output.name));
  const open = [
    ...missingFacts,
    ...free.flatMap(({ link, name }) => (link.value === undefined ? [missing(link, `link of ${name}`)] : [])),
  ];
  const waiting = build.parts.displays.filter((one) => one.at.port.value === undefined);
  const vague = waiting.flatMap((display) => connectorsOf(display).missingFacts);
  const all = waiting.reduce((sum, display) => sum + wantedBy(display, free), 0);
  const holder = new Map<Output, Display>();
  const served = new Set<Display>();
  for (const display of waiting) {
    let got = 0;
    while (got < wantedBy(display, free) && seat(display, free, holder, new Set())) got++;
    // While some display may take any output, one is sure of its own only where there is one for everybody.
    if (
      got === wantedBy(display, free) &&
      (vague.length === 0 || free.filter((output) => takes(display, output)).length >= all)
    )
      served.add(display);
  }
  return { served, missingFacts: [...vague, ...open] };
});

const wantedBy = (display: Display, free: readonly Output[]): number =>
  Math.min(display.at.count.value ?? 1, free.length + 1);
const takes = (display: Display, { link }: Output): boolean =>
  link.value !== undefined && connectorsOf(display).connectors.has(connectorOf(link.value));

/** Gives a display an output, moving others to another of theirs where that makes room. */
function seat(display: Display, free: readonly Output[], holder: Map<Output, Display>, tried: Set<Output>): boolean {
  for (const output of free) {
    if (tried.has(output) || !takes(display, output)) continue;
    tried.add(output);
    const other = holder.get(output);
    if (other && !seat(other, free, holder, tried)) continue;
    holder.set(output, display);
    return true;
  }
  return false;
}

/** True when an output is left for a display that names none; else what would tell of one, empty where none is left. */
export function freeOutputFor(build: Build, display: Display): true | readonly Missing[] {
  const { served, missingFacts } = matching(build);
  return served.has(display) || missingFacts;
}

/** The kind of connector behind a link’s name: its first word. */
export const connectorOf = (link: string): string => plainLinkName(link).split(' ')[0]!;

/** What an output or input carries of pixels, in bytes a second; unknown for a name that does not say its rate. */
export function payload(link: Fact<string>, label: string): Figure {
  const read = link.value === undefined ? undefined : linkBounds(link.value);
  if (!read)
    return unknown('data-rate', label, [
      missing(link, link.value === undefined ? `link of ${label}` : `rate of ${link.text} at ${label}`),
    ]);
  return copyWith(
    between(read.lowGbps * bytesPerGbit, read.highGbps * bytesPerGbit, 'data-rate', `payload of ${label}`, {
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

/**
 * The clock in hertz that a mode needs; where the blanking is not stated, between reduced blanking of the second and
 * the first version.
 */
export function pixelClock(mode: DisplayMode, promise: PromisedMode): Figure {
  const hertz = (blanking: Blanking): number =>
    cvtTiming(mode.widthPx, mode.heightPx, mode.refreshHz, blanking).pixelClockMHz * 1e6;
  const stated = promise.blanking.value;
  const look = { unit: 'MHz', source: timingSource } as const;
  if (stated)
    return copyWith(known(hertz(stated), 'frequency', 'pixel clock', look), { from: writtenAt(promise.mode) });
  const open = between(hertz('CVT-RB2'), hertz('CVT-RB1'), 'frequency', 'pixel clock', look);
  return copyWith(open, { missing: [missing(promise.blanking, 'blanking of the mode')] });
}

/** What a mode needs of a link, in bytes a second; undefined where the mode has no such timing. */
export function needed(mode: DisplayMode, promise: PromisedMode): Figure | undefined {
  if (mode.widthPx < 8 || mode.heightPx < 8 || mode.refreshHz > 1000) return undefined;
  const depth = promise.depth.value as number | undefined;
  const bits =
    depth === undefined
      ? copyWith(
          between(bitsPerPixel(6), bitsPerPixel(16), 'count', 'bits a pixel', {
            source: 'VESA DisplayPort Standard',
          }),
          { missing: [missing(promise.depth, 'depth of the mode')] },
        )
      : copyWith(
          known(bitsPerPixel(depth), 'count', 'bits a pixel', {
            source: 'VESA DisplayPort Standard: three components a pixel',
          }),
          { from: writtenAt(promise.depth) },
        );
  return derive(
    'payload needed',
    'data-rate',
    [pixelClock(mode, promise), bits],
    'clock × bits a pixel',
    (hertz, n) => requiredGbps(hertz / 1e6, n) * bytesPerGbit,
    { unit: 'Gb/s' },
  );
}

/** The same with the picture compressed on the link. */
export function compressed(plain: Figure): Figure {
  const ratio = between(leastCompression, mostCompression, 'count', 'compression', {
    source: 'from memory: stream compression is stated as two to three times',
  });
  return derive(
    'payload needed, compressed',
    'data-rate',
    [plain, ratio],
    'payload ÷ compression',
    (rate, by) => rate / by,
    { unit: 'Gb/s' },
  );
}
