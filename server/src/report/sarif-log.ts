// A SARIF log as a whole: its results within what readers take, its rules with their help, what was cut and not read.
import { checks } from '../core/checks/all';
import { pageOf } from '../core/checks/page';
import type { Finding } from '../core/judge/finding';
import { grades, type Grade } from '../core/manifest/house-file';
import { visible } from '../core/text';
import type { Language } from '../core/words/language';
import { toJson } from './json';
import { Capped, utf8Bytes as bytes } from './capped';
import { readerLimits } from './reader-limits';

interface Result {
  readonly id: string;
  whole: string;
  /** Without working, related places and fixes. */
  readonly brief: string;
}

interface NotRead {
  readonly path: string;
  readonly trouble: string;
}

const pastWords = (cut: number, language: Language): string =>
  cut === 1
    ? language.word('1 finding is past what readers take.')
    : language.words`${cut} findings are past what readers take.`;

export interface LogFacts {
  readonly version: string;
  readonly language: Language;
  /** A check’s page in Markdown. */
  readonly page: (id: string) => string | undefined;
}

const checkById = new Map(checks.map((check) => [check.id, check]));
const mostNotRead = 100;

export class SarifLog {
  private readonly results = new Capped<Result>(readerLimits.sarifResults.most);
  /** What is held of whole results, in UTF-16 units. */
  private held = 0;

  constructor(private readonly facts: LogFacts) {}

  /** @param make the result as JSON, with all details or without. */
  add(id: string, rank: number, make: (isWhole: boolean) => string): void {
    this.results.add(rank, () => {
      const result = { id, whole: make(true), brief: make(false) };
      this.held += result.whole.length;
      return result;
    });
    if (this.held > 3 * readerLimits.sarifBytes.most) this.lighten();
  }

  /** Details that the file will not hold are not kept. */
  private lighten(): void {
    let kept = 0;
    for (const result of this.results.all) {
      kept += result.whole.length;
      if (kept > readerLimits.sarifBytes.most) result.whole = result.brief;
    }
    this.held = Math.min(kept, readerLimits.sarifBytes.most);
  }

  /** @param run what was compared, counted and left out, as it is to stand in the log. */
  text(run: object, troubles: readonly NotRead[], notListed = 0): string {
    const { version, language } = this.facts;
    const { results, isBrief } = this.fitting();
    const cut = this.results.offered - results.length + notListed;
    const ids = [...new Set(results.map(({ id }) => id))].sort();
    const notes = [
      ...(cut > 0 ? [note('warning', pastWords(cut, language))] : []),
      ...(isBrief
        ? [note('note', language.word('The lighter results stand without their working, to fit into the file.'))]
        : []),
      ...troubles.slice(0, mostNotRead).map(({ path, trouble }) => note('error', trouble, path)),
      ...(troubles.length > mostNotRead
        ? [
            note(
              'error',
              language.words`Files or checks that could not be read or run, too: ${troubles.length - mostNotRead}.`,
            ),
          ]
        : []),
    ];
    const driver = { name: 'Fettle', version, rules: ids.map((id) => this.ruleOf(id)) };
    const about = {
      tool: { driver },
      language: /^[a-z]{2}$/.test(language.tag) ? language.tag : 'en',
      columnKind: 'utf16CodeUnits',
      newlineSequences: ['\r\n', '\n', '\r'],
      originalUriBaseIds: { [base]: { description: { text: language.word('The folder that the command ran in.') } } },
      invocations: [{ executionSuccessful: troubles.length === 0, toolExecutionNotifications: notes }],
      properties: run,
    };
    const head = `{\n"$schema": ${toJson(schema)},\n"version": "2.1.0",\n"runs": [\n`;
    const body = results.map(({ json }) => json).join(',\n');
    return `${head}${toJson(about).slice(0, -1)},\n"results": [\n${body}\n]}\n]\n}\n`;
  }

  /** As many results as the file holds, the worst first; as many of them with all details as it holds then. */
  private fitting(): { results: { id: string; json: string }[]; isBrief: boolean } {
    const all = this.results.all;
    const pages = new Map<string, number>();
    for (const { id } of all) pages.set(id, pages.get(id) ?? bytes(toJson(this.ruleOf(id))));
    let room = readerLimits.sarifBytes.most - keptFree - [...pages.values()].reduce((a, b) => a + b, 0);
    const briefs = all.map(({ brief }) => bytes(brief) + 2);
    const results: { id: string; json: string }[] = [];
    for (const [i, { id, brief }] of all.entries()) {
      room -= briefs[i]!;
      if (room < 0) break;
      results.push({ id, json: brief });
    }
    room = Math.max(0, room);
    let isBrief = false;
    for (const [i, result] of results.entries()) {
      const more = bytes(all[i]!.whole) + 2 - briefs[i]!;
      if (more > room) isBrief = true;
      if (isBrief) break;
      room -= more;
      result.json = all[i]!.whole;
    }
    return { results, isBrief };
  }

  private ruleOf(id: string): object {
    const check = checkById.get(id);
    if (!check) return { id };
    const { grade, area, source, ...page } = pageOf(check);
    const { language } = this.facts;
    const [what, why, ...besides] = [page.what, page.why, ...page.limits, ...page.remarks].map((one) =>
      language.word(one),
    );
    const markdown = this.facts.page(id);
    const text = [what, why, language.words`Source: ${source}.`, ...besides].join(' ');
    return {
      id,
      shortDescription: { text: what! },
      fullDescription: { text: `${what} ${why}` },
      help: { text, ...(markdown ? { markdown } : {}) },
      defaultConfiguration: { level: levelOf(grade) },
      properties: { tags: [area], grade, 'problem.severity': severityOf(grade) },
    };
  }
}

/** For what stands around the results. */
const keptFree = 200_000;
const base = '%SRCROOT%';
const schema = 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json';

function note(level: 'note' | 'warning' | 'error', text: string, path = ''): object {
  const at = path === '' ? {} : { locations: [{ physicalLocation: { artifactLocation: artifact(path) } }] };
  return { level, message: { text: plainText(text) }, ...at };
}

export const levelOf = (grade: Grade): 'error' | 'warning' | 'note' =>
  grade === 'harm' || grade === 'stop' ? 'error' : grade === 'shortfall' ? 'warning' : 'note';

const severityOf = (grade: Grade): string =>
  ({ error: 'error', warning: 'warning', note: 'recommendation' })[levelOf(grade)];

/** What was not read comes first, what is accepted last. */
export const rankOf = ({ check, grade, accepted }: Finding): number =>
  check.unread ? -1 : grades.indexOf(grade) + (accepted ? grades.length : 0);

/** An address relative to the folder that the command ran in, each step encoded. */
export function artifact(path: string): object {
  const steps = path.split('/').map((step) => encodeURIComponent(step.replace(/\p{Surrogate}/gu, '\ufffd')));
  return { uri: steps.join('/'), ...(path.startsWith('/') ? {} : { uriBaseId: base }) };
}

/** A text in which readers find no link, `[…](…)`, and no place to fill, `{0}`: plain messages have both. */
export const plainText = (text: string): string =>
  text
    .split('\n')
    .map(visible)
    .join('\n')
    .replaceAll('](', '] (')
    .replace(/\{(?=\d)/g, '{ ');
