// The part files of a workspace by kind: listed on first need, kept until one comes or goes. Completion, fixes and
// swaps all take parts from here; a name that is listed is one that is found.
import { kindOfPart } from '../core/build/placed';
import type { WorkspaceConfig } from '../core/build/workspace-config';
import type { Candidate } from '../core/judge/swaps';
import { kindOfFile, type Doc } from '../core/parts/doc';
import type { Kind } from '../core/parts/kinds';
import { mayHoldParts, partNameAt } from '../core/parts/part-name';
import { isTrouble, within } from '../host/host';
import { Lister } from './lister';
import { partsFolders } from './loader';
import { troubleAt, type RunTrouble } from './run-trouble';
import { fileRef, type FileRef, type Texts } from './texts';
import { Turns } from './turns';

/** How many files are read before others get their turn. */
const stride = 200;
/** How long one stretch of noting lasts before others get their turn. */
const stretchMs = 5;

/** A file whose workspace’s parts are asked for. */
interface Asking {
  readonly place: FileRef;
  readonly house: Pick<WorkspaceConfig, 'folders'>;
}

/** Names of parts, each with the place of its file. */
type Listing = ReadonlyMap<string, FileRef>;

export interface PartIndexOptions {
  /** Lets others have their turn. */
  readonly pause?: () => Promise<void>;
  /** Told of each folder or part file that could not be read, and of limits that were reached. */
  readonly tell: (trouble: RunTrouble) => void;
}

export class PartIndex {
  private readonly listings = new Map<string, Promise<Listing>>();
  private readonly known = new Map<string, Listing>();

  constructor(
    private readonly texts: Texts,
    private readonly options: PartIndexOptions,
  ) {}

  /** A part file came or went. */
  forget(): void {
    this.listings.clear();
    this.known.clear();
  }

  /** All parts of a kind, by name; reads files that were not read yet. `stopped` is asked between files. */
  async ofKind(asking: Asking, kind: Kind, stopped: () => boolean = () => false): Promise<readonly Candidate[]> {
    const candidates: Candidate[] = [];
    let count = 0;
    for (const [name, file] of await this.listing(asking)) {
      if (++count % stride === 0) await this.options.pause?.();
      if (stopped()) return [];
      const noted = this.texts.open.has(file.path) ? undefined : this.texts.kinds.get(file.path);
      if (noted !== undefined && noted !== kind) continue;
      const read = this.texts.read(file);
      const doc = read instanceof Promise ? await read : read;
      if (isTrouble(doc)) this.options.tell(troubleAt(file.host.shown(file.root, file.name), doc.trouble));
      else if (doc && this.kindOf(file, doc) === kind) candidates.push({ name, doc });
    }
    return candidates;
  }

  /**
   * Notes the kind of every part in turns, while nobody waits: whoever then asks for one kind reads only its files.
   * `stopped` is asked between files.
   */
  async note(asking: Asking, stopped: () => boolean): Promise<void> {
    const turns = new Turns(this.options.pause, stretchMs);
    for (const file of (await this.listing(asking)).values()) {
      if (turns.isOver) await turns.give();
      if (stopped()) return;
      if (this.texts.kinds.has(file.path)) continue;
      const read = this.texts.glance(file);
      const doc = read instanceof Promise ? await read : read;
      if (doc && !isTrouble(doc)) this.kindOf(file, doc);
    }
  }

  private kindOf(file: FileRef, doc: Doc): string {
    const kind = doc.kept(saidKind, () => saidKind(doc));
    if (!this.texts.open.has(file.path)) this.texts.kinds.set(file.path, kind);
    return kind;
  }

  /** How many parts the workspace of a file has. */
  async count(asking: Asking): Promise<number> {
    return (await this.listing(asking)).size;
  }

  /** The places of all parts, by name. */
  files(asking: Asking): Promise<ReadonlyMap<string, FileRef>> {
    return this.listing(asking);
  }

  /** Whether the parts of this file's workspace are listed already, so that asking costs little. */
  isListed(asking: Asking): boolean {
    return this.known.has(keyOf(asking));
  }

  private listing(asking: Asking): Promise<Listing> {
    const key = keyOf(asking);
    let listing = this.listings.get(key);
    if (!listing) {
      listing = this.list(asking);
      this.listings.set(key, listing);
      void listing.then(
        (found) => this.listings.get(key) === listing && this.known.set(key, found),
        () => this.listings.delete(key),
      );
    }
    return listing;
  }

  /** Files of an earlier folder stand before those of a later one with the same name. */
  private async list({ place: { host, root }, house }: Asking): Promise<Listing> {
    const found = new Map<string, FileRef>();
    const lister = new Lister(host, this.options.pause);
    for (const folder of partsFolders(house)) {
      const enters = (name: string): boolean => mayHoldParts(name.slice(folder.length + 1));
      for await (const at of lister.below(root, folder, { enters, followsLinks: true }))
        for (const entry of at.entries) {
          const path = within(at.folder, entry.name);
          const isFile = entry.kind === 'file' || entry.target?.kind === 'file';
          const name = isFile && kindOfFile(entry.name) === 'part' ? partNameAt(folder, path) : undefined;
          if (name !== undefined && !found.has(name)) found.set(name, fileRef(host, root, path));
        }
    }
    for (const trouble of lister.troubles) this.options.tell(trouble);
    return new Map([...found].sort(([a], [b]) => (a < b ? -1 : 1)));
  }
}

const keyOf = ({ place, house }: Asking): string => [place.root, ...house.folders].join('\n');

/** A file whose text plainly says its kind need not be parsed to know that. */
function saidKind(doc: Doc): string {
  const plain = /^kind:[ \t]*([a-z]+)[ \t]*\r?$/m.exec(doc.text);
  return plain && doc.text.indexOf('kind:') === plain.index ? plain[1]! : (kindOfPart(doc) ?? '');
}
