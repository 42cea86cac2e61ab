// What a machine says of each of its parts that a part file can hold, and the part files drafted of it.
import type { AsBuilt, BuiltDevice, BuiltDisplay, BuiltDrive, BuiltModule } from '../manifest/as-built';
import type { Fact } from '../parts/fact';
import type { Kind } from '../parts/kinds';
import { bareProcessor, isGraphicsClass } from '../trade/reported';
import { printFlow, type Value } from '../yaml';
import { capacityNamed, driveShape, readSmart } from './smart';

/** One fact of a part file, with the output’s line that says it. */
interface Own {
  readonly key: string;
  readonly value: Value;
  readonly from: string;
}

/** A part as a machine tells of it: its facts stand in its part file, or where the part is spelled out in a build. */
export interface ToldPart {
  readonly kind: Kind;
  /** The name that a build uses; undefined where what is told gives none. */
  readonly name: string | undefined;
  readonly facts: readonly Own[];
  /** The names by which a machine reports it. */
  readonly identifiers: readonly string[];
}

export interface PartDraft {
  readonly name: string;
  readonly kind: Kind;
  readonly text: string;
}

/** Part files of what is plain: two parts of one name that say different things are none. */
export function partDrafts(machine: AsBuilt, today: string): readonly PartDraft[] {
  const named = new Map<string, { part: ToldPart; said: Set<string> }>();
  for (const part of toldParts(machine)) {
    if (part.name === undefined) continue;
    const before = named.get(part.name) ?? { part, said: new Set() };
    before.said.add(JSON.stringify([part.kind, spelled(part)]));
    named.set(part.name, before);
  }
  return [...named].flatMap(([name, { part, said }]) =>
    said.size > 1 ? [] : [{ name, kind: part.kind, text: partText(part, today) }],
  );
}

const toldParts = (machine: AsBuilt): readonly ToldPart[] => [
  boardPart(machine),
  processorPart(machine),
  ...(machine.memory.value ?? []).map(modulePart),
  ...(machine.drives.value ?? []).filter(isFixed).map(drivePart),
  ...(machine.devices.value ?? []).filter((device) => isCard(machine, device)).map(cardPart),
  ...(machine.displays.value ?? []).map(displayPart),
];

function partText(part: ToldPart, today: string): string {
  const lines = part.facts.map(({ key, value, from }) => `${key}: ${printFlow(value)} # ${from}`);
  const text = [
    '# Drafted from what a machine said of itself: complete it from the maker’s sheet.',
    `kind: ${part.kind}`,
    ...lines,
    ...(part.identifiers.length > 0 ? [`identified-by: ${printFlow(part.identifiers)}`] : []),
    `source: { title: What the machine said of itself, read: ${today} }`,
  ];
  return `${text.join('\n')}\n`;
}

/** The facts as they stand where a part is spelled out. */
export const spelled = ({ facts, identifiers }: ToldPart): { readonly [key: string]: Value } => ({
  ...Object.fromEntries(facts.map(({ key, value }) => [key, value])),
  ...(identifiers.length > 0 ? { 'identified-by': identifiers } : {}),
});

export const lineOf = ({ doc, node }: Fact<unknown>): string =>
  `${doc.name}:${doc.lines.positionAt(node?.span.start ?? 0).line + 1}`;

const own = (key: string, fact: Fact<unknown>, value: Value = fact.text): readonly Own[] =>
  fact.value === undefined ? [] : [{ key, value, from: lineOf(fact) }];

/** The maker’s own name in front of the model is left out: it stands in its own field. */
function modelFacts(maker: Fact<string>, reports: Fact<string>, text = reports.value): readonly Own[] {
  const before = `${maker.value ?? ''} `;
  const isNamed = text?.toLowerCase().startsWith(before.toLowerCase());
  return [...own('maker', maker), ...own('model', reports, isNamed ? text?.slice(before.length) : text)];
}

const identifiersOf = (...facts: readonly Fact<string>[]): readonly string[] =>
  facts.flatMap(({ value }) => value ?? []);

