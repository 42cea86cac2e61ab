// One editor's session: its open files, what they are judged to be, and which files each judgement rests on.
import { FencedDoc } from '../core/guide/fenced';
import type { Position } from '../core/text';
import { Doc, kindOfFile, type DocKind } from '../core/parts/doc';
import type { AddressedHost } from '../host/addressed';
import { isTrouble, splitPath, within, type Awaitable } from '../host/host';
import { Loader, type FileRead, type LoadedFile } from './loader';
import type { FileRef } from './texts';

/**
 * UTF-16 units of text that may be held beside what open files rest on; what is read from it takes some ten times as
 * much.
 */
const heldText = 4_000_000;

type Place = FileRef<AddressedHost>;

/** How an editor knows a file, and the files that it names. */
interface Addressed {
  readonly uri: string;
  readonly version: number | null;
  readonly uriOf: (doc: Doc) => string;
  readonly versionOf: (doc: Doc) => number | null;
}

/** A file as an editor knows it, read and not judged. */
export type AddressedFile = FileRead<AddressedHost> & Addressed;

/** A judged file as an editor knows it. */
export type AnalyzedFile = LoadedFile<AddressedHost> & Addressed;

export interface SessionOptions {
  /** The host for an address; undefined where none can read it. */
  readonly hostFor: (uri: string) => AddressedHost | undefined;
  /** The day, as `2026-11-25`. */
  readonly today: () => string;
}

export class Session {
  readonly loader: Loader;
  /** Addresses of files as their host makes them; findings name the same files again and again. */
  private readonly uris = new WeakMap<Doc, string>();
  private readonly places = new Map<string, Place>();
  private readonly judged = new Map<string, AnalyzedFile>();

  /** Addresses under which files without a name of their own are read, by the editor’s. */
  private readonly readAs = new Map<string, string>();

  constructor(private readonly options: SessionOptions) {
    this.loader = new Loader(options.today);
  }

  get texts(): Loader['texts'] {
    return this.loader.texts;
  }

  open(uri: string, version: number, text: string): void {
    const path = this.pathOf(uri);
    if (path !== undefined) this.texts.open.set(path, { uri, version, text });
  }

  /** A file that is not saved yet is read as if it had this address. */
  name(uri: string, as: string): void {
    this.readAs.set(uri, as);
  }

  /** What an address holds by its name: one of ours or none. */
  kindAt(uri: string): DocKind | undefined {
    return kindOfFile(this.addressOf(uri));
  }

  private addressOf(uri: string): string {
    return this.readAs.get(uri) ?? uri;
  }

  /** A closed file is what lies on disk again. */
  close(uri: string): void {
    const path = this.pathOf(uri);
    if (path === undefined) return;
    this.texts.open.delete(path);
    this.texts.forget(path);
    this.judged.delete(path);
    this.places.delete(path);
    this.readAs.delete(uri);
  }

  /** A file on disk came, went or changed; the roots of files, and where links lead, may be others now. */
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

  /** What stands in an open file; undefined where its place is still to be found. */
  docOf(uri: string): Doc | undefined {
    const path = this.pathOf(uri);
    const place = path === undefined || !this.texts.open.has(path) ? undefined : this.places.get(path);
    const read = place && this.texts.read(place);
    return read instanceof Doc ? read : undefined;
  }

  /** The addresses of all open files of ours. */
  openUris(): string[] {
    return [...this.texts.open.values()].map(({ uri }) => uri).filter((uri) => this.kindAt(uri) !== undefined);
  }

  hostFor(uri: string): AddressedHost | undefined {
    return this.options.hostFor(uri);
  }

  /** Where all open files of ours lie. */
  async openPlaces(): Promise<readonly Place[]> {
    const places = await Promise.all(this.openUris().map((uri) => this.placeOf(uri)));
    return places.flatMap((place) => place ?? []);
  }

