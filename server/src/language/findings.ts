// Findings to the client: pulled where it pulls, pushed otherwise; never both for one file.
import { languageOf } from '../core/words/names';
import type { Connection, DocumentDiagnosticReport } from 'vscode-languageserver/node';
import { keyOfData, type DiagnosticData } from '../features/diagnostic-data';
import { worstFirst } from '../features/diagnostic-order';
import { diagnosticsOf } from '../features/diagnostics';
import { severities, type Diagnostic } from '../features/shapes';
import type { Language } from '../core/words/language';
import { Session, type AnalyzedFile } from '../session/session';
import type { Client } from './client';
import type { FolderSettings } from './folder-settings';
import type { Grace } from './grace';
import { wordsOf } from './guard';

/** What the connection’s parts share. */
export interface Shared {
  readonly connection: Connection;
  readonly session: Session;
  readonly log: (message: string) => void;
  client: Client;
  language: Language;
  readonly settings: FolderSettings;
}

export class Findings {
  /** What was last pushed for a file, by the name that its grace gave it. */
  private readonly pushed = new Map<string, string>();
  private readonly results = new WeakMap<AnalyzedFile, string>();
  private count = 0;

  constructor(
    private readonly shared: Shared,
    private readonly grace: Grace,
  ) {}

  /** The diagnostics of a judged file under the settings that hold. */
  shown(judged: AnalyzedFile): Diagnostic[] {
    const { settings, client, language } = this.shared;
    const { from } = settings.of(judged.uri);
    const { pages, hintsAbove: hintsApart } = client.own;
    const options = { from, related: client.related, hintsApart, pages };
    const all = [judged, ...Session.blocksOf(judged)].flatMap((one) =>
      diagnosticsOf(one, { ...options, language: languageOf(language, one.build) }),
    );
    return worstFirst(all);
  }

  /** Judges a file again and sends what came of it. Where all it rests on is at hand, before this returns. */
  refresh(uri: string): void {
    if (this.shared.session.kindAt(uri) === undefined || this.shared.client.pullsDiagnostics) return;
    try {
      const judged = this.shared.session.judge(uri);
      if (judged instanceof Promise)
        void judged.then((one) => this.push(uri, one)).catch((error: unknown) => this.failed(uri, error));
      else this.push(uri, judged);
    } catch (error) {
      this.failed(uri, error);
    }
  }

  /** After a change of one file: that file, and every open one that rests on it. */
  changed(uri: string): void {
    const others = this.shared.session.restingOn(uri).filter((other) => other !== uri);
    this.refresh(uri);
    for (const other of others) this.refresh(other);
    if (others.length > 0) this.askToPull();
  }

  refreshAll(): void {
    for (const uri of this.shared.session.openUris()) this.refresh(uri);
    this.askToPull();
  }

  /** Settings have changed: what was sent is to be sent anew, even where nothing else has changed. */
  forgetSent(): void {
    this.pushed.clear();
    this.grace.forget();
    this.count++;
  }

  /** Grace ended for files: what waited is shown. */
  settled(uris: readonly string[]): void {
    for (const uri of uris) this.refresh(uri);
    if (uris.length > 0) this.askToPull();
  }

  /**
   * Before a file is changed: notes what holds of it as it stands, where the client did not ask. Once its writer goes
   * elsewhere, that is shown.
   */
  note(uri: string): void {
    const { client, session } = this.shared;
    if (!client.pullsDiagnostics || session.kindAt(uri) === undefined) return;
    const judged = session.judge(uri);
    if (judged && !(judged instanceof Promise)) this.steady(uri, judged);
  }

  private steady(uri: string, judged: AnalyzedFile): ReturnType<Grace['take']> {
    return this.grace.take(uri, judged, () => this.shown(judged));
  }