const step = (text: string): string =>
  text
    .replace(/[®™©]|\((?:r|tm|c)\)/gi, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');

/** `norrvik/b7-forge`; a maker in front of the model is named once. Undefined where either is not told. */
function partName(maker: string | undefined, model: string | undefined): string | undefined {
  const folder = step(maker ?? '');
  const whole = step(model ?? '');
  const file = whole.startsWith(`${folder}-`) ? whole.slice(folder.length + 1) : whole;
  return folder && file ? `${folder}/${file}` : undefined;
}

export const boardPart = ({ board: { maker, reports } }: AsBuilt): ToldPart => ({
  kind: 'board',
  name: partName(maker.value, reports.value),
  facts: modelFacts(maker, reports),
  identifiers: identifiersOf(reports),
});

export const processorPart = ({ processor: { maker, reports } }: AsBuilt): ToldPart => ({
  kind: 'processor',
  name: partName(maker.value, reports.value && bareProcessor(reports.value)),
  facts: modelFacts(maker, reports, reports.value && bareProcessor(reports.value)),
  identifiers: identifiersOf(reports),
});

export const modulePart = ({ maker, reports, capacity, standard }: BuiltModule): ToldPart => ({
  kind: 'memory',
  name: partName(maker.value, reports.value),
  facts: [...modelFacts(maker, reports), ...own('capacity', capacity), ...own('standard-speed', standard)],
  identifiers: identifiersOf(reports),
});

/** A drive on USB may be what the machine was read from. */
export const isFixed = ({ bus }: BuiltDrive): boolean => bus.value !== 'USB';

/** As its maker counts it, where it is told to the byte. */
const namedCapacity = ({ value, text }: BuiltDrive['capacity']): string =>
  value && value.lo === value.hi ? capacityNamed(value.lo) : text;

/** Few drives tell their maker: the others’ files lie together. */
export function drivePart(drive: BuiltDrive): ToldPart {
  const { maker, reports, bus, capacity, able } = drive;
  const shape = readSmart(reports.doc.text)?.shape;
  const word = driveShape(shape?.value);
  return {
    kind: 'drive',
    name: partName(maker.value ?? 'unknown-maker', reports.value),
    facts: [
      ...modelFacts(maker, reports),
      ...own('bus', bus),
      // What both ends of a PCIe link can run may be less than the drive’s own.
      ...(able.value?.bus === 'SATA' ? own('link', able) : []),
      ...(word ? [{ key: 'shape', value: word, from: `${reports.doc.name}:${shape?.line ?? 1}` }] : []),
      ...own('capacity', capacity, namedCapacity(capacity)),
    ],
    identifiers: identifiersOf(reports),
  };
}

export const isGraphics = ({ class: code }: BuiltDevice): boolean => isGraphicsClass(code.value ?? '');

/**
 * Graphics behind a port, and what sits in a slot of the board by its name: anything else may be the board’s own, as
 * the graphics of a management controller are, which have no link where cards have one.
 */
export const isCard = ({ devices }: AsBuilt, device: BuiltDevice): boolean => {
  if (!isGraphics(device)) return device.at.value !== undefined;
  const showsLinks = devices.value?.some(({ link }) => link.value !== undefined);
  return device.port.value !== undefined && (device.link.value !== undefined || !showsLinks);
};

/** A card says no model, and is named by its numbers. */
export const cardPart = (device: BuiltDevice): ToldPart => ({
  kind: isGraphics(device) ? 'graphics' : 'card',
  name: device.id.value && partName(device.maker.value, device.id.value),
  facts: modelFacts(device.maker, device.reports),
  identifiers: identifiersOf(device.id),
});

/** A display’s maker stands in three letters: they name a folder, and no maker. */
export const displayPart = ({ reports, id, modes }: BuiltDisplay): ToldPart => ({
  kind: 'display',
  name: partName(/^[A-Z]{3}(?=[0-9A-F]{4}$)/.exec(id.value ?? '')?.[0], reports.value),
  facts: [
    ...own('model', reports),
    ...(modes.value?.length
      ? [{ key: 'modes', value: modes.value.map(({ text }) => text), from: lineOf(modes.value[0]!) }]
      : []),
  ],
  identifiers: identifiersOf(id),
});
