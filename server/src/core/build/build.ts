// A build: its file, the part files it uses, and both read together.
import type { Doc } from '../parts/doc';
import type { Fact, Group } from '../parts/fact';
import { readGroup, type Source } from '../parts/facts';
import type { Table } from '../parts/field';
import { isKind, kinds, type Kind, type Kinds } from '../parts/kinds';
import { buildFile } from '../manifest/build-file';
import { roleNames, roles, type Role, type RoleName, type Roles } from '../manifest/places';
import type { Entry, MapNode, Node } from '../yaml';
import type { Span } from '../text';
import type { WorkspaceConfig } from './workspace-config';

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

const everyRole = 2 ** roleNames.length - 1;

/** What was computed, and the roles that it was read from. */
export interface CacheEntry {
  readonly value: unknown;
  readonly mask: number;
}

export class Build {
  readonly parts: Parts;
  readonly file: Group<typeof buildFile>;
  /** Every name under which a part file was asked for: the build changes when one of these does. */
  readonly dependsOn = new Set<string>();
  /** Figures computed so far, by the function that computes them; see `figures/memo`. */
  readonly memo = new Map<unknown, CacheEntry>();
  /** The same of one thing in the build: a slot, a part where it stands. */
  readonly memoOf = new Map<unknown, Map<unknown, CacheEntry>>();
  /** The roles read since tracking began; see `figures/memo`. */
  readonly reads: { mask: number } = { mask: 0 };
  private allParts?: readonly Placed[];

  constructor(
    readonly doc: Doc,
    readonly find: FindPart,
    readonly house: WorkspaceConfig,
    readonly today: string,
  ) {
    const root = doc.parsed.root;
    const map = root?.type === 'map' ? root : undefined;
    this.file = keptBy(doc, buildFile, () =>
      readGroup(buildFile, '', [source(doc, map, '', { start: 0, end: doc.text.length })]),
    );
    this.parts = this.readParts(map?.get('parts')?.value);
  }

  /** The same build with another part at one place: nothing is read again but that part. */
  withPart(place: Placed, name: string): Build {
    return this.withPlaced(new Map([[place, this.place(place.role, place.index, place.map, place.span, name)]]));
  }

  /** The same build with some parts in other places: each gets `value` as its own `key`. */
  withPlaces(moves: readonly { readonly placed: Placed; readonly key: string; readonly value: string }[]): Build {
    return this.withPlaced(new Map(moves.map(({ placed, key, value }) => [placed, moved(placed, key, value)])));
  }

  private withPlaced(instead: ReadonlyMap<Placed, Placed>): Build {
    const changed = maskOf([...instead.keys()].map(({ role }) => role));
    const parts = roleNames.map((role, bit) => {
      const held = this.peek(role);
      if ((changed & (1 << bit)) === 0) return held;
      return Array.isArray(held)
        ? (held as Placed[]).map((one) => instead.get(one) ?? one)
        : (instead.get(held as Placed) ?? held);
    });
    const reads = { mask: 0 };
    return Object.assign(Object.create(Build.prototype) as Build, {
      doc: this.doc,
      find: this.find,
      house: this.house,
      today: this.today,
      file: this.file,
      dependsOn: this.dependsOn,
      memo: keptApart(this.memo, changed),
      memoOf: new Map([...this.memoOf].map(([work, kept]) => [work, keptApart(kept, changed)])),
      reads,
      parts: tracked(reads, parts),
    });
  }

  /** A role’s parts without marking them as read. */
  peek(role: RoleName): Placed | readonly Placed[] | undefined {
    return (this.parts as unknown as TrackedParts).$held[roleNames.indexOf(role)] as
      | Placed
      | readonly Placed[]
      | undefined;
  }

  /** All parts in the order of the roles. */
  all(): readonly Placed[] {
    this.reads.mask = everyRole;
    return (this.allParts ??= this.of(...roleNames));
  }

  /** The parts of some roles, role by role; only these are marked as read. */
  of(...names: readonly RoleName[]): readonly Placed[] {
    return names.flatMap((role) => {
      const held = this.parts[role] as Placed | readonly Placed[] | undefined;
      return held === undefined ? [] : Array.isArray(held) ? (held as Placed[]) : [held as Placed];
    });
  }

  private readParts(node: Node | undefined): Parts {
    const map = node?.type === 'map' ? node : undefined;
    return tracked(
      this.reads,
      roleNames.map((role) => {
        const entry = map?.get(role);
        return roles[role].several ? this.readSeveral(role, entry) : this.readOne(role, entry);
      }),
    );
  }

