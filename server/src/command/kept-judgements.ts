// Judgements kept from one run to the next: what was judged of a file stands while everything that it read stands.
import { nameBelow, type Host } from '../host/host';
import type { Store } from '../host/store';
import { partsFolders, type LoadedFile } from '../session/loader';
import { Budget } from '../session/mending';
import { States } from '../session/states';
import type { Ours } from '../session/walk';
import { plainTally, tallyOf, type PlainTally } from './shares';
import type { Piece, Setup } from './stretch';
import type { World } from './world';

/** What one file of a run said, with everything that this rests on. */
interface Entry {
  /** Of the run: program, day, options. */
  readonly key: string;
  readonly shown: string;
  /** Its name below its root: another root is another workspace. */
  readonly name: string;
  readonly isNamed: boolean;
  /** Names below the root with what stood there. */
  readonly reads: readonly (readonly [string, string | null])[];
  /** The parts folders whose parts may have been tried as fixes, with what stood in them. */
  readonly parts: { readonly folders: readonly string[]; readonly digest: string } | null;
  readonly pieces: readonly KeptPiece[];
}

type KeptPiece = Omit<Piece, 'tally' | 'root'> & { readonly tally: PlainTally };

export interface KeptOptions {
  readonly host: Host;
  readonly store: Store;
  readonly setup: Setup;
  /** The paths of all files of the run. */
  readonly listed: ReadonlySet<string>;
  /** A digest of all parts that may be tried in a file’s workspace. */
  readonly partsOf: (file: Ours, folders: readonly string[]) => Promise<string>;
  readonly digest: World['digest'];
  /** A digest of the program that runs. */
  readonly program: string;
}

/** About so many files stand in one pack, which is read and written as a whole. */
const filesOfPack = 64;

export class KeptJudgements {
  private readonly key: string;
  private readonly options: string;
  private readonly states: States;
  private pack = '';
  private before = new Map<string, Entry>();
  private now: Entry[] = [];
  private isChanged = false;
  /** Why nothing could be kept. */
  failed: string | undefined;

  constructor(private readonly given: KeptOptions) {
    const { setup, digest, program } = given;
    const { format, look, language, alone, allFixes, run } = setup;
    this.states = new States(digest);
    this.options = JSON.stringify([format, look, language, alone, allFixes]);
    this.key = digest(JSON.stringify([this.options, program, run]));
  }

  /** The file whose turn it is. A path alone decides whether a pack begins at it, so that few shift with a new file. */
  turn(file: Ours): void {
    const { host, digest } = this.given;
    const own = digest(host.shown(file.root, file.name));
    if (this.pack !== '' && Number.parseInt(own.slice(0, 8), 16) % filesOfPack !== 0) return;
    this.end();
    this.pack = `${digest(this.options + own).slice(0, 40)}.judged`;
    this.before = this.read();
  }

  private read(): Map<string, Entry> {
    const entries = new Map<string, Entry>();
    for (const line of this.given.store.read(this.pack)?.split('\n') ?? []) {
      const text = line.slice(65);
      if (line.slice(0, 64) !== this.given.digest(text)) continue;
      const entry = JSON.parse(text) as Entry | null;
      if (entry?.key === this.key) entries.set(entry.shown, entry);
    }
    return entries;
  }

  /** What is kept of a file, if all that it rests on stands, and as many fixes are looked for as then. */
  async of(file: Ours, budget: Budget): Promise<readonly Piece[] | undefined> {
    const entry = this.before.get(this.given.host.shown(file.root, file.name));
    if (!entry || entry.name !== file.name || entry.isNamed !== file.named) return undefined;
    if (!isPlain(file) || !isShared(entry.pieces, budget)) return undefined;
    for (const [name, state] of entry.reads) if ((await this.stateOf(file.root, name)) !== state) return undefined;
    const { parts } = entry;
    if (parts && (await this.given.partsOf(file, parts.folders)) !== parts.digest) return undefined;
    this.now.push(entry);
    for (const { kind, isBlock, sought } of entry.pieces) {
      budget.passed(kind, isBlock);
      budget.left -= sought;
    }
    return entry.pieces.map((piece) => ({ ...piece, tally: tallyOf(piece.tally), root: file.root }));
  }

  /** Keeps what was judged of a file, if it rests on nothing but what its record names. */
  async keep(file: Ours, loaded: LoadedFile | undefined, pieces: readonly Piece[]): Promise<void> {
    this.isChanged = true;
    const { host } = this.given;
    if (!loaded || !isPlain(file) || loaded.troubles.length > 0 || !pieces.every(isWhole)) return;
    const reads = this.readsOf(loaded);
    if (!reads) return;
    const kept = pieces.map(({ root: _, tally, ...piece }) => ({ ...piece, tally: plainTally(tally) }));
    const folders = partsFolders(loaded.house);
    const tried = pieces.some(({ sought, kind }) => sought > 0 && kind === 'build');
    const parts = tried ? { folders, digest: await this.given.partsOf(file, folders) } : null;
    const shown = host.shown(file.root, file.name);
    this.now.push({ key: this.key, shown, name: file.name, isNamed: file.named, reads, parts, pieces: kept });
  }

  /** Undefined where something was read that is none of the run’s files: which of them it brings depends on others. */
  private readsOf({ place: { root }, looked }: LoadedFile): Entry['reads'] | undefined {
    const { host, digest, listed } = this.given;
    const reads: [string, string | null][] = [];
    const base = host.pathIn(root, '');
    for (const [path, doc] of looked) {
      const name = nameBelow(base, path);
      if (name === undefined || host.pathIn(root, name) !== path || (doc && !listed.has(path))) return undefined;
      reads.push([name, doc ? digest(doc.text) : null]);
    }
    return reads;
  }

  /** What stands in a file now; what the run does not list is never what it was. */
  private async stateOf(root: string, name: string): Promise<string | null> {
    const { host, listed } = this.given;
    const state = await this.states.of(host, root, name);
    return state === null || listed.has(host.pathIn(root, name)) ? state : '';
  }

  /** Writes the pack at hand, if anything in it is new. */
  end(): void {
    const isShorter = this.now.length !== this.before.size;
    if (this.pack !== '' && this.failed === undefined && (this.isChanged || isShorter)) {
      const lines = this.now.map((entry) => {
        const text = JSON.stringify(entry);
        return `${this.given.digest(text)} ${text}\n`;
      });
      try {
        this.given.store.write(this.pack, lines.join(''));
      } catch (error) {
        this.failed = (error as Error).message;
      }
    }
    this.now = [];
    this.isChanged = false;
  }
}

/** A file that is of interest for itself. */
const isPlain = ({ restsOn, along, kind }: Ours): boolean => !restsOn && !along && kind !== 'known';

/** A section that depends on no other file’s turn. Fixes of guides try parts that nobody notes. */
const isWhole = ({ text, brought, kind, sought, isBlock }: Piece): boolean =>
  text !== undefined && brought === undefined && !(sought > 0 && (kind === 'guide' || isBlock));

/** Whether as many fixes are looked for as were when it was judged. */
function isShared(pieces: readonly KeptPiece[], { left, builds }: Budget): boolean {
  const budget = Object.assign(new Budget('first', 0), { left, builds });
  return pieces.every(({ kind, isBlock, sought, mendable }) => {
    const share = Math.min(budget.shareOf(kind), mendable);
    budget.passed(kind, isBlock);
    budget.left -= sought;
    return share === sought;
  });
}
