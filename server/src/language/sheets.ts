// Bench sheets of builds for as long as somebody looks at them: blocks that changed, places both ways, whole files.
import { languageOf } from '../core/words/names';
import type { CancellationToken } from 'vscode-languageserver/node';
import type { Judgement } from '../core/judge/finding';
import type { Doc } from '../core/parts/doc';
import { dataOfFindings, keyOfData, type DiagnosticData } from '../features/diagnostic-data';
import { placeOfKey, placesOfLine } from '../features/sheet-places';
import type { Location } from '../features/shapes';
import { printed, sheetBlocks, sheetPage, type HtmlBlock } from '../report/sheet/html';
import { Kept } from '../report/sheet/kept';
import { sheetMarkdown } from '../report/sheet/markdown';
import { pictureBlocks, sheetOf } from '../report/sheet/sheet';
import { sheetStyle } from '../report/sheet/style';
import type { Sheet } from '../report/sheet/model';
import { Mending } from '../session/mending';
import type { AnalyzedFile } from '../session/session';
import type { Findings, Shared } from './findings';
import { guarded } from './guard';
import type { ToServer } from './requests';

type Answer<M extends keyof ToServer> = ToServer[M]['result'];
type Params<M extends keyof ToServer> = ToServer[M]['params'];
type JudgedBuild = AnalyzedFile & Required<Pick<AnalyzedFile, 'build'>>;

/** A sheet as it was last made. */
interface Made {
  readonly id: string;
  readonly version: number | null;
  readonly title: string;
  readonly blocks: readonly HtmlBlock[];
  readonly kept: Kept;
  /** What its pictures show; the rest may still be of an earlier text. */
  readonly pictured: JudgedBuild;
  readonly more: boolean;
  /** The sheet before, so that whoever has that one is sent what is new alone. */
  readonly before?: { readonly id: string; readonly html: ReadonlyMap<string, string> };
  /** Files that could not be read as YAML when it was made. */
  readonly broken: ReadonlySet<string>;
}

/** What was asked for last, and what it rests on. */
interface Watched {
  readonly judged: JudgedBuild;
  /** Whether it leaves out what its writer is still at. */
  readonly waits: boolean;
}

/** So many sheets are kept; a panel shows one. */
const mostKept = 4;

export class Sheets {
  private readonly made = new Map<string, Made>();
  /** Sheets whose reader is to be told once when they are others. */
  private readonly watched = new Map<string, Watched>();
  private count = 0;
  /** A client may know names that another run of the server gave. */
  private readonly run = Math.random().toString(36).slice(2);

  constructor(
    private readonly shared: Shared,
    private readonly findings: Findings,
    private readonly today: () => string,
  ) {}

  /** Registers the answers. */
  register(): void {
    const { connection, log } = this.shared;
    const on = <M extends keyof ToServer>(
      method: M,
      answer: (params: Params<M>, token: CancellationToken) => Answer<M> | Promise<Answer<M>>,
    ): void =>
      void connection.onRequest<unknown, void>(method, guarded<Params<M>, unknown>(method, log, answer) as never);
    on('fettle/sheet', (params) => this.sheet(params));
    on('fettle/sheetStyle', () => ({ css: sheetStyle }));
    on('fettle/sheetPlace', (params) => this.place(params));
    on('fettle/sheetPlaces', (params) => this.places(params));
    on('fettle/sheetFile', (params) => this.file(params));
  }

  /** Something changed: readers of sheets that it touches are told, once until they ask again. */
  changed(): void {
    for (const [uri, { judged }] of this.watched) if (!this.shared.session.holds(judged)) this.tell(uri);
  }

  /** Writers paused: what sheets left out is put in. */
  settled(): void {
    for (const [uri, { waits }] of this.watched) if (waits) this.tell(uri);
  }

  private tell(uri: string): void {
    this.watched.delete(uri);
    void this.shared.connection.sendNotification('fettle/sheetChanged', { uri });
  }

  private async judge(uri: string): Promise<JudgedBuild | undefined> {
    const judged = await this.shared.session.judge(uri);
    return judged?.build && (judged as JudgedBuild);
  }

  private async sheet(params: Params<'fettle/sheet'>): Promise<Answer<'fettle/sheet'>> {
    const { textDocument, have, picturesFirst } = params;
    const { uri } = textDocument;
    const judged = await this.judge(uri);
    if (!judged) return null;
    const waiting = this.findings.waiting(uri, judged);
    this.watched.set(uri, { judged, waits: waiting.length > 0 });
    // A file that was waited for may be another by now.
    if (!this.shared.session.holds(judged)) this.tell(uri);
    const before = this.made.get(uri);
    const broken = brokenIn(judged);
    const isOld =
      before !== undefined && (isNewIn(broken, before.broken) || waiting.some(({ check }) => check === nameBegun));
    if (isOld) return answerOf(before, have, true);
    const judgement = without(judged.judgement, waiting);
    const pictured = picturesFirst && before && before.pictured !== judged;
    const made =
      (pictured && this.makePictures(judged, judgement, before)) || this.make(judged, judgement, broken, before);
    this.keep(uri, made);
    return answerOf(made, have, false);
  }