  /** A path by which a file is known; an address that no host reads stands for itself. */
  pathOf(uri: string): string | undefined {
    const address = this.addressOf(uri);
    return this.options.hostFor(address)?.pathOf(address);
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

  /** Why a file that was to be judged could not be read. */
  troubleAt(uri: string): string | undefined {
    const path = this.pathOf(uri);
    return path === undefined ? undefined : this.texts.troubleAt(path);
  }

  /** Where a file lies, whether it is there or not; undefined for one that is none of ours. */
  placeOf(uri: string): Awaitable<Place | undefined> {
    const address = this.addressOf(uri);
    const host = this.options.hostFor(address);
    const path = host?.pathOf(address);
    if (!host || path === undefined || !kindOfFile(path)) return undefined;
    const known = this.places.get(path);
    if (known) return known;
    const found = locate(host, path);
    const keep = (place: Place): Place => {
      this.places.set(path, place);
      return place;
    };
    return found instanceof Promise ? found.then(keep) : keep(found);
  }

  private judgeAt(place: Place): Awaitable<AnalyzedFile | undefined> {
    const before = this.judged.get(place.path);
    if (before && before.place.root === place.root && this.holds(before)) return before;
    const loaded = this.loader.load(place, before);
    return loaded instanceof Promise
      ? loaded.then((one) => one && this.keep(this.analyzed(one)))
      : loaded && this.keep(this.analyzed(loaded));
  }

  private keep(judged: AnalyzedFile): AnalyzedFile {
    const { path } = judged.place;
    if (this.texts.open.has(path)) this.judged.set(path, judged);
    return judged;
  }

  /** A file of the workspace with what it names, not judged. */
  read(place: Place): Awaitable<AddressedFile | undefined> {
    const read = this.loader.read(place);
    return read instanceof Promise ? read.then((one) => one && this.analyzed(one)) : read && this.analyzed(read);
  }

  private analyzed<F extends FileRead<AddressedHost>>(loaded: F): F & Addressed {
    const { host, path } = loaded.place;
    const { open } = this.texts;
    const addressed: Addressed = {
      uri: open.get(path)?.uri ?? host.uriOf(path),
      version: open.get(path)?.version ?? null,
      uriOf: (doc) => open.get(loaded.pathOf(doc))?.uri ?? this.closedUri(host, doc, loaded.pathOf(doc)),
      versionOf: (doc) => open.get(loaded.pathOf(doc))?.version ?? null,
    };
    return { ...loaded, ...addressed };
  }

  /** What a place of a file belongs to: in a guide, the fenced block there, if one is. */
  static at(file: AnalyzedFile, position: Position): AnalyzedFile {
    return Session.blocksOf(file).find(({ doc }) => doc instanceof FencedDoc && doc.holds(position)) ?? file;
  }

  /** The fenced blocks of a guide, each as a file of its own whose places are the guide’s. */
  static blocksOf({ blocks = [], ...file }: AnalyzedFile): readonly AnalyzedFile[] {
    const { guide: _, build: __, ...shared } = file;
    return blocks.map((block) => ({ ...shared, troubles: [], ...block }));
  }

  /** What of a file is judged as a file: itself, or the fenced blocks of a guide. */
  static filesOf(file: AnalyzedFile | undefined): readonly AnalyzedFile[] {
    return !file ? [] : file.guide ? Session.blocksOf(file) : [file];
  }

  private closedUri(host: AddressedHost, doc: Doc, path: string): string {
    let uri = this.uris.get(doc);
    if (uri === undefined) this.uris.set(doc, (uri = host.uriOf(path)));
    return uri;
  }

  /** Whether nothing has changed that a judgement rests on. */
  holds(judged: AnalyzedFile): boolean {
    const open = this.texts.open.get(judged.place.path);
    if (
      judged.version !== (open?.version ?? null) ||
      ((judged.build || judged.known.length > 0) && judged.judgedOn !== this.options.today())
    )
      return false;
    for (const [path, doc] of judged.reads) if (!this.texts.isCurrent(path, doc)) return false;
    return true;
  }

  /** Forgets what was read for files that are not open, once that is much. */
  evict(): void {
    const kept = new Set([...this.judged.values()].flatMap(({ reads }) => [...reads.keys()]));
    this.texts.evict(heldText, kept);
  }

  /** Open files whose last judgement rests on a file. */
  restingOn(uri: string): string[] {
    const path = this.pathOf(uri);
    if (path === undefined) return [];
    return [...this.judged.values()].filter((judged) => judged.reads.has(path)).map((judged) => judged.uri);
  }
}

type Found = Awaited<ReturnType<AddressedHost['find']>>;

/** Where a file lies. One that is not on disk yet belongs where its folder does. */
function locate(host: AddressedHost, path: string): Awaitable<Place> {
  const asFile = host.find(path);
  return asFile instanceof Promise
    ? asFile.then((found) => settle(host, path, found) ?? locateNew(host, path))
    : (settle(host, path, asFile) ?? locateNew(host, path));
}

function settle(host: AddressedHost, path: string, found: Found): Place | undefined {
  return isTrouble(found) || found.kind !== 'file' ? undefined : { host, root: found.root, name: found.name, path };
}

function locateNew(host: AddressedHost, path: string): Awaitable<Place> {
  const [folder, file] = splitPath(path);
  const finish = (found: Found): Place =>
    isTrouble(found)
      ? { host, root: folder, name: file, path }
      : { host, root: found.root, name: within(found.name, file), path };
  const found = host.find(folder);
  return found instanceof Promise ? found.then(finish) : finish(found);
}