  /** What holds of an open file and is not shown yet, since its writer is still at it. */
  waiting(uri: string, judged: AnalyzedFile): readonly DiagnosticData[] {
    if (judged.version === null || judged.version !== this.shared.session.versionAt(uri)) return [];
    const { shown, fresh } = this.steady(uri, judged);
    if (isSame(shown, fresh)) return [];
    const known = new Set(shown.flatMap(({ data }) => (data ? [keyOfData(data)] : [])));
    return fresh.flatMap(({ data }) => (data && !known.has(keyOfData(data)) ? [data] : []));
  }

  askToPull(): void {
    const { client, connection, log } = this.shared;
    if (client.pullsDiagnostics && client.refreshesDiagnostics)
      connection.languages.diagnostics
        .refresh()
        .catch((error: unknown) => log(`workspace/diagnostic/refresh: ${wordsOf(error)}`));
  }

  private push(uri: string, judged: AnalyzedFile | undefined): void {
    const { session } = this.shared;
    // A text that nothing ties to a build any more.
    if (!judged && this.pushed.delete(uri)) this.send(uri, [], session.versionAt(uri) ?? null);
    if (!judged || !session.isOpen(uri)) return;
    // A judging that was waited for may have been overtaken by the next.
    if (judged.version !== session.versionAt(uri)) return;
    const { shown, id } = this.steady(uri, judged);
    if (this.pushed.get(uri) === id) return;
    this.pushed.set(uri, id);
    this.send(uri, shown, judged.version);
    for (const { id, error } of judged.judgement.failed) this.shared.log(`check ${id} failed on ${uri}: ${error}`);
  }

  /** Nothing stale may stay: the file’s findings give way to one that says what happened. */
  private failed(uri: string, error: unknown): void {
    this.shared.log(`checking ${uri}: ${wordsOf(error)}`);
    this.pushed.delete(uri);
    this.send(uri, [failure(error, this.shared.language)], this.shared.session.versionAt(uri) ?? null);
  }

  /** Pushes diagnostics of any file. */
  send(uri: string, diagnostics: Diagnostic[], version: number | null): void {
    void this.shared.connection.sendDiagnostics({ uri, diagnostics, ...(version === null ? {} : { version }) });
  }

  /** A closed file shows nothing any more. */
  closed(uri: string): void {
    this.grace.closed(uri);
    if (this.pushed.delete(uri)) this.send(uri, [], null);
  }

  /** The answer to a pull. */
  async pull(uri: string, previous: string | undefined): Promise<DocumentDiagnosticReport> {
    const { session } = this.shared;
    const judged = session.kindAt(uri) === undefined ? undefined : await session.judge(uri);
    if (!judged) return { kind: 'full', items: [] };
    const { shown, id } = this.answered(uri, judged);
    return id === previous ? { kind: 'unchanged', resultId: id } : { kind: 'full', resultId: id, items: shown };
  }

  /** What is shown of an open file; of one that is not open, or that was changed meanwhile, what holds. */
  private answered(uri: string, judged: AnalyzedFile): { shown: Diagnostic[]; id: string } {
    const version = this.shared.session.versionAt(uri);
    if (version !== undefined && version === judged.version) return this.steady(uri, judged);
    let id = this.results.get(judged);
    if (id === undefined) this.results.set(judged, (id = `closed ${++this.count}`));
    return { shown: this.shown(judged), id: `${id}:${this.shared.settings.of(uri).from}` };
  }
}

const isSame = (shown: readonly Diagnostic[], fresh: readonly Diagnostic[]): boolean =>
  shown.length === fresh.length && shown.every((one, i) => one === fresh[i]);

export function failure(error: unknown, language: Language): Diagnostic {
  const why = error instanceof Error ? error.message : String(error);
  const said = language.words`This file could not be checked, by a fault of Fettle: ${why}. The log says more.`;
  return ofFile('not-checked', said);
}

export const notRead = (trouble: string, language: Language): Diagnostic =>
  ofFile('file-not-read', language.words`This file ${language.plain(trouble)}`);

/** A diagnostic of a file as a whole. */
function ofFile(code: string, message: string): Diagnostic {
  return {
    range: { start: { line: 0, character: 0 }, end: { line: 0, character: 1 } },
    severity: severities.error,
    code,
    source: 'fettle',
    message,
  };
}