  private readOne(role: RoleName, entry: Entry | undefined): Placed | undefined {
    if (!entry) return undefined;
    return this.place(role, 0, entry.value.type === 'map' ? entry.value : undefined, entry.keySpan);
  }

  private readSeveral(role: RoleName, entry: Entry | undefined): Placed[] {
    if (!entry) return [];
    const nodes = entry.value.type === 'list' ? entry.value.items : [entry.value];
    return nodes.flatMap((node, i) => (node.type === 'map' ? [this.place(role, i, node, node.span)] : []));
  }

  private place(role: RoleName, index: number, map: MapNode | undefined, span: Span, instead?: string): Placed {
    const { kind, several, fields } = roles[role] as Role;
    const useEntry = map?.get('use');
    const written = useEntry?.value.type === 'scalar' && useEntry.value.text !== '' ? useEntry.value.text : undefined;
    const name = instead ?? written;
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
        ? keptBy(this.doc, map, () => readGroup(fields, role, [own]))
        : readGroup(fields, role, [own])) as unknown as Placed['at'],
      part: (file
        ? readGroup<Table>(kinds[kind as Kind], role, [own, partSource(file)], partFacts(file, kind as Kind))
        : readGroup(kinds[kind as Kind], role, [own])) as unknown as Placed['part'],
    };
  }

  private look(name: string): Doc | undefined {
    this.dependsOn.add(name);
    return this.find(name);
  }
}

/** Roles as bits, as `reads` counts them. */
export function maskOf(names: Iterable<RoleName>): number {
  let mask = 0;
  for (const name of names) mask |= 1 << roleNames.indexOf(name);
  return mask;
}

/** What was not read from the roles of `changed` stands whatever changes in them. */
function keptApart(memo: ReadonlyMap<unknown, CacheEntry>, changed: number): Map<unknown, CacheEntry> {
  const apart = new Map<unknown, CacheEntry>();
  for (const [key, kept] of memo) if ((kept.mask & changed) === 0) apart.set(key, kept);
  return apart;
}

/** A part with one of its own keys said otherwise, as if the build had said so where the part stands. */
function moved(placed: Placed, key: string, value: string): Placed {
  const was = (placed.at as unknown as Record<string, Fact<string>>)[key]!;
  const node: Node = {
    type: 'scalar',
    text: value,
    style: 'plain',
    span: was.node?.span ?? placed.span,
    fixable: false,
  };
  const fact: Fact<string> = { ...was, value, text: value, doc: placed.doc, node };
  return { ...placed, at: Object.create(placed.at, { [key]: { value: fact, enumerable: true } }) as Placed['at'] };
}

/**
 * The parts by role, in the order of the roles; reading a role marks it, so that a check’s dependence on its parts is
 * known.
 */
class TrackedParts {
  constructor(
    readonly $reads: { mask: number },
    readonly $held: readonly unknown[],
  ) {}
}

roleNames.forEach((role, bit) => {
  Object.defineProperty(TrackedParts.prototype, role, {
    get(this: TrackedParts) {
      this.$reads.mask |= 1 << bit;
      return this.$held[bit];
    },
  });
});

const tracked = (reads: { mask: number }, held: readonly unknown[]): Parts =>
  new TrackedParts(reads, held) as unknown as Parts;

function source(doc: Doc, map: MapNode | undefined, path: string, span: Span): Source {
  return { doc, path, span, ...(map ? { map } : {}) };
}

/** What was read from a document belongs to it: every build over the same text shares it. */
function keptBy<T>(doc: Doc, key: unknown, read: () => T): T {
  let kept = doc.memo.get(key) as T | undefined;
  if (kept === undefined) doc.memo.set(key, (kept = read()));
  return kept;
}

function partSource(file: Doc): Source {
  return keptBy(file, partSource, () => {
    const root = file.parsed.root;
    return source(file, root?.type === 'map' ? root : undefined, '', { start: 0, end: 0 });
  });
}

/** What a part file states by itself; it belongs to the file, and every build that uses the file shares it. */
function partFacts(file: Doc, kind: Kind): Group<Table> {
  const table: Table = kinds[kind];
  return keptBy(file, table, () => readGroup(table, kind, [partSource(file)]));
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
  const root = doc.parsed.root;
  const word = scalarText(root?.type === 'map' ? root : undefined, 'kind');
  return word !== undefined && isKind(word) ? word : undefined;
}
