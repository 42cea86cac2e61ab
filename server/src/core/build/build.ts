// A build: its file, the part files it uses, and both read together; and the views of it that note what is read.
import { buildFile } from '../manifest/build-file';
import { roleNames, type RoleName } from '../manifest/places';
import type { AsBuilt } from '../manifest/as-built';
import type { Doc } from '../parts/doc';
import { readGroup } from '../parts/facts';
import { moved, PartReader, partsAs, partsFrom, rootSource, type FindPart, type Parts, type Placed } from './placed';
import {
  everything,
  FileView,
  haveCommon,
  PartsView,
  rolesOf,
  type AreaName,
  type BuildFile,
  type Reads,
  type RoleSet,
} from './reads';
import type { WorkspaceConfig } from './workspace-config';

export type { FindPart, Parts, Placed };

/** What was computed, and the roles that it was read from. */
export interface CacheEntry {
  readonly value: unknown;
  readonly roles: RoleSet;
}

/** What a build holds, whoever looks at it. */
interface Content {
  readonly parts: Parts;
  readonly dependsOn: Set<string>;
  readonly memo: Map<unknown, CacheEntry>;
  readonly memoOf: Map<unknown, Map<unknown, CacheEntry>>;
}

export class Build {
  readonly file: BuildFile;
  readonly parts: Parts;

  /** `content`: of a build that is read already. `reads`: notes what is looked at through this view of it. */
  constructor(
    readonly doc: Doc,
    readonly find: FindPart,
    readonly house: WorkspaceConfig,
    readonly today: string,
    /** What the finished machine says of itself; undefined while nobody has asked it. */
    readonly machine?: AsBuilt,
    private readonly content: Content = readContent(doc, find),
    readonly reads?: Reads,
  ) {
    const file = doc.kept(buildFile, () => readGroup(buildFile, '', [rootSource(doc)]));
    this.file = reads ? new FileView(file, reads) : file;
    this.parts = reads ? new PartsView(content.parts, reads) : content.parts;
  }

  /** The file’s text, for whoever goes through all of it. */
  get whole(): Doc {
    this.reads?.add(everything);
    return this.doc;
  }

  /** Every name under which a part file was asked for: the build changes when one of these does. */
  get dependsOn(): ReadonlySet<string> {
    return this.content.dependsOn;
  }

  /** Figures computed so far, by the function that computes them; see `figures/memo`. */
  get memo(): Map<unknown, CacheEntry> {
    return this.content.memo;
  }

  /** The same of one thing in the build: a slot, a part where it stands. */
  get memoOf(): Map<unknown, Map<unknown, CacheEntry>> {
    return this.content.memoOf;
  }

  /** The same build, as one figure or one check sees it: the roles that are looked at are noted in `reads`. */
  viewedBy(reads: Reads): Build {
    return new Build(this.doc, this.find, this.house, this.today, this.machine, this.content, reads);
  }

  /** The same build with another part at one place, or with none: nothing is read again but that part. */
  withPart(place: Placed, name: string | undefined): Build {
    const reader = readerOf(this.doc, this.find, this.content.dependsOn);
    return this.withPlaced(new Map([[place, reader.place(place.role, place.index, place.map, place.span, { name })]]));
  }

  /** What stands where a part of another state of the build stands; undefined where that place is gone. */
  inPlaceOf({ role, index }: Placed): Placed | undefined {
    return this.of(role).find((one) => one.index === index);
  }

  /** The same build with some parts in other places: each gets `value` as its own `key`, or has no such key. */
  withPlaces(
    moves: readonly { readonly placed: Placed; readonly key: string; readonly value: string | undefined }[],
  ): Build {
    return this.withPlaced(new Map(moves.map(({ placed, key, value }) => [placed, moved(placed, key, value)])));
  }

  private withPlaced(instead: ReadonlyMap<Placed, Placed>): Build {
    const { parts, dependsOn } = this.content;
    const changed = rolesOf([...instead.keys()].map(({ role }) => role));
    return new Build(this.doc, this.find, this.house, this.today, this.machine, {
      parts: partsFrom((role) => partsAs(role, parts).map((one) => instead.get(one) ?? one)),
      dependsOn,
      ...figuresApart(this.content, changed),
    });
  }

  /** The build of another text that differs in these areas alone; only they are read again. */
  withText(doc: Doc, names: readonly AreaName[]): Build {
    return this.readAgain(doc, names, this.find);
  }

  /** The same build with another text of one part file; only the roles of that part are read again. */
  withPartFile(file: Doc, instead: Doc): Build {
    const names = roleNames.filter((role) => partsAs(role, this.content.parts).some(({ used }) => used?.file === file));
    return this.readAgain(this.doc, names, (name) => {
      const found = this.find(name);
      return found === file ? instead : found;
    });
  }

  private readAgain(doc: Doc, names: readonly AreaName[], find: FindPart): Build {
    const { parts } = this.content;
    const anew = readContent(doc, find);
    return new Build(doc, find, this.house, this.today, this.machine, {
      parts: partsFrom((role) => partsAs(role, names.includes(role) ? anew.parts : parts)),
      dependsOn: anew.dependsOn,
      ...figuresApart(this.content, rolesOf(names)),
    });
  }

  /** The same build, held against a machine. */
  heldAgainst(machine: AsBuilt | undefined): Build {
    return new Build(this.doc, this.find, this.house, this.today, machine);
  }

  /** All parts in the order of the roles. */
  all(): readonly Placed[] {
    return this.of(...roleNames);
  }

  /** The parts of some roles, role by role; only these are noted as read. */
  of(...names: readonly RoleName[]): readonly Placed[] {
    return names.flatMap((role) => partsAs(role, this.parts));
  }
}

function readContent(doc: Doc, find: FindPart): Content {
  const dependsOn = new Set<string>();
  return {
    parts: readerOf(doc, find, dependsOn).readParts(doc.topValue('parts')),
    dependsOn,
    memo: new Map(),
    memoOf: new Map(),
  };
}

const readerOf = (doc: Doc, find: FindPart, dependsOn: Set<string>): PartReader =>
  new PartReader(doc, (name) => {
    dependsOn.add(name);
    return find(name);
  });

/** The figures that stand whatever changes in these roles. */
const figuresApart = ({ memo, memoOf }: Content, changed: RoleSet): Pick<Content, 'memo' | 'memoOf'> => ({
  memo: keptApart(memo, changed),
  memoOf: new Map([...memoOf].map(([work, kept]) => [work, keptApart(kept, changed)])),
});

/** What was not read from the roles of `changed` stands whatever changes in them. */
function keptApart(memo: ReadonlyMap<unknown, CacheEntry>, changed: RoleSet): Map<unknown, CacheEntry> {
  const apart = new Map<unknown, CacheEntry>();
  for (const [key, kept] of memo) if (!haveCommon(kept.roles, changed)) apart.set(key, kept);
  return apart;
}
