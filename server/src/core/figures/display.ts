// Figures of displays: the outputs of a build, their connectors, and which display finds one.
import type { Build, Placed } from '../build/build';
import type { Fact } from '../parts/fact';
import { plainLinkName } from '../trade/display';
import { missing, type Missing } from './figure';
import { memo } from './memo';
import { sentence, type Sentence } from './sentence';
import { any, sure, type Truth } from './truth';

/** One output of a card, or of the board: what it is called and what it drives. */
export interface Output {
  readonly name: string;
  readonly link: Fact<string>;
  /** Its kind of connector. */
  readonly connector: string | undefined;
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
      list.push(outputOf(name, output.link, on.part.compression, on));
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
  for (const [name, output] of own.value ?? []) list.push(outputOf(name, output.link, output.compression, board));
  if (own.value === undefined) missingFacts.push(missing(own, `display outputs of ${board.label}`));
  return { list, decidedBy, missingFacts };
});

const outputOf = (
  name: string,
  link: Output['link'],
  compression: Output['compression'],
  on: Output['on'],
): Output => ({
  name,
  link,
  connector: connectorOf(name, link.value),
  compression,
  on,
});

/** Whether some graphics card drives a display: one that is said to have no output, as for sums alone, drives none. */
export const drivenByCard = ({ parts: { graphics } }: Build): Truth =>
  any(
    sure(false),
    ...graphics.map(({ part: { outputs: own } }) => sure(own.value === undefined || own.value.size > 0, own)),
  );

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

/** The kinds of connector that a display takes, and what would tell of more. */
export function connectorsOf({ part: { inputs }, label }: Display): {
  readonly connectors: ReadonlySet<string>;
  readonly missingFacts: readonly Missing[];
} {
  if (!inputs.value) return { connectors: new Set(), missingFacts: [missing(inputs, `inputs of ${label}`)] };
  const each = [...inputs.value].map(([name, { link }]) => ({ name, link, connector: connectorOf(name, link.value) }));
  return {
    connectors: new Set(each.flatMap(({ connector }) => connector ?? [])),
    missingFacts: each.flatMap(({ name, link, connector }) =>
      connector === undefined ? [missing(link, `link of ${name} of ${label}`)] : [],
    ),
  };
}

/** The links that a display takes, as a list in a sentence. */
export function inputLinks(display: Display): Sentence {
  const links = [...(display.part.inputs.value ?? [])].map(([name, { link }]) => linkWords(name, link));
  return links
    .slice(1)
    .reduce((said, link) => sentence`${said} or ${link}`, links[0] ?? sentence`no link that is stated`);
}

/** A link with the connector that it goes through, where the link alone would not tell. */
export const linkWords = (name: string, link: Fact<string>): Sentence =>
  connectorOf(name, link.value) === usbC && link.value !== undefined && !usbCWords.test(link.value)
    ? sentence`${link} through USB-C`
    : sentence`${link}`;

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
    ...free.flatMap(({ connector, link, name }) => (connector === undefined ? [missing(link, `link of ${name}`)] : [])),
  ];
  const waiting = build.parts.displays.filter(
    (one) => one.at.port.value === undefined && one.at.through.value === undefined,
  );
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
/** Whether a display takes what plainly comes out of an output. */
export const takes = (display: Display, { connector }: Output): boolean =>
  connector !== undefined && [...connectorsOf(display).connectors].some((one) => reaches(connector, one));

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

const usbC = 'usb-c';
const usbCWords = /^(?:usb ?-?(?:type ?-?)?c|usb ?4|type ?-?c|thunderbolt|tb ?[345]?)(?![a-z])/i;

/**
 * The kind of connector of an output or an input: USB-C where its name or its link says so, else the first word of its
 * link. Undefined where nothing tells.
 */
export function connectorOf(name: string, link: string | undefined): string | undefined {
  if (usbCWords.test(name) || (link !== undefined && usbCWords.test(link))) return usbC;
  return link === undefined ? undefined : plainLinkName(link).split(' ')[0];
}

/** Whether a plain cable leads from the one connector to the other; USB-C sends DisplayPort, and takes none of it. */
export const reaches = (from: string, to: string): boolean => from === to || (from === usbC && to === 'displayport');
