// Which files of a workspace may name a part: found by the words in each text that look like a part’s name, noted when
// it is first asked and kept until the file changes. Whoever asks reads the few files that are left, to be sure.
import type { AddressedHost } from '../host/addressed';
import { isTrouble, type Awaitable } from '../host/host';
import type { Texts, FileRef } from './texts';
import { troubleAt, type RunTrouble } from './run-trouble';
import { Turns } from './turns';
import { walk } from './walk';

type Place = FileRef<AddressedHost>;

/** The words of a text that may be names of parts; `undefined` where it may name any, by escapes. */
type Noted = ReadonlySet<string> | undefined;

/** Whoever asks about a whole workspace: may lose interest, and may want to hear how far it is. */
export interface Asker {
  readonly stopped: () => boolean;
  readonly told?: (done: number, of: number) => void;
}

export interface UseIndexOptions {
  /** Lets others have their turn. */
  readonly pause: () => Promise<void>;
  /** Told of each file or folder that could not be read. */
  readonly tell: (trouble: RunTrouble) => void;
  /** The files that are open, on disk or not. */
  readonly openPlaces: () => Promise<readonly Place[]>;
  /** Forgets texts, once many are held. */
  readonly evict: () => void;
}

/** How long one stretch of reading lasts before others get their turn. */
const stretchMs = 8;

export class UseIndex {
  private readonly listings = new Map<string, Promise<readonly Place[]>>();
  private readonly noted = new Map<string, Noted>();
  /** Each word once, however many texts have it; a piece of a text would keep the whole text in memory. */
  private readonly words = new Map<string, string>();

  constructor(
    private readonly texts: Texts,
    private readonly options: UseIndexOptions,
  ) {}

  /** A file came or went. */
  forget(): void {
    this.listings.clear();
  }

  /** What lies on disk may be another text. */
  changed(path: string): void {
    this.noted.delete(path);
  }

  changedAnywhere(): void {
    this.listings.clear();
    this.noted.clear();
    this.words.clear();
  }

  /** The builds, part files and guides of a place’s workspace, those that are only open included. */
  async filesOf({ host, root }: Place): Promise<readonly Place[]> {
    const files = (await this.filesBelow(host, host.pathIn(root, ''))).filter((file) => file.root === root);
    const listed = new Set(files.map(({ path }) => path));
    const open = await this.options.openPlaces();
    return [...files, ...open.filter((one) => one.root === root && !listed.has(one.path))];
  }

  /** The builds, part files and guides below a folder, by its path, of every workspace there. */
  filesBelow(host: AddressedHost, path: string): Promise<readonly Place[]> {
    let listing = this.listings.get(path);
    if (!listing) {
      this.listings.set(path, (listing = this.list(host, path)));
      listing.catch(() => this.listings.delete(path));
    }
    return listing;
  }

  /** Those that may name some parts, or hold a text; fewer once nobody waits for them any more. */
  async filesNaming(place: Place, names: readonly string[], asker: Asker): Promise<readonly Place[]> {
    return this.filesWhere(await this.filesOf(place), (file) => this.mayName(file, names), asker);
  }

  /** Those of some files that a test holds of; fewer once nobody waits for them any more. */
  async filesWhere(
    files: readonly Place[],
    test: (file: Place) => Awaitable<boolean>,
    asker: Asker,
  ): Promise<readonly Place[]> {
    const found: Place[] = [];
    const turns = new Turns(this.options.pause, stretchMs);
    for (const [i, file] of files.entries()) {
      const holds = test(file);
      if (holds instanceof Promise ? await holds : holds) found.push(file);
      if (!turns.isOver) continue;
      asker.told?.(i + 1, files.length);
      this.options.evict();
      await turns.give();
      if (asker.stopped()) break;
    }
    return found;
  }

  /** What stands in a file as it is now; nothing where it cannot be read. */
  textOf(file: Place): Awaitable<string> {
    const text = (read: Awaited<ReturnType<Texts['read']>>): string => (!read || isTrouble(read) ? '' : read.text);
    const read = this.texts.read(file);
    return read instanceof Promise ? read.then(text) : text(read);
  }

  private async list(host: AddressedHost, path: string): Promise<readonly Place[]> {
    const { files, troubles } = await walk(host, [path], this.options.pause);
    for (const trouble of troubles) this.options.tell(trouble);
    return files
      .filter((file) => file.kind !== 'house' && file.kind !== 'known' && file.kind !== 'asbuilt')
      .map(({ root, name }) => ({ host, root, name, path: host.pathIn(root, name) }));
  }

  private mayName(file: Place, names: readonly string[]): Awaitable<boolean> {
    if (!names.every(isWord)) {
      const text = this.textOf(file);
      return text instanceof Promise ? text.then((one) => mayHold(one, names)) : mayHold(text, names);
    }
    const words = this.wordsOf(file);
    const has = (one: Noted): boolean => one === undefined || names.some((name) => one.has(name));
    return words instanceof Promise ? words.then(has) : has(words);
  }

  private wordsOf(file: Place): Awaitable<Noted> {
    const open = this.texts.open.get(file.path);
    if (open) return this.wordsIn(open.text);
    if (this.noted.has(file.path)) return this.noted.get(file.path);
    const read = this.texts.read(file);
    return read instanceof Promise ? read.then((one) => this.note(file, one)) : this.note(file, read);
  }

  private note(file: Place, read: Awaited<ReturnType<Texts['read']>>): Noted {
    if (isTrouble(read)) this.options.tell(troubleAt(file.host.shown(file.root, file.name), read.trouble));
    const words = isTrouble(read) || !read ? new Set<string>() : this.wordsIn(read.text);
    this.noted.set(file.path, words);
    return words;
  }

  private wordsIn(text: string): Noted {
    if (text.includes('\\')) return undefined;
    const found = Array.from(text.matchAll(wordLike), ([word]) => word).filter((word) => word.includes('/'));
    return new Set(found.map((word) => this.words.get(word) ?? this.keep(word)));
  }

  private keep(word: string): string {
    const copy = [...word].join('');
    this.words.set(copy, copy);
    return copy;
  }
}

/** Text with no blank or sign of YAML in it. */
const wordLike = /[^\s"'{}[\],#:]+/g;

/** Whether a name is one of the words that are noted; one with a sign of YAML in it stands in the text in pieces. */
const isWord = (name: string): boolean => name.includes('/') && !/[\s"'{}[\],#:]/.test(name);

/** Whether a text may say something; with escapes, doubled quotes or over several lines it does so in pieces. */
const mayHold = (text: string, names: readonly string[]): boolean =>
  text.includes('\\') || names.some((name) => name.split(/['\s]+/).every((piece) => text.includes(piece)));
