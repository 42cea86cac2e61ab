// The texts of a session: what the editor has open stands before what lies on disk; each text is read once.
import { Doc, kindOfFile, type KnownScalars } from '../core/parts/doc';
import { isTrouble, type Awaitable, type Host, type ReadError } from '../host/host';

/** Texts that a run over many files holds at once, in UTF-16 units. */
export const heldByRun = 1_000_000;

/** Where a file lies: its host, the root that bounds it, its name below that root, and its whole path. */
export interface FileRef<H extends Host = Host> {
  readonly host: H;
  readonly root: string;
  readonly name: string;
  readonly path: string;
}

export function fileRef<H extends Host>(host: H, root: string, name: string): FileRef<H> {
  return { host, root, name, path: host.pathIn(root, name) };
}

/** A file that the editor has open; `uri` is the editor's own spelling. */
export interface Open {
  readonly uri: string;
  readonly version: number;
  readonly text: string;
  doc?: Doc;
}

type Read = Doc | ReadError | undefined;

export class Texts {
  readonly open = new Map<string, Open>();
  /** What was read, from what was used longest ago to what was used last. */
  private readonly disk = new Map<string, Read>();
  /** UTF-16 units of text read from disk and held. */
  private held = 0;
  /** Kinds that part files say, as they lie on disk, by path; forgotten once a file may say otherwise. */
  readonly kinds = new Map<string, string>();
  /** What scalars were read as, for all documents. */
  private readonly scalars: KnownScalars = new Map();
  private readonly coming = new Map<string, Promise<void>>();

  /** What stands in a file. A promise where it is still to be read. */
  read(file: FileRef): Awaitable<Read> {
    const open = this.open.get(file.path);
    if (open) return (open.doc ??= this.docOf(file, open.text));
    if (this.disk.has(file.path)) return this.used(file.path);
    const coming = this.coming.get(file.path);
    if (coming) return coming.then(() => this.disk.get(file.path));
    const read = file.host.read(file.root, file.name);
    return read instanceof Promise ? this.await(file, read) : this.keep(file, read);
  }

  /** What stands in a file; where it is not held yet, it is not held afterwards either. */
  glance(file: FileRef): Awaitable<Read> {
    if (this.open.has(file.path) || this.disk.has(file.path)) return this.read(file);
    const read = file.host.read(file.root, file.name);
    return read instanceof Promise ? this.await(file, read) : typeof read === 'string' ? this.docOf(file, read) : read;
  }

  /** What lies on disk below an open file that says otherwise; undefined where nothing does. */
  async saved(file: FileRef): Promise<Doc | undefined> {
    const open = this.open.get(file.path);
    const text = open && (await file.host.read(file.root, file.name));
    return typeof text === 'string' && text !== open!.text ? this.docOf(file, text) : undefined;
  }

  private docOf(file: FileRef, text: string): Doc {
    return new Doc(file.name, kindOfFile(file.name) ?? 'build', text, this.scalars);
  }

  private used(path: string): Read {
    const read = this.disk.get(path);
    this.disk.delete(path);
    this.disk.set(path, read);
    return read;
  }

  private await(file: FileRef, reading: Promise<string | ReadError | undefined>): Promise<Read> {
    const done = reading.then(
      (text) => this.keep(file, text),
      (error: unknown) =>
        this.keep(file, { trouble: `cannot be read: ${error instanceof Error ? error.message : String(error)}.` }),
    );
    const coming = done.then(() => undefined);
    this.coming.set(file.path, coming);
    void coming.finally(() => this.coming.delete(file.path));
    return done;
  }

  private keep(file: FileRef, text: string | ReadError | undefined): Read {
    const read = typeof text === 'string' ? this.docOf(file, text) : text;
    this.drop(file.path);
    this.disk.set(file.path, read);
    this.held += lengthOf(read);
    return read;
  }

  /** Why a file that was asked for could not be read. */
  troubleAt(path: string): string | undefined {
    const read = this.open.has(path) ? undefined : this.disk.get(path);
    return isTrouble(read) ? read.trouble : undefined;
  }

  /** Whether a file still says what `doc` says. */
  isCurrent(path: string, doc: Doc | undefined): boolean {
    const open = this.open.get(path);
    if (open) return open.doc === doc;
    const read = this.disk.get(path);
    return this.disk.has(path) && (isTrouble(read) ? undefined : read) === doc;
  }

  /** What lies on disk may have changed. */
  forget(path: string): void {
    this.drop(path);
    this.kinds.delete(path);
  }

  forgetAll(): void {
    for (const path of [...this.disk.keys()]) this.drop(path);
    this.kinds.clear();
  }

  private drop(path: string): void {
    this.held -= lengthOf(this.disk.get(path));
    this.disk.delete(path);
  }

  /** Forgets what was used longest ago once more is held than `most` UTF-16 units; `kept` stays in any case. */
  evict(most: number, kept: ReadonlySet<string> = new Set()): void {
    for (const path of this.disk.keys()) {
      if (this.held <= most) return;
      if (!kept.has(path)) this.drop(path);
    }
  }
}

const lengthOf = (read: Read): number => (read === undefined || isTrouble(read) ? 0 : read.text.length);
