// The findings of a run as the comment of a pull request, where nothing is compared: build by build, worst first.
import type { Language } from '../core/words/language';
import { languageOf } from '../core/words/names';
import { grades } from '../core/manifest/house-file';
import type { Finding } from '../core/judge/finding';
import { closingLines, countedFindings } from './closing-text';
import { code, commentText, firstOf, foldedBelow, mostRows, prose, table } from './comment-parts';
import { findingLines } from './finding-text';
import { Capped } from './capped';
import { lineOf, listed, type FormatOptions, type Section } from './section';
import type { Tally } from './tally';

interface Part {
  readonly row: readonly string[];
  readonly block: string;
}

/** A comment holds no more files than these, each with a finding. */
const mostFiles = 200;
const mostFindings = 25;

export class FindingsComment {
  private readonly parts = new Capped<Part>(mostFiles);

  constructor(private readonly look: FormatOptions) {}

  add(section: Section): void {
    const findings = listed(section, { from: this.look.from, accepted: false });
    const [first] = findings;
    if (!first) return;
    this.parts.add(grades.indexOf(first.grade) * 1e6 - findings.length, () => this.partOf(section, findings));
  }

  /** @param isSince whether only what a change brings is listed: then it is empty where it brings nothing. */
  text(
    tally: Tally,
    troubles: readonly { readonly path: string; readonly trouble: string }[],
    isSince: boolean,
  ): string {
    const { look } = this;
    const { language } = look;
    const parts = this.parts.all;
    if (isSince && parts.length + troubles.length === 0) return '';
    const rows = parts.slice(0, mostRows).map(({ row }) => row);
    const more = this.parts.offered - rows.length;
    const told = troubles.map(
      ({ path, trouble }) => `- ${path === '' ? '' : `${code(path)}: `}${prose(language.plain(trouble))}`,
    );
    return commentText({
      heading: `Fettle: ${prose(countedFindings(tally) || language.word('No findings.'))}`,
      seen: [
        ...(rows.length > 0
          ? [table([language.word('Build or file'), language.word('Findings'), language.word('The worst')], rows)]
          : []),
        ...foldedBelow(more, language),
        closingLines(tally, look, troubles.length).map(prose).join(' '),
      ],
      summary: language.word('Findings, file by file'),
      language,
      folded: [
        ...(told.length > 0
          ? [() => `#### ${language.word('Not read')}\n\n${firstOf(told, mostFindings, language).join('\n')}`]
          : []),
        ...parts.map(
          ({ block }) =>
            () =>
              block,
        ),
      ],
      alsoCut: this.parts.cut,
    });
  }

  private partOf(section: Section, findings: readonly Finding[]): Part {
    const language = languageOf(this.look.language, section.build);
    const file = this.look.shown(section.doc);
    const name = prose(section.title ?? file);
    const byGrade = grades.flatMap((grade) => {
      const count = findings.filter((finding) => finding.grade === grade).length;
      return count > 0 ? [`${count} ${grade}`] : [];
    });
    const cautioned = new Map<string, string>();
    const lines = findings.slice(0, mostFindings).map((finding) => this.lineOf(finding, section, cautioned, language));
    const more =
      findings.length > mostFindings
        ? [`- ${this.look.language.words`… and ${findings.length - mostFindings} more`}`]
        : [];
    const heading = `${section.title ? `${prose(section.title)}, ` : ''}${code(file)}`;
    return {
      row: [`**${name}**`, byGrade.join(', '), prose(language.said(findings[0]!.said))],
      block: `#### ${heading}\n\n${[...lines, ...more].join('\n')}`,
    };
  }

  private lineOf(finding: Finding, section: Section, cautioned: Map<string, string>, language: Language): string {
    const { grade, id, subject, underline } = finding;
    const head = `- **${grade}** ${code(lineOf(underline, this.look))}, ${code(subject)}`;
    const lines = findingLines(finding, section.fixes, language, cautioned);
    return `${head}: ${lines.map(prose).join(' · ')} (${id})`;
  }
}
