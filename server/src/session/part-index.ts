// The part files of a workspace by kind: listed on first need, kept until one comes or goes.
import { kindOfPart } from '../core/build/build';
import type { Candidate } from '../core/judge/swaps';
import type { Doc } from '../core/parts/doc';
import type { Kind } from '../core/parts/kinds';
import { isTrouble, staysBelow, within } from './hosts';
import type { AnalyzedFile } from './session';
import type { FileRef, Texts } from './texts';

const ending = '.part.yaml';
const deepest = 16;
const mostFiles = 100_000;
/** How many files are read before others get their turn. */
const stride = 200;

/** Names of parts, each with the place of its file. */
type Listing = ReadonlyMap<string, FileRef>;

export class PartIndex {
  private readonly listings = new Map<string, Promise<Listing>>();
  private readonly known = new Map<string, Listing>();

  constructor(
    private readonly texts: Texts,
    private readonly pause: () => Promise<void>,
  ) {}

  /** A part file came or went. */
  forget(): void {
    this.listings.clear();
    this.known.clear();
  }

  /** All parts of a kind, by name; reads files that were not read yet. `stopped` is asked between files. */
  async ofKind(judged: AnalyzedFile, kind: Kind, stopped: () => boolean): Promise<readonly Candidate[]> {
    const candidates: Candidate[] = [];
    let count = 0;
    for (const [name, place] of await this.listing(judged)) {
      if (++count % stride === 0) await this.pause();
      if (stopped()) return [];
      const read = this.texts.read(place);
      const doc = read instanceof Promise ? await read : read;
      if (doc && !isTrouble(doc) && isOfKind(doc, kind)) candidates.push({ name, doc });
    }
    return candidates;
  }

  /** Whether the parts of this file's workspace are listed already, so that asking costs little. */
  isListed(judged: AnalyzedFile): boolean {
    return this.known.has(keyOf(judged));
  }

  private listing(judged: AnalyzedFile): Promise<Listing> {
    const key = keyOf(judged);
    let listing = this.listings.get(key);
    if (!listing) {
      listing = this.list(judged);
      this.listings.set(key, listing);
      void listing.then(
        (found) => this.listings.get(key) === listing && this.known.set(key, found),
        () => this.listings.delete(key),
      );
    }
    return listing;
  }

  /** Files of an earlier folder stand before those of a later one with the same name. */
  private async list({ place: { host, root }, house }: AnalyzedFile): Promise<Listing> {
    const found = new Map<string, FileRef>();
    for (const folder of house.folders.filter(staysBelow)) {
      const waiting = [{ folder, depth: 0 }];
      for (let next = waiting.pop(); next && found.size < mostFiles; next = waiting.pop()) {
        const listed = await host.list(root, next.folder);
        for (const entry of isTrouble(listed) ? [] : listed) {
          const name = within(next.folder, entry.name);
          if (entry.kind === 'folder' && next.depth < deepest && !entry.name.startsWith('.'))
            waiting.push({ folder: name, depth: next.depth + 1 });
          if (entry.kind !== 'file' || !entry.name.endsWith(ending)) continue;
          const part = name.slice(folder.length + 1, -ending.length);
          if (!found.has(part)) found.set(part, { host, root, name, path: host.pathIn(root, name) });
        }
      }
    }
    return new Map([...found].sort(([a], [b]) => (a < b ? -1 : 1)));
  }
}

const keyOf = ({ place, house }: AnalyzedFile): string => [place.root, ...house.folders].join('\n');

/** A file whose text plainly says another kind need not be parsed to know that. */
function isOfKind(doc: Doc, kind: Kind): boolean {
  const plain = /^kind:[ \t]*([a-z]+)[ \t]*\r?$/m.exec(doc.text);
  if (plain && plain[1] !== kind && doc.text.indexOf('kind:') === plain.index) return false;
  return kindOfPart(doc) === kind;
}
