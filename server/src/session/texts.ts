// The texts of a session: what the editor has open stands before what lies on disk; each text is read once.
import { isTrouble, type AddressedHost, type Awaitable, type ReadError } from './hosts';
import { Doc, kindOfFile } from '../core/parts/doc';

/** Where a file lies: its host, the root that bounds it, its name below that root, and its whole path. */
export interface FileRef {
  readonly host: AddressedHost;
  readonly root: string;
  readonly name: string;
  readonly path: string;
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
  private readonly disk = new Map<string, Read>();
  /** UTF-16 units of text read from disk and held. */
  held = 0;
  private readonly coming = new Map<string, Promise<void>>();

  /** What stands in a file. A promise where it is still to be read. */
  read(place: FileRef): Awaitable<Read> {
    const open = this.open.get(place.path);
    if (open) return (open.doc ??= docOf(place, open.text));
    if (this.disk.has(place.path)) return this.disk.get(place.path);
    const coming = this.coming.get(place.path);
    if (coming) return coming.then(() => this.disk.get(place.path));
    const read = place.host.read(place.root, place.name);
    return read instanceof Promise ? this.await(place, read) : this.keep(place, read);
  }

  private await(place: FileRef, reading: Promise<string | ReadError | undefined>): Promise<Read> {
    const done = reading.then(
      (text) => this.keep(place, text),
      (error: unknown) =>
        this.keep(place, { trouble: `cannot be read: ${error instanceof Error ? error.message : String(error)}.` }),
    );
    const coming = done.then(() => undefined);
    this.coming.set(place.path, coming);
    void coming.finally(() => this.coming.delete(place.path));
    return done;
  }

  private keep(place: FileRef, text: string | ReadError | undefined): Read {
    const read = typeof text === 'string' ? docOf(place, text) : text;
    this.forget(place.path);
    this.disk.set(place.path, read);
    this.held += lengthOf(read);
    return read;
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
    this.held -= lengthOf(this.disk.get(path));
    this.disk.delete(path);
  }

  forgetAll(): void {
    this.forgetBut(new Set());
  }

  forgetBut(kept: ReadonlySet<string>): void {
    for (const path of [...this.disk.keys()]) if (!kept.has(path)) this.forget(path);
  }
}

const lengthOf = (read: Read): number => (read === undefined || isTrouble(read) ? 0 : read.text.length);

function docOf(place: FileRef, text: string): Doc {
  return new Doc(place.name, kindOfFile(place.name) ?? 'build', text);
}
