// The shares of a run that is split over several machines: which files each judges, and what a share’s report holds
// beside its findings, so that the reports put together are the report of the whole run.
import { InvalidArgumentError } from 'commander';
import type { DocKind } from '../core/parts/doc';
import type { Grade } from '../core/manifest/house-file';
import type { TallyData } from '../report/tally';
import { Budget, type Wanted } from '../session/mending';
import type { RunTrouble } from '../session/run-trouble';
import type { Ours } from '../session/walk';

export interface Share {
  readonly number: number;
  readonly of: number;
}

const mostShares = 1_000;

/** `2/7`: the second of seven. */
export function readShare(text: string): Share {
  const [, number, of] = (/^([1-9]\d{0,3})\/([1-9]\d{0,3})$/.exec(text) ?? []).map(Number);
  if (number === undefined || of === undefined || number > of || of > mostShares)
    throw new InvalidArgumentError(`Expected a share of the files as 2/7, at most ${mostShares} in all.`);
  return { number, of };
}

/** The files of a share by their place in the run: builds, then all others, are dealt out one by one. */
export function dealt(files: readonly Pick<Ours, 'kind'>[], { number, of }: Share): readonly number[] {
  const own: number[] = [];
  let [builds, others] = [0, 0];
  files.forEach(({ kind }, i) => {
    if ((kind === 'build' ? builds++ : others++) % of === number - 1) own.push(i);
  });
  return own;
}

/** One section of a share’s report. */
export interface SharePiece {
  /** Which of the report’s files it is; null where its report failed. */
  readonly at: number | null;
  readonly kind: DocKind;
  readonly isBlock: boolean;
  /** Places, among the findings of its file, of those whose fixes a run may look for; null where it is not listed. */
  readonly mendable: readonly (number | null)[];
  /** How many of them were looked into. */
  readonly sought: number;
  readonly tally: PlainTally;
  /** The path of a file that a build brought, which is reported once. */
  readonly brought?: string;
  /** Files that records of known findings speak of and that are not there, and files that were moved. */
  readonly absent: readonly (readonly [string, number])[];
  readonly moved: readonly string[];
}

/** What a share says of one file of the run. */
export interface ShareFile {
  readonly file: number;
  readonly pieces: readonly SharePiece[];
  readonly troubles: readonly RunTrouble[];
  /** Whether it is a file of settings that decides nothing in this run. */
  readonly isApart: boolean;
}

/** What has to be the same for all shares of a run. */
export interface ShareRun {
  /** Of Fettle. */
  readonly version: string;
  readonly paths: readonly string[];
  readonly language: string;
  readonly fails: Grade;
  readonly working: boolean;
  readonly allFixes: boolean;
  readonly alone: boolean;
  /** The revision whose settings decide. */
  readonly settings: string | null;
  /** A digest of all files of the run with their texts, and their number. */
  readonly tree: string;
  readonly files: number;
  readonly builds: number;
  /** What could not be walked, and what is to be said where nothing at all was judged. */
  readonly walked: readonly RunTrouble[];
  readonly ifNothing: readonly RunTrouble[];
}

export interface ShareFacts extends Share {
  readonly run: ShareRun;
  readonly judged: readonly ShareFile[];
  /** Digests of files that were read and are none of the run’s own. */
  readonly beside: Readonly<Record<string, string>>;
  /** Of the whole report without this field. */
  readonly digest: string;
}

/** A tally as JSON holds it. */
export type PlainTally = Omit<TallyData, 'settings'> & {
  readonly settings: { readonly off: readonly string[]; readonly regraded: readonly (readonly [string, Grade])[] };
};

export function plainTally(tally: TallyData): PlainTally {
  const { settings, ...data } = tally;
  return { ...data, settings: { off: [...settings.off], regraded: [...settings.regraded] } };
}

export const tallyOf = ({ settings, ...data }: PlainTally): TallyData => ({
  ...data,
  settings: { off: new Set(settings.off), regraded: new Map(settings.regraded) },
});

/**
 * How many fixes of each file a share looks for, while nobody knows what the shares before it found: at least as many
 * as the whole run would. Of the fixes that are left, the most that can be is kept.
 */
export class ShareBudget {
  private left: number;
  private judged = 0;

  constructor(
    private readonly wanted: Wanted,
    private readonly builds: number,
  ) {
    this.left = new Budget(wanted, builds).left;
  }

  /** What may be left at a file with so many builds behind it, itself among them. */
  at(behind: number): Budget {
    return this.budget(behind);
  }

  /** Takes what the whole run uses up at the very least. */
  took(kind: DocKind, mendable: number, isBlock: boolean): void {
    const least = this.budget(this.builds - this.judged).shareOf(kind);
    this.left -= Math.min(least, mendable);
    if (kind === 'build' && !isBlock) this.judged++;
  }

  private budget(builds: number): Budget {
    return Object.assign(new Budget(this.wanted, builds), { left: this.left });
  }
}
