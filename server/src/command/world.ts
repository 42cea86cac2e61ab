// What a command is given of the world: files, a day, a place to write.
import type { Host, ReadError } from '../host/host';
import type { Sink } from '../host/output';
import type { Store } from '../host/store';
import type { Watcher } from '../host/watcher';
import type { Threads } from '../host/threads';
import type { Language } from '../core/words/language';

export interface World {
  readonly host: Host;
  /** The version of Fettle, as `--version` prints it. */
  readonly version: string;
  /** The day that counts as today, as `2026-11-25`. */
  readonly today: string;
  /** Whether what is written to `out` may be coloured. */
  readonly colour: boolean;
  /** The language that messages are put into. */
  readonly language: () => Language;
  /** How many threads this machine runs at once, and threads that judge stretches of files; see `stretch`. */
  readonly cores: number;
  readonly threads: (count: number, setup: unknown) => Threads;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Writes to a terminal beside `out`; absent where there is none. With whether `out` goes there, too. */
  readonly terminal?: { readonly write: (text: string) => void; readonly hasOut: boolean };
  /** A revision of the repository that the current folder lies in, read as a host; or why it cannot be. */
  readonly revision: (revision: string) => (Host & { readonly id: string }) | ReadError;
  /** The same files with nothing kept of what was found before. */
  readonly anew: () => Host;
  /** Tells of changes below paths until the run is to end. */
  readonly watch: (paths: readonly string[]) => Promise<Watcher>;
  /** What stands on standard input; or why it cannot be read. */
  readonly input: () => Promise<string | ReadError>;
  /** Puts another text in the place of a file’s, below a root; or says why it does not. */
  readonly rewrite: (root: string, path: string, before: string, after: string) => ReadError | undefined;
  /** The text of a data sheet that somebody names, wherever it lies; of a display’s data block, in hexadecimal. */
  readonly sheet: (path: string) => string | ReadError;
  /** The text of a report that a run wrote, wherever it lies. */
  readonly report: (path: string) => string | ReadError;
  /** A digest that tells texts apart, whoever made them. */
  readonly digest: (text: string) => string;
  /** A digest of the program that runs, its engine with it. */
  readonly program: () => string;
  /** A folder that judgements are kept in; or why it cannot be. */
  readonly store: (folder: string) => Store | ReadError;
  readonly sink: (path: string) => Sink;
  /** Writes new files below the current folder, all or none, none over another. */
  readonly create: (files: ReadonlyMap<string, string>) => void;
}

/** 0: nothing at or above the chosen grade. 1: findings. 2: the run itself failed. */
export type Status = 0 | 1 | 2;

/** What is put into a refusal: a text as it is, why something could not be read, or a part of the sentence. */
type RefusalPiece = string | number | ReadError | Refusal;

/** Ends a command with status 2 and one clear line, told in the language of the run; no fault of the program. */
export class Refusal extends Error {
  constructor(
    private readonly words: TemplateStringsArray,
    private readonly pieces: readonly RefusalPiece[],
  ) {
    super('refused');
  }

  said(language: Language): string {
    const told = this.pieces.map((piece) => {
      if (piece instanceof Refusal) return piece.said(language);
      return typeof piece === 'object' ? language.plain(piece.trouble) : piece;
    });
    return language.words(this.words, ...told);
  }
}

export const refusal = (words: TemplateStringsArray, ...pieces: readonly RefusalPiece[]): Refusal =>
  new Refusal(words, pieces);
