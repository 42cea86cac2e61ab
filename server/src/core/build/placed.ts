// A part where it stands in a build: its own keys there, and its facts from build and part file together.
import { limits } from '../parts/limits';
import { roleNames, roles, type Role, type RoleName, type Roles } from '../manifest/places';
import type { Doc } from '../parts/doc';
import type { Group } from '../parts/fact';
import { readGroup, type Source } from '../parts/facts';
import type { Table } from '../parts/field';
import { isKind, kinds, type Kind, type Kinds } from '../parts/kinds';
import type { Span } from '../text';
import type { Entry, MapNode, Node, ScalarNode } from '../yaml';

/** Looks up a part by name. `undefined`: there is no such file. */
export type FindPart = (name: string) => Doc | undefined;

/** A part where it stands in the build. */
export interface Placed<R extends RoleName = RoleName> {
  readonly role: R;
  readonly kind: Roles[R]['kind'];
  /** Position in a role that holds several. */
  readonly index: number;
  /** `parts.board`, `parts.drives.scratch`, `parts.drives[1]`. */
  readonly path: string;
  /** As it is called in a sentence: its own name, the part’s name, or the role. */
  readonly label: string;
  /** Its own keys: where it goes, how many, how it is set. */
  readonly at: Group<Roles[R]['fields']>;
  /** The part’s facts: what the build spells out, before what the part file says. */
  readonly part: Group<Kinds[Roles[R]['kind']]>;
  readonly doc: Doc;
  readonly map?: MapNode;
  /** The key (single roles) or the whole item (roles that hold several): where a finding about it stands. */
  readonly span: Span;
  readonly used?: { readonly name: string; readonly file?: Doc; readonly span: Span };
}

export type Parts = {
  readonly [R in RoleName]: Roles[R]['several'] extends true ? readonly Placed<R>[] : Placed<R> | undefined;
};

/** The parts of a role as a list, whether it holds several or one. */
export function partsAs(role: RoleName, parts: Parts): readonly Placed[] {
  const held: Placed | readonly Placed[] | undefined = parts[role];
  if (held === undefined) return [];
  return isSeveral(held) ? held : [held];
}

const isSeveral = (held: Placed | readonly Placed[]): held is readonly Placed[] => Array.isArray(held);

/** Reads the parts of one build file. */
export class PartReader {
  constructor(
    private readonly doc: Doc,
    private readonly look: FindPart,
  ) {}

  readParts(node: Node | undefined): Parts {
    const map = node?.type === 'map' ? node : undefined;
    return partsFrom((role) => this.readRole(role, map?.get(role)));
  }

  private readRole(role: RoleName, entry: Entry | undefined): readonly Placed[] {
    if (!entry) return [];
    const { value, keySpan } = entry;
    if (!roles[role].several) return [this.place(role, 0, value.type === 'map' ? value : undefined, keySpan)];
    const nodes = value.type === 'list' ? value.items.slice(0, limits.partsOfRole) : [value];
    return nodes.flatMap((node, i) => (node.type === 'map' ? [this.place(role, i, node, node.span)] : []));
  }

  /** `instead`: another part than the build names there, or none. */
  place(
    role: RoleName,
    index: number,
    map: MapNode | undefined,
    span: Span,
    instead?: { readonly name: string | undefined },
  ): Placed {
    const { kind, several, fields } = roles[role] as Role;
    const useEntry = map?.get('use');
    const written = useEntry?.value.type === 'scalar' && useEntry.value.text !== '' ? useEntry.value.text : undefined;
    const name = instead ? instead.name : written;
    const ownName = scalarText(map, 'name');
    const path = several ? (ownName ? `parts.${role}.${ownName}` : `parts.${role}[${index}]`) : `parts.${role}`;
    const file = name === undefined ? undefined : this.look(name);
    const own = source(this.doc, map, path, span);
    const used = name === undefined ? undefined : { name, span: useEntry?.value.span ?? span, file };
    return {
      role,
      kind,
      index,
      path,
      label: ownName ?? labelOf(role, name, map),
      doc: this.doc,
      span,
      map,
      used,
      at: (map
        ? this.doc.kept(map, () => readGroup(fields, role, [own]))
        : readGroup(fields, role, [own])) as unknown as Placed['at'],
      part: (file
        ? readGroup<Table>(kinds[kind as Kind], role, [own, partSource(file)], partFacts(file, kind as Kind))
        : readGroup(kinds[kind as Kind], role, [own])) as unknown as Placed['part'],
    };
  }
}

/** Parts by role, from the list of each. */
export function partsFrom(listOf: (role: RoleName) => readonly Placed[]): Parts {
  const held = roleNames.map((role) => {
    const list = listOf(role);
    return [role, roles[role].several ? list : list[0]];
  });
  return Object.fromEntries(held) as unknown as Parts;
}

/** A part with one of its own keys said otherwise, or not at all, as if the build had said so where the part stands. */
export function moved(placed: Placed, key: string, text: string | undefined): Placed {
  const { doc, map, path, span, role } = placed;
  const at = map?.get(key)?.value.span ?? span;
  const instead = withEntry(map, key, at, text);
  const fields: Table = roles[role].fields;
  return { ...placed, at: readGroup(fields, role, [source(doc, instead, path, span)]) as unknown as Placed['at'] };
}

/** The map with an entry that is not written there, or without one; no edit may take it for one that is. */
function withEntry(map: MapNode | undefined, key: string, span: Span, text: string | undefined): MapNode {
  const value: ScalarNode | undefined =
    text === undefined ? undefined : { type: 'scalar', text, style: 'plain', span, fixable: false };
  const entry: Entry | undefined = value && { key, keySpan: span, value, span, fixable: false };
  return {
    type: 'map',
    style: 'flow',
    span: map?.span ?? span,
    fixable: false,
    entries: [...(map?.entries.filter((one) => one.key !== key) ?? []), ...(entry ? [entry] : [])],
    get: (other) => (other === key ? entry : map?.get(other)),
  };
}

/** The keys of a file’s root, as facts are read from them. */
export function rootSource(doc: Doc): Source {
  const root = doc.parsed.root;
  return source(doc, root?.type === 'map' ? root : undefined, '', { start: 0, end: doc.text.length });
}

function source(doc: Doc, map: MapNode | undefined, path: string, span: Span): Source {
  return { doc, path, span, ...(map ? { map } : {}) };
}

function partSource(file: Doc): Source {
  return file.kept(partSource, () => {
    const root = file.parsed.root;
    return source(file, root?.type === 'map' ? root : undefined, '', { start: 0, end: 0 });
  });
}

/** What a part file states by itself; it belongs to the file, and every build that uses the file shares it. */
export function partFacts(file: Doc, kind: Kind): Group<Table> {
  const table: Table = kinds[kind];
  return file.kept(table, () => readGroup(table, kind, [partSource(file)]));
}

function scalarText(map: MapNode | undefined, key: string): string | undefined {
  const value = map?.get(key)?.value;
  return value?.type === 'scalar' && value.text !== '' ? value.text : undefined;
}

function labelOf(role: RoleName, name: string | undefined, map: MapNode | undefined): string {
  return name ?? scalarText(map, 'model') ?? roles[role].kind;
}

/** The kind that a part file says it is; undefined when it does not say, or says no kind we know. */
export function kindOfPart(doc: Doc): Kind | undefined {
  const word = doc.topText('kind')?.text;
  return word !== undefined && isKind(word) ? word : undefined;
}
