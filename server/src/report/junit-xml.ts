// Findings as JUnit XML, one suite a file and one case a finding, as they come. Source: GitLab Docs, “Unit test
// reports”; Jenkins, “JUnit” reports.
import type { Finding } from '../core/judge/finding';
import type { Grade } from '../core/manifest/house-file';
import { atLeastAsBad } from '../core/build/workspace-config';
import { htmlText } from '../core/text';
import type { Language } from '../core/words/language';
import { acceptedWords, findingLines } from './finding-text';
import { Room, utf8Bytes } from './capped';
import { readerLimits } from './reader-limits';
import { lineOf, listed, type FormatOptions, type Section } from './section';

interface Case {
  readonly name: string;
  /** The file that it is of. */
  readonly file: string;
  readonly line?: number;
  readonly end: 'failure' | 'error' | 'skipped' | 'passed';
  readonly grade?: Grade;
  readonly said: string;
  readonly more?: string;
}

export class JunitXml {
  private readonly bytes = new Room(readerLimits.junitBytes.most - keptFree);
  private readonly cases = new Room(readerLimits.junitCases.most - 1);

  /** @param fails the lightest grade that a case fails by. */
  constructor(private readonly fails: Grade) {}

  readonly opening = '<?xml version="1.0" encoding="UTF-8"?>\n<testsuites name="fettle">\n';

  section(section: Section, look: FormatOptions): string {
    const { doc, title, judgement, block } = section;
    const file = look.shown(doc);
    // Blocks of a guide share a file.
    const of = block === undefined ? '' : look.language.words`, block ${block}`;
    const names = new Map<string, number>();
    const cases = listed(section, { from: look.from, accepted: true }).map((finding) => {
      const name = `${finding.id}: ${finding.subject}${of}`;
      const nth = (names.get(name) ?? 0) + 1;
      names.set(name, nth);
      // Of two cases of one name readers see the first alone.
      return this.caseOf(finding, nth === 1 ? name : `${name} (${nth})`, section, look);
    });
    const { held, unknown } = judgement.counts;
    const { language } = look;
    const rest = language.words`Answers that hold: ${held}; that wait for facts: ${unknown}.`;
    cases.push({ name: `${language.word('everything else')}${of}`, file, end: 'passed', said: rest });
    return this.suite(title === undefined ? `${file}${of}` : `${title} (${file}${of})`, cases);
  }

  /** What was not read, and what did not find room. */
  closing(
    troubles: readonly { readonly path: string; readonly trouble: string }[],
    notListed: number,
    language: Language,
  ): string {
    const [name, missing] = [language.word('not read'), language.word('not listed')];
    const unread = troubles.map(({ path, trouble }, i): Case => {
      const file = path === '' ? '.' : path;
      return { name: `${name} (${i + 1})`, file, end: 'error', said: trouble };
    });
    const suite = unread.length > 0 ? this.suite(name, unread) : '';
    const cut = this.bytes.cut + this.cases.cut + notListed;
    const said = language.words`Findings that are not listed, to keep to what readers take: ${cut}.`;
    const last: Case = { name: missing, file: '.', end: 'error', said };
    const more = cut > 0 ? suiteText(missing, [{ end: last.end, text: caseText(last) }]) : '';
    return `${suite}${more}</testsuites>\n`;
  }

  private caseOf(finding: Finding, name: string, section: Section, look: FormatOptions): Case {
    const { grade, accepted, check, underline } = finding;
    const [said, ...more] = findingLines(finding, section.fixes, look.language);
    const fails = atLeastAsBad(grade, this.fails);
    const place = `${grade}, ${lineOf(underline, look)}`;
    return {
      name,
      file: look.shown(underline.doc),
      line: underline.doc.lines.positionAt(underline.span.start).line + 1,
      grade,
      end: check.unread
        ? 'error'
        : accepted || (grade === 'unknown' && !fails)
          ? 'skipped'
          : fails
            ? 'failure'
            : 'passed',
      said: accepted ? acceptedWords(finding, look.language) : said!,
      more: [place, ...(accepted ? [said!] : []), ...more].join('\n'),
    };
  }

  /** Of the cases those that find room. */
  private suite(name: string, cases: readonly Case[]): string {
    const fitting = cases.flatMap((one) => {
      const isBad = one.end === 'failure' || one.end === 'error';
      if (!this.cases.takes(1, isBad)) return [];
      const text = caseText(one);
      return this.bytes.takes(utf8Bytes(text), isBad) ? [{ end: one.end, text }] : [];
    });
    return fitting.length > 0 ? suiteText(name, fitting) : '';
  }
}

/** For what stands around the cases. */
const keptFree = 5_000;

interface Written {
  readonly end: Case['end'];
  readonly text: string;
}

function suiteText(name: string, cases: readonly Written[]): string {
  const count = (end: Case['end']): number => cases.filter((one) => one.end === end).length;
  const counts = `failures="${count('failure')}" errors="${count('error')}" skipped="${count('skipped')}"`;
  const head = `<testsuite name="${htmlText(name)}" tests="${cases.length}" ${counts} time="0">`;
  return `${head}\n${cases.map(({ text }) => text).join('')}</testsuite>\n`;
}

function caseText({ name, file, line, end, grade, said, more }: Case): string {
  const at = line === undefined ? '' : ` line="${line}"`;
  const of = htmlText(file);
  const head = `<testcase name="${htmlText(name)}" classname="${of}" file="${of}"${at} time="0">`;
  const text = lines(more ?? '');
  if (end === 'passed') return `${head}<system-out>${lines(said)}${text && `\n${text}`}</system-out></testcase>\n`;
  const type = end === 'skipped' ? '' : ` type="${grade ?? 'not read'}"`;
  return `${head}<${end} message="${htmlText(said)}"${type}>${text}</${end}></testcase>\n`;
}

const lines = (text: string): string => text.split('\n').map(htmlText).join('\n');
