// Proves fixes of what a run lists: each costs some judging, so that a run looks for no more than a certain number.
import type { Finding, Judgement } from '../core/judge/finding';
import {
  bestFix,
  kindsSought,
  provenFileFixes,
  provenFixes,
  provenGuideFixes,
  staysWithin,
  type ProvenFix,
} from '../core/judge/prove';
import type { Candidate } from '../core/judge/swaps';
import type { Kind } from '../core/parts/kinds';
import type { Doc, DocKind } from '../core/parts/doc';
import type { LoadedFile, Loader } from './loader';
import { PartIndex } from './part-index';

/** Proven fixes of findings, best first. */
interface Mended {
  readonly of: ReadonlyMap<Finding, readonly ProvenFix[]>;
  /** Findings whose fixes were not looked for. */
  readonly notSought: number;
}

/** Which fixes of a finding are looked for. */
export type Wanted = 'first' | 'all';

/** So many findings of a run have fixes looked for, unless all fixes are wanted; more where its builds are many. */
const mostMended = 34;
const mostOfLargeRun = 200;
/** Each build has this many of its findings looked into, however many builds a run has, up to the most above. */
const leastOfBuild = 2;
/** No fix is looked for in a longer text, in UTF-16 units: each proof judges all of it again. */
const longestMended = 20_000;
/** Trying the parts of a folder in a place is left to `fettle swap` where there are more. */
const mostParts = 400;

/** How many fixes a run still looks for, and how they are shared out. */
export class Budget {
  left: number;

  /** @param builds how many builds are still to come: what is left is shared among them. */
  constructor(
    wanted: Wanted,
    public builds: number,
  ) {
    this.left = wanted === 'all' ? Infinity : Math.max(mostMended, Math.min(mostOfLargeRun, builds * leastOfBuild));
  }

  /** What one file may take: of a build its part of what is left, of any other what the builds can spare. */
  shareOf(kind: DocKind): number {
    if (kind !== 'build')
      return Math.ceil(Math.max(0, Math.min(this.left - this.builds * leastOfBuild, mostMended / 4)));
    return Math.min(Math.max(leastOfBuild, Math.ceil(this.left / Math.max(1, this.builds))), this.left);
  }

  /** A file had its turn; the blocks of a guide are no builds that were counted. */
  passed(kind: DocKind, isBlock: boolean): void {
    if (kind === 'build' && !isBlock) this.builds = Math.max(0, this.builds - 1);
  }
}

/** The findings whose fixes a run would look for. */
export const mendable = (listed: readonly Finding[]): readonly Finding[] =>
  listed.filter((finding) => finding.fixes && !finding.accepted);

/** Whether no fixes are looked for in a text, for its length. */
export const isTooLong = (doc: Doc, wanted: Wanted): boolean => wanted === 'first' && doc.text.length > longestMended;

export class Mending {
  readonly budget: Budget;
  private readonly index: PartIndex;

  /** @param builds how many builds are still to come: what is left is shared among them. */
  constructor(
    loader: Loader,
    private readonly wanted: Wanted,
    builds: number,
  ) {
    this.budget = new Budget(wanted, builds);
    // What cannot be read in a parts folder is told where it is judged.
    this.index = new PartIndex(loader.texts, { tell: () => undefined });
  }

  /** Whether fixes are looked for in what comes. */
  get isOpen(): boolean {
    return this.budget.left > 0;
  }

  /** So many builds were looked at elsewhere, and no fix was looked for in them. */
  pass(builds: number): void {
    this.budget.builds = Math.max(0, this.budget.builds - builds);
  }

  /** No more fixes are looked for, unless all are wanted. */
  close(): void {
    if (this.wanted === 'first') this.budget.left = 0;
  }

  /** The fixes of the findings that are listed of a file, worst findings first. */
  async fixesOf(
    { doc, judgement, block }: { readonly doc: Doc; readonly judgement: Judgement; readonly block?: number },
    file: LoadedFile | undefined,
    listed: readonly Finding[],
  ): Promise<Mended> {
    const fixes = new Map<Finding, readonly ProvenFix[]>();
    const share = this.budget.shareOf(doc.kind);
    this.budget.passed(doc.kind, block !== undefined);
    const all = mendable(listed);
    for (const finding of all.slice(0, isTooLong(doc, this.wanted) ? 0 : share)) {
      this.budget.left--;
      fixes.set(finding, await this.proven(finding, { doc, judgement }, file));
    }
    return { of: fixes, notSought: all.length - fixes.size };
  }

  private async proven(
    finding: Finding,
    { doc, judgement }: { readonly doc: Doc; readonly judgement: Judgement },
    file: LoadedFile | undefined,
  ): Promise<readonly ProvenFix[]> {
    if (file?.build) return (await this.inBuild(file, finding)).filter((fix) => staysWithin(doc, fix));
    const { guide } = file ?? {};
    const all = guide ? provenGuideFixes(guide, judgement, finding) : provenFileFixes(doc, judgement, finding);
    return this.wanted === 'all' ? all : all.slice(0, 1);
  }

  private async inBuild(file: LoadedFile, finding: Finding): Promise<readonly ProvenFix[]> {
    const { build, judgement } = file;
    const byKind = new Map<Kind, readonly Candidate[]>();
    for (const kind of kindsSought(finding)) byKind.set(kind, await this.parts(file, kind));
    const candidates = (kind: Kind): readonly Candidate[] => byKind.get(kind) ?? [];
    if (this.wanted === 'all') return provenFixes(build!, judgement, finding, candidates);
    const best = bestFix(build!, judgement, finding, candidates);
    return best ? [best] : [];
  }

  /** All that decides which parts are tried as fixes of a file, as a text: where they are few, they are held whole. */
  async partsTried(asking: Parameters<PartIndex['files']>[0]): Promise<string> {
    const files = await this.index.files(asking);
    const names = [...files.keys()];
    if (this.wanted !== 'all' && files.size > mostParts) return JSON.stringify(names);
    const texts = [...files.values()].map(({ host, root, name }) => host.read(root, name));
    return JSON.stringify([names, await Promise.all(texts)]);
  }

  private async parts(file: LoadedFile, kind: Kind): Promise<readonly Candidate[]> {
    const isFew = this.wanted === 'all' || (await this.index.count(file)) <= mostParts;
    return isFew ? this.index.ofKind(file, kind) : [];
  }
}
