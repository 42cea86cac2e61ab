// One editor's session: its open files, what they are judged to be, and which files each judgement rests on.
import { Build } from '../core/build/build';
import { WorkspaceConfig } from '../core/build/workspace-config';
import type { Judgement } from '../core/judge/finding';
import { judgeBuild, judgeFile } from '../core/judge/judge';
import { kindOfFile, type Doc } from '../core/parts/doc';
import { houseName, isTrouble, staysBelow, type AddressedHost, type Awaitable } from './hosts';
import { Texts, type FileRef } from './texts';

/**
 * UTF-16 units of text that may be held beside what open files rest on; what is read from it takes some ten times as
 * much.
 */
const heldText = 4_000_000;

/** A judged file, with what its judgement rests on. */
export interface AnalyzedFile {
  readonly uri: string;
  readonly version: number | null;
  readonly place: FileRef;
  readonly doc: Doc;
  readonly build?: Build;
  readonly judgement: Judgement;
  readonly house: WorkspaceConfig;
  /** Every path that was looked at, with what stood there. */
  readonly reads: ReadonlyMap<string, Doc | undefined>;
  /** Files that could not be read, by name, and why. */
  readonly troubles: readonly { readonly name: string; readonly trouble: string }[];
  readonly uriOf: (doc: Doc) => string;
  readonly versionOf: (doc: Doc) => number | null;
}

export interface SessionOptions {
  /** The host for an address; undefined where none can read it. */
  readonly hostFor: (uri: string) => AddressedHost | undefined;
  /** The day, as `2026-11-25`. */
  readonly today: () => string;
}

export class Session {
  readonly texts = new Texts();
  /** Addresses of files as their host makes them; findings name the same files again and again. */
  readonly uris = new WeakMap<Doc, string>();
  private readonly places = new Map<string, FileRef>();
  private readonly judged = new Map<string, AnalyzedFile>();
  private readonly plainHouse = new WorkspaceConfig();

  constructor(private readonly options: SessionOptions) {}

  open(uri: string, version: number, text: string): void {
    const path = this.pathOf(uri);
    if (path !== undefined) this.texts.open.set(path, { uri, version, text });
  }

  /** A closed file is what lies on disk again. */
  close(uri: string): void {
    const path = this.pathOf(uri);
    if (path === undefined) return;
    this.texts.open.delete(path);
    this.texts.forget(path);
    this.judged.delete(path);
    this.places.delete(path);
  }

  /** A file on disk came, went or changed; the roots of files, and where links cable, may be others now. */
  changedOnDisk(uri: string): void {
    const path = this.pathOf(uri);
    if (path !== undefined) this.texts.forget(path);
    this.places.clear();
  }

  /** Anything on disk may have changed. */
  changedAnywhere(): void {
    this.texts.forgetAll();
    this.places.clear();
  }

  isOpen(uri: string): boolean {
    const path = this.pathOf(uri);
    return path !== undefined && this.texts.open.has(path);
  }

  versionAt(uri: string): number | undefined {
    const path = this.pathOf(uri);
    return path === undefined ? undefined : this.texts.open.get(path)?.version;
  }

  /** The addresses of all open files of ours. */
  openUris(): string[] {
    return [...this.texts.open.values()].map(({ uri }) => uri).filter((uri) => kindOfFile(uri) !== undefined);
  }

  /** A path by which a file is known; an address that no host reads stands for itself. */
  pathOf(uri: string): string | undefined {
    return this.options.hostFor(uri)?.pathOf(uri);
  }

  /**
   * Judges a file as it stands now, with every file that it rests on. At once where the host reads at once;
   * what was judged before and still holds is not judged again. Undefined for a file that is none of ours or is not
   * there.
   */
  judge(uri: string): Awaitable<AnalyzedFile | undefined> {
    const place = this.placeOf(uri);
    return place instanceof Promise
      ? place.then((found) => found && this.judgeAt(found))
      : place && this.judgeAt(place);
  }

  private placeOf(uri: string): Awaitable<FileRef | undefined> {
    const host = this.options.hostFor(uri);
    const path = host?.pathOf(uri);
    if (!host || path === undefined || !kindOfFile(path)) return undefined;
    const known = this.places.get(path);
    if (known) return known;
    const found = locate(host, path);
    const keep = (place: FileRef): FileRef => {
      this.places.set(path, place);
      return place;
    };
    return found instanceof Promise ? found.then(keep) : keep(found);
  }

  private judgeAt(place: FileRef): Awaitable<AnalyzedFile | undefined> {
    const before = this.judged.get(place.path);
    if (before && before.place.root === place.root && this.holds(before)) return before;
    const attempt = new LoadPass(this, place);
    const result = attempt.judge(this.plainHouse, this.options.today());
    if (attempt.pending.length > 0) return Promise.all(attempt.pending).then(() => this.judgeAt(place));
    if (result && this.texts.open.has(place.path)) this.judged.set(place.path, result);
    return result;
  }

  /** Whether nothing has changed that a judgement rests on. */
  holds(judged: AnalyzedFile): boolean {
    const open = this.texts.open.get(judged.place.path);
    if (judged.version !== (open?.version ?? null) || (judged.build && judged.build.today !== this.options.today()))
      return false;
    for (const [path, doc] of judged.reads) if (!this.texts.isCurrent(path, doc)) return false;
    return true;
  }

