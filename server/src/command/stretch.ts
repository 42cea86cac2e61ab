// A stretch of the files of a run, judged and printed into plain data: what one thread does for another.
import type { Doc, DocKind } from '../core/parts/doc';
import type { Language } from '../core/words/language';
import { languageFor } from '../core/words/languages';
import type { Host } from '../host/host';
import { listed } from '../report/section';
import { Tally, type TallyData } from '../report/tally';
import type { TextFormatOptions } from '../report/text';
import { Loader } from '../session/loader';
import type { RunTrouble } from '../session/run-trouble';
import type { Ours } from '../session/walk';
import { Judging, pathsOf, type CheckRun } from './judged';
import { isTooLong, mendable, Mending } from '../session/mending';
import { printers, type PrintedRun, type WholeFormat } from './printers';
import { movedIn } from './stale';

/** How sections are printed, as plain data. */
export type Look = Omit<TextFormatOptions, 'shown' | 'language'>;

/** What is the same for all stretches of a run, as plain data. */
export interface Setup {
  readonly files: readonly Ours[];
  readonly alone: boolean;
  readonly allFixes: boolean;
  readonly format: WholeFormat;
  readonly look: Look;
  readonly language: string;
  readonly run: PrintedRun;
}

/** Files of a run by their number, the last left out. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** One section as it is printed, with what it adds to the tally. */
export interface Piece {
  /** Undefined where its report failed. */
  readonly text: string | undefined;
  readonly tally: TallyData;
  readonly root: string;
  /** See `CheckRun`. */
  readonly brought?: string;
  /** The name of a file of known findings, and files that records speak of, where they were moved. */
  readonly known?: string;
  readonly moved: readonly string[];
  readonly kind: DocKind;
  readonly isBlock: boolean;
  /** Findings whose fixes a run may look for, and how many of them were looked into. */
  readonly mendable: number;
  readonly sought: number;
}

export interface StretchReport {
  readonly pieces: readonly Piece[];
  readonly troubles: readonly RunTrouble[];
  /** Findings whose fixes were not looked for. */
  readonly notSought: number;
}

/** What a thread does all its life; no fixes are looked for where a run looks for so many only. */
export function stretchesOf(host: Host, setup: Setup): (stretch: Stretch) => Promise<StretchReport> {
  const loader = new Loader(() => setup.run.on);
  const mending = new Mending(loader, setup.allFixes ? 'all' : 'first', 0);
  mending.close();
  const stretches = new Stretches(host, loader, setup, mending);
  return (stretch) => stretches.report(stretch);
}

export class Stretches {
  private readonly listed: ReadonlySet<string>;
  /** One for all: it keeps what it looked up. */
  private readonly language: Language;

  constructor(
    private readonly host: Host,
    private readonly loader: Loader,
    private readonly setup: Setup,
    private readonly mending: Mending,
  ) {
    this.listed = pathsOf(host, setup.files);
    this.language = languageFor(setup.language);
  }

  async report({ from, to }: Stretch): Promise<StretchReport> {
    const { files, alone } = this.setup;
    const { host, loader, listed } = this;
    const judging = new Judging({ host, loader, files: files.slice(from, to), listed, alone });
    const pieces: Piece[] = [];
    let notSought = 0;
    for await (const run of judging.sections()) {
      const piece = await this.piece(run, judging);
      notSought += piece.notSought;
      pieces.push(piece);
    }
    return { pieces, troubles: judging.troubles, notSought };
  }

  /** One section, printed. */
  async piece(run: CheckRun, judging: Judging): Promise<Piece & { readonly notSought: number }> {
    const { section, root, brought } = run;
    const { format, look: plain, run: printed } = this.setup;
    const shown = (doc: Doc): string => this.host.shown(root, doc.name);
    const look = { ...plain, shown, language: this.language };
    const tally = new Tally();
    tally.add(section);
    let sought = 0;
    const text = await judging.guarded(run, async () => {
      const fixes = await this.mending.fixesOf(section, run.file, listed(section, look));
      tally.notMended += fixes.notSought;
      sought = fixes.of.size;
      return printers[format](look, printed).section({ ...section, fixes });
    });
    return {
      text,
      tally: tally.data(),
      root,
      ...(brought === undefined ? {} : { brought }),
      ...(section.doc.kind === 'known' ? { known: section.doc.name } : {}),
      moved: movedIn(run),
      kind: section.doc.kind,
      isBlock: section.block !== undefined,
      mendable: isTooLong(section.doc, this.setup.allFixes ? 'all' : 'first')
        ? 0
        : mendable(listed(section, look)).length,
      sought,
      notSought: tally.notMended,
    };
  }
}