  /** The sheet before with the pictures of now; undefined where they are the same, or others. */
  private makePictures(judged: JudgedBuild, judgement: Judgement, before: Made): Made | undefined {
    const { kept, blocks } = before;
    const drawn = printed(
      pictureBlocks(judged.build, judgement, kept, languageOf(this.shared.language, judged.build)),
      kept,
      this.shared.language,
    );
    const now = new Map(drawn.map((block) => [block.id, block]));
    const old = blocks.filter(({ id }) => id.startsWith('picture-'));
    const isAlike = old.length === drawn.length && old.every(({ id }, i) => id === drawn[i]!.id);
    if (!isAlike || old.every(({ id, html }) => now.get(id)!.html === html)) return undefined;
    return {
      ...before,
      id: this.nextId(),
      version: judged.version,
      blocks: blocks.map((block) => now.get(block.id) ?? block),
      pictured: judged,
      more: true,
      before: { id: before.id, html: htmlOf(blocks) },
    };
  }

  private nextId(): string {
    return `${this.run}-${++this.count}`;
  }

  private make(judged: JudgedBuild, judgement: Judgement, broken: ReadonlySet<string>, before: Made | undefined): Made {
    const kept = before?.kept ?? new Kept();
    const sheet = this.sheetOf(judged, judgement, kept);
    const blocks = sheetBlocks(sheet, kept);
    const html = before && htmlOf(before.blocks);
    const isSame = before?.blocks.length === blocks.length && blocks.every((one) => html?.get(one.id) === one.html);
    if (before && isSame) return { ...before, version: judged.version, broken, pictured: judged, more: false };
    return {
      id: this.nextId(),
      version: judged.version,
      title: sheet.title,
      blocks,
      kept,
      pictured: judged,
      more: false,
      broken,
      ...(before && html ? { before: { id: before.id, html } } : {}),
    };
  }

  private sheetOf({ build, doc }: JudgedBuild, judgement: Judgement, kept: Kept): Sheet {
    return sheetOf(build, judgement, {
      date: this.today(),
      fileName: doc.name,
      kept,
      language: languageOf(this.shared.language, build),
    });
  }

  /** As `fettle sheet` prints it: with the fixes that are proven. */
  private async wholeSheet(judged: JudgedBuild): Promise<Sheet> {
    const { build, doc, judgement } = judged;
    const listed = judgement.findings.filter(({ grade }) => grade !== 'unknown');
    const { of: fixes } = await new Mending(this.shared.session.loader, 'first', 1).fixesOf(judged, judged, listed);
    return sheetOf(build, judgement, {
      date: this.today(),
      fileName: doc.name,
      fixes,
      language: languageOf(this.shared.language, build),
    });
  }

  private keep(uri: string, made: Made): void {
    this.made.delete(uri);
    this.made.set(uri, made);
    const [oldest] = this.made.keys();
    if (this.made.size > mostKept && oldest !== undefined) this.made.delete(oldest);
  }

  private async place(params: Params<'fettle/sheetPlace'>): Promise<Location | null> {
    const judged = await this.judge(params.textDocument.uri);
    return (judged && placeOfKey(judged, params.place, params.definition === true)) ?? null;
  }

  private async places(params: Params<'fettle/sheetPlaces'>): Promise<Answer<'fettle/sheetPlaces'>> {
    const { textDocument, position, build = textDocument.uri } = params;
    const judged = await this.judge(build);
    const doc = judged && docAt(this.shared, judged, textDocument.uri);
    return doc ? placesOfLine(judged, doc, position.line) : { on: [], around: [] };
  }

  private async file({ textDocument, form, paper }: Params<'fettle/sheetFile'>): Promise<Answer<'fettle/sheetFile'>> {
    const judged = await this.judge(textDocument.uri);
    if (!judged) return null;
    const sheet = await this.wholeSheet(judged);
    return { text: form === 'markdown' ? sheetMarkdown(sheet) : sheetPage(sheet, { paper: paper ?? 'a4' }) };
  }
}

const htmlOf = (blocks: readonly HtmlBlock[]): ReadonlyMap<string, string> =>
  new Map(blocks.map(({ id, html }) => [id, html]));

/** What a name is that names no part yet: while it is written, all that rests on the part would come and go. */
const nameBegun = 'part-not-found';

/** Files under a build that cannot be read as YAML. */
function brokenIn({ reads }: AnalyzedFile): ReadonlySet<string> {
  const isBroken = (doc: Doc): boolean => doc.parsed.problems.some(({ code }) => code === 'yaml-syntax');
  return new Set([...reads].flatMap(([path, doc]) => (doc && isBroken(doc) ? [path] : [])));
}

const isNewIn = (now: ReadonlySet<string>, before: ReadonlySet<string>): boolean =>
  [...now].some((path) => !before.has(path));

/** A judgement without what its writer is still at. */
function without(judgement: Judgement, waiting: readonly DiagnosticData[]): Judgement {
  if (waiting.length === 0) return judgement;
  const left = new Set(waiting.map(keyOfData));
  const data = dataOfFindings(judgement.findings);
  return { ...judgement, findings: judgement.findings.filter((finding) => !left.has(keyOfData(data.get(finding)!))) };
}

/** The file of an address among those that a build rests on. */
function docAt({ session }: Shared, { doc, uri, reads }: AnalyzedFile, at: string): Doc | undefined {
  if (at === uri) return doc;
  const path = session.pathOf(at);
  return path === undefined ? undefined : reads.get(path);
}

/** A sheet for whoever has another: one that has the sheet before is sent what is new alone. */
function answerOf(made: Made, have: string | undefined, old: boolean): Answer<'fettle/sheet'> {
  const { id, version, title, blocks, before, more } = made;
  const known = have === id ? htmlOf(blocks) : before?.id === have && before?.html;
  return {
    id,
    version,
    title,
    old,
    order: blocks.map((block) => block.id),
    blocks: known ? blocks.filter((block) => known.get(block.id) !== block.html) : blocks,
    whole: !known,
    // Of an old sheet nothing more is made.
    more: more && !old,
  };
}