  /** Forgets what was read for files that are not open, once that is much. */
  ease(): void {
    if (this.texts.held <= heldText) return;
    const kept = new Set([...this.judged.values()].flatMap(({ reads }) => [...reads.keys()]));
    this.texts.forgetBut(kept);
  }

  /** Open files whose last judgement rests on a file. */
  restingOn(uri: string): string[] {
    const path = this.pathOf(uri);
    if (path === undefined) return [];
    return [...this.judged.values()].filter((judged) => judged.reads.has(path)).map((judged) => judged.uri);
  }
}

/** One try at judging: what is not read yet is asked for, and the judging is tried again when it has come. */
class LoadPass {
  readonly pending: Promise<unknown>[] = [];
  private readonly reads = new Map<string, Doc | undefined>();
  private readonly troubles = new Map<string, string>();
  private readonly paths = new Map<Doc, string>();

  constructor(
    private readonly session: Session,
    private readonly place: FileRef,
  ) {}

  judge(plainHouse: WorkspaceConfig, today: string): AnalyzedFile | undefined {
    const doc = this.read(this.place.name);
    const houseDoc = this.place.name === houseName ? doc : this.read(houseName);
    if (!doc || this.pending.length > 0) return undefined;
    const house = houseOf(houseDoc, plainHouse);
    const build = doc.kind === 'build' ? new Build(doc, (name) => this.part(house, name), house, today) : undefined;
    if (this.pending.length > 0) return undefined;
    const judgement = build ? judgeBuild(build) : judgeFile(doc);
    return this.done(doc, build, judgement, house);
  }

  private done(doc: Doc, build: Build | undefined, judgement: Judgement, house: WorkspaceConfig): AnalyzedFile {
    const { texts, uris } = this.session;
    const { host, path } = this.place;
    const open = texts.open.get(path);
    const pathOf = (of: Doc): string => this.paths.get(of) ?? host.pathIn(this.place.root, of.name);
    const closedUri = (of: Doc): string => {
      let uri = uris.get(of);
      if (uri === undefined) uris.set(of, (uri = host.uriOf(pathOf(of))));
      return uri;
    };
    return {
      uri: open?.uri ?? host.uriOf(path),
      version: open?.version ?? null,
      place: this.place,
      doc,
      ...(build ? { build } : {}),
      judgement,
      house,
      reads: new Map(this.reads),
      troubles: [...this.troubles].map(([name, trouble]) => ({ name, trouble })),
      uriOf: (of) => texts.open.get(pathOf(of))?.uri ?? closedUri(of),
      versionOf: (of) => texts.open.get(pathOf(of))?.version ?? null,
    };
  }

  /** A part file by name, from the first of the house's folders that has it. */
  private part(house: WorkspaceConfig, name: string): Doc | undefined {
    if (!staysBelow(name)) return undefined;
    for (const folder of house.folders) {
      const doc = staysBelow(folder) ? this.read(`${folder}/${name}.part.yaml`) : undefined;
      if (doc) return doc;
    }
    return undefined;
  }

  private read(name: string): Doc | undefined {
    const { host, root } = this.place;
    const path = host.pathIn(root, name);
    const read = this.session.texts.read({ host, root, name, path });
    if (read instanceof Promise) {
      this.pending.push(read);
      return undefined;
    }
    if (isTrouble(read)) this.troubles.set(name, read.trouble);
    const doc = isTrouble(read) ? undefined : read;
    this.reads.set(path, doc);
    if (doc) this.paths.set(doc, path);
    return doc;
  }
}

/** House settings are read once a text. */
function houseOf(doc: Doc | undefined, plain: WorkspaceConfig): WorkspaceConfig {
  if (!doc) return plain;
  let house = doc.memo.get(WorkspaceConfig) as WorkspaceConfig | undefined;
  if (!house) doc.memo.set(WorkspaceConfig, (house = new WorkspaceConfig(doc)));
  return house;
}

/** Where a file lies. One that is not on disk yet belongs where its folder does. */
function locate(host: AddressedHost, path: string): Awaitable<FileRef> {
  const asFile = host.find(path);
  return asFile instanceof Promise
    ? locateLater(host, path, asFile)
    : (settle(host, path, asFile) ?? locateNew(host, path));
}

async function locateLater(
  host: AddressedHost,
  path: string,
  asFile: Promise<Awaited<ReturnType<AddressedHost['find']>>>,
): Promise<FileRef> {
  return settle(host, path, await asFile) ?? locateNew(host, path);
}

function settle(
  host: AddressedHost,
  path: string,
  found: Awaited<ReturnType<AddressedHost['find']>>,
): FileRef | undefined {
  return isTrouble(found) || found.kind !== 'file' ? undefined : { host, root: found.root, name: found.name, path };
}

function locateNew(host: AddressedHost, path: string): Awaitable<FileRef> {
  const [folder, file] = splitPath(path);
  const finish = (found: Awaited<ReturnType<AddressedHost['find']>>): FileRef =>
    isTrouble(found)
      ? { host, root: folder, name: file, path }
      : { host, root: found.root, name: found.name === '' ? file : `${found.name}/${file}`, path };
  const found = host.find(folder);
  return found instanceof Promise ? found.then(finish) : finish(found);
}

function splitPath(path: string): [string, string] {
  const at = Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\'));
  return [path.slice(0, Math.max(at, 1)), path.slice(at + 1)];
}
