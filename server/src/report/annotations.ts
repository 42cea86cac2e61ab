// Findings as workflow commands that put annotations beside the lines of a change: the worst of each kind, as many as
// are shown. Source: GitHub Docs, “Workflow commands for GitHub Actions”; actions/runner, ActionCommand.cs.
import type { Grade } from '../core/manifest/house-file';
import type { Range } from '../core/text';
import type { Language } from '../core/words/language';
import { findingLines } from './finding-text';
import { Capped } from './capped';
import { safe } from './layout';
import { readerLimits } from './reader-limits';
import { rankOf } from './sarif-log';
import { listed, type FormatOptions, type Section } from './section';

type Kind = 'error' | 'warning' | 'notice';

export interface Annotation {
  readonly file?: string;
  readonly range?: Range;
  readonly title: string;
  /** A line each. */
  readonly lines: readonly string[];
}

const kindOf = (grade: Grade): Kind =>
  grade === 'harm' || grade === 'stop' ? 'error' : grade === 'shortfall' ? 'warning' : 'notice';

export class Annotations {
  constructor(private readonly language: Language) {}

  private readonly kept = {
    error: new Capped<string>(readerLimits.annotationsOfKind.most),
    warning: new Capped<string>(readerLimits.annotationsOfKind.most),
    // One notice is left for saying what is not shown.
    notice: new Capped<string>(readerLimits.annotationsOfKind.most - 1),
  };

  /** @param rank the lower, the sooner it is shown. */
  add(grade: Grade, rank: number, make: () => Annotation): void {
    const kind = kindOf(grade);
    this.kept[kind].add(rank, () => command(kind, make()));
  }

  /** What was not read says so before anything that was found. */
  notRead(path: string, trouble: string): void {
    this.add('stop', -2, () => ({
      ...(path === '' ? {} : { file: path }),
      title: this.language.word('Not read'),
      lines: [trouble],
    }));
  }

  /** @param notListed findings that never came here. */
  text(notListed = 0): string {
    const { error, warning, notice } = this.kept;
    const cut = (['error', 'warning', 'notice'] as const)
      .map((kind) => ({ kind, count: this.kept[kind].cut + (kind === 'notice' ? notListed : 0) }))
      .filter(({ count }) => count > 0);
    const { language } = this;
    const more = cut.map(({ kind, count }) => language.words`${count} more of kind ${kind}`).join(', ');
    const said =
      cut.length === 0
        ? []
        : [
            command('notice', {
              title: language.word('Not all is shown'),
              lines: [
                language.words`${more}: not shown here, as no more than ${most} of a kind are. The other formats list
                  them.`,
              ],
            }),
          ];
    return [...error.all, ...warning.all, ...notice.all, ...said].join('');
  }
}

const most = readerLimits.annotationsOfKind.most;

/** Adds what a section lists and nobody accepted. */
export function annotate(annotations: Annotations, section: Section, look: FormatOptions): void {
  for (const finding of listed(section, { from: look.from, accepted: false }))
    annotations.add(finding.grade, rankOf(finding), () => ({
      file: look.shown(finding.underline.doc),
      range: finding.underline.doc.lines.rangeOf(finding.underline.span),
      title: `${finding.id} (${finding.grade})`,
      lines: [...(section.title ? [section.title] : []), ...findingLines(finding, section.fixes, look.language)],
    }));
}

/** One line of the log: nothing in it can end it, or begin another. */
function command(kind: Kind, { file, range, title, lines }: Annotation): string {
  const properties = [
    ...(file === undefined ? [] : [['file', safe(file)]]),
    ...(range ? placeOf(range) : []),
    ['title', safe(title)],
  ];
  const head = properties.map(([key, value]) => `${key}=${property(value!)}`).join(',');
  return `::${kind} ${head}::${data(lines.map(cut).map(safe).join('\n'))}\n`;
}

/** Columns are shown within one line only. */
function placeOf({ start, end }: Range): [string, string][] {
  const columns: [string, string][] =
    start.line === end.line && end.character > start.character
      ? [
          ['col', `${start.character + 1}`],
          ['endColumn', `${end.character + 1}`],
        ]
      : [];
  return [['line', `${start.line + 1}`], ['endLine', `${end.line + 1}`], ...columns];
}

const data = (text: string): string => text.replace(/[%\r\n]/g, encoded);
const property = (text: string): string => text.replace(/[%\r\n:,]/g, encoded);
const encoded = (character: string): string =>
  `%${character.charCodeAt(0).toString(16).toUpperCase().padStart(2, '0')}`;

/** A line that is longer than anybody reads is cut. */
const cut = (line: string): string =>
  line.length > longestLine ? `${[...line.slice(0, longestLine)].slice(0, -1).join('')}…` : line;
const longestLine = 1_000;
