// Which parts of a build are of one name, stand in one place or carry one firmware; and a part file that said
// otherwise.
import type { Build, Placed } from '../core/build/build';
import { inspect } from '../core/build/inspect';
import { referentsOf } from '../core/build/references';
import { placeKinds } from '../core/figures/places';
import { put, type TextFix } from '../core/checks/kit';
import { roles } from '../core/manifest/places';
import { Doc } from '../core/parts/doc';
import type { Field, Referent } from '../core/parts/field';
import { applyEdits } from '../core/text';
import { parse, removeEntry, type MapNode, type Node, type Value } from '../core/yaml';

/** What is asked for; all that is given must hold of a part. */
export interface Asked {
  /** The name of its part file. */
  readonly part?: string;
  /** A slot, port, header, bay or other place that it stands in. */
  readonly at?: string;
  /** Firmware that it arrives with, or is brought to. */
  readonly firmware?: string;
  /** Either of both. */
  readonly word?: string;
}

export interface Use {
  readonly placed: Placed;
  readonly places: readonly string[];
  readonly firmware: readonly string[];
}

/** The parts of a build that are asked for, in its order. */
export function usesIn(build: Build, { part, at, firmware, word }: Asked): readonly Use[] {
  return build
    .all()
    .map((placed) => ({ placed, places: placesOf(placed), firmware: firmwareOf(build, placed) }))
    .filter(
      (use) =>
        (part === undefined || use.placed.used?.name === part) &&
        (at === undefined || use.places.includes(at)) &&
        (firmware === undefined || use.firmware.includes(firmware)) &&
        (word === undefined || use.places.includes(word) || use.firmware.includes(word)),
    );
}

const places: ReadonlySet<Referent> = new Set(placeKinds);

const namesPlace = (field: Field): boolean =>
  field.type === 'list' ? namesPlace(field.of as Field) : referentsOf(field).some((one) => places.has(one));

/** The keys of all roles that name such a place: `slot`, `pump-header`, `slots`. */
const placeKeys: readonly string[] = [
  ...new Set(
    Object.values(roles).flatMap(({ fields }) =>
      Object.entries<Field>(fields).flatMap(([key, field]) => (namesPlace(field) ? [key] : [])),
    ),
  ),
];

/** A place as the build writes it, by itself or in a list. */
interface Written {
  readonly text?: string;
  readonly value?: unknown;
}

function placesOf({ at }: Placed): readonly string[] {
  const keys = at as unknown as Readonly<Record<string, Written | undefined>>;
  return placeKeys.flatMap((key) => {
    const { value, text = '' } = keys[key] ?? {};
    const each: readonly Written[] = Array.isArray(value) ? (value as readonly Written[]) : [{ text }];
    return each.flatMap((one) => (one.text ? [one.text] : []));
  });
}

function firmwareOf({ file }: Build, { role, at }: Placed): readonly string[] {
  const own = (at as { readonly firmware?: Written }).firmware?.text;
  const to = role === 'board' ? file.bench['firmware-update'].to.text : undefined;
  return [own, to].flatMap((version) => (version ? [version] : []));
}

/** One line that a part file is taken to say: keys from the top, and the value; nothing where it says nothing. */
export interface Said {
  readonly keys: readonly string[];
  readonly value: Value;
  readonly text: string;
}

/** Reads `KEY: VALUE`, the keys of maps inside each other joined by dots. Undefined where it is none. */
export function readSaid(text: string): Said | undefined {
  const { root, problems } = parse(text);
  const [entry] = root?.type === 'map' && root.entries.length === 1 && problems.length === 0 ? root.entries : [];
  const keys = entry?.key.split('.') ?? [];
  const value = entry && writtenIn(entry.value);
  return value === undefined || keys.includes('') ? undefined : { keys, value, text: text.trim() };
}

function writtenIn(node: Node): Value | undefined {
  if (node.type === 'scalar') return node.style === 'empty' ? null : node.text;
  if (node.type === 'list') return listed(node.items.map(writtenIn));
  const values = listed(node.entries.map(({ value }) => writtenIn(value)));
  return values && Object.fromEntries(node.entries.map(({ key }, i) => [key, values[i]!]));
}

const listed = (values: readonly (Value | undefined)[]): Value[] | undefined =>
  values.every((value) => value !== undefined) ? [...values] : undefined;

/** The part file with what it is taken to say; or why that cannot be. */
export function saying(doc: Doc, all: readonly Said[]): Doc | string {
  let changed = doc;
  for (const said of all) {
    const edits = said.value === null ? takenOut(changed, said.keys) : put(changed, said.keys, said.value, '')?.edits;
    if (!edits) return `${said.text} cannot be put in there.`;
    changed = new Doc(doc.name, doc.kind, applyEdits(changed.text, edits));
  }
  const before = new Set(inspect(doc).problems.map(({ message }) => message));
  return inspect(changed).problems.find(({ message }) => !before.has(message))?.message ?? changed;
}

function takenOut({ parsed }: Doc, keys: readonly string[]): TextFix['edits'] | undefined {
  let map: MapNode | undefined = parsed.root?.type === 'map' ? parsed.root : undefined;
  for (const key of keys.slice(0, -1)) {
    const value: Node | undefined = map?.get(key)?.value;
    map = value?.type === 'map' ? value : undefined;
  }
  return map ? removeEntry(parsed, map, keys.at(-1)!) : [];
}
