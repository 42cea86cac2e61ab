// The language server: one connection, from `initialize` to `exit`.
import {
  createConnection,
  DidChangeConfigurationNotification,
  DidChangeWatchedFilesNotification,
  FileChangeType,
  ProposedFeatures,
  type Connection,
  type MessageReader,
  type MessageWriter,
} from 'vscode-languageserver/node';
import type { Language } from '../core/words/language';
import { PartIndex } from '../session/part-index';
import type { RunTrouble } from '../session/run-trouble';
import { Session } from '../session/session';
import { Ahead } from './ahead';
import { answer } from './answers';
import { checkCommand, offered, watched } from './capabilities';
import { clientOf } from './client';
import { Completions } from './completions';
import { Documents } from './documents';
import { Findings, type Shared } from './findings';
import { FolderSettings } from './folder-settings';
import { AnswerWriter, GatedReader } from './gate';
import { Grace, type After } from './grace';
import { guarded, wordsOf } from './guard';
import { Across } from './across';
import { UseIndex } from '../session/use-index';
import { answerLayout, registerLayout } from './layout-answers';
import { answerNew } from './new-answers';
import { answerNames } from './name-answers';
import { answerHints, answerLenses } from './number-answers';
import { answerOutline, answerWorkspace } from './outline-answers';
import { Hosts, type MakeHost } from './hosts';
import { Refreshes } from './refreshes';
import { Sheets } from './sheets';
import { WaitingChanges } from './waiting-changes';
import type { CursorWent } from './requests';
import { WorkspaceDiagnostics } from './workspace-diagnostics';

export interface Environment {
  readonly makeHost: MakeHost;
  readonly version: string;
  /** The language that a tag of the client asks for. */
  readonly languageFor: (tag: string | undefined) => Language;
  readonly today: () => string;
  /** Lets everything else that waits have its turn. */
  readonly pause: () => Promise<void>;
  readonly after: After;
}

/** Serves a client until it ends the connection; `left` comes once nothing is owed any more to one that goes. */
export function serve(
  reader: MessageReader,
  writer: MessageWriter,
  environment: Environment,
): { readonly left: () => Promise<void> } {
  const answers = new AnswerWriter(writer);
  const changes = new WaitingChanges();
  const gate = new GatedReader(reader, answers, (message) => changes.came(message));
  const connection = createConnection(ProposedFeatures.all, gate, answers);
  new Server(connection, environment, changes).register();
  connection.listen();
  return { left: () => gate.left };
}

class Server {
  private readonly shared: Shared;
  private readonly hosts: Hosts;
  private readonly shelf: PartIndex;
  private readonly completions: Completions;
  private readonly across: Across;
  private readonly refreshes: Refreshes;
  private readonly grace: Grace;
  private readonly findings: Findings;
  private readonly sheets: Sheets;
  private readonly whole: WorkspaceDiagnostics;
  private readonly documents: Documents;

  constructor(
    private readonly connection: Connection,
    private readonly environment: Environment,
    changes: WaitingChanges,
  ) {
    const client = clientOf({ processId: null, rootUri: null, capabilities: {} });
    this.hosts = new Hosts(connection, environment.makeHost, () => this.shared.client.own.files === true);
    const session = new Session({ hostFor: this.hosts.hostFor, today: environment.today });
    this.shared = {
      connection,
      session,
      log: (message) => connection.console.error(message),
      client,
      language: environment.languageFor(undefined),
      settings: new FolderSettings(
        () => this.shared,
        () => this.hosts.folderUris,
      ),
    };
    const tell = ({ path, trouble }: RunTrouble): void => this.shared.log(path === '' ? trouble : `${path} ${trouble}`);
    this.shelf = new PartIndex(session.texts, { pause: environment.pause, tell });
    this.completions = new Completions(this.shared, this.shelf, environment.pause);
    const uses = new UseIndex(session.texts, {
      pause: environment.pause,
      tell,
      openPlaces: () => session.openPlaces(),
      evict: () => session.evict(),
    });
    this.across = new Across(this.shared, uses, environment.pause);
    this.refreshes = new Refreshes(this.shared);
    this.grace = new Grace(
      environment.after,
      () => this.shared.settings.pause,
      (uris) => this.settled(uris),
    );
    this.findings = new Findings(this.shared, this.grace);
    this.sheets = new Sheets(this.shared, this.findings, environment.today);
    this.whole = new WorkspaceDiagnostics(this.shared, this.hosts, this.findings, environment.pause);
    const ahead = new Ahead(this.shared, this.shelf, this.completions, environment.after);
    // Who looks at a sheet asks for it while the text is judged.
    const came = (): void => this.sheets.changed();
    const { shared, findings, whole, grace, hosts } = this;
    this.documents = new Documents(shared, findings, whole, grace, hosts, ahead, changes, came);
  }

  register(): void {
    const { connection, shared, documents } = this;
    connection.onInitialize((params) => {
      shared.client = clientOf(params);
      shared.language = this.environment.languageFor(shared.client.own.language ?? params.locale);
      this.hosts.setFolders(shared.client.folders);
      shared.settings.begin(shared.client.own.settings);
      return {
        capabilities: offered(shared.client),
        serverInfo: { name: 'fettle', version: this.environment.version },
      };
    });
    connection.onInitialized(this.step('initialized', () => this.begin()));
    connection.onShutdown(() => undefined);
    connection.onDidOpenTextDocument(
      this.step('textDocument/didOpen', (params) => this.touched(params, () => documents.opened(params))),
    );
    connection.onDidChangeTextDocument(
      this.step('textDocument/didChange', (params) => this.touched(params, () => documents.changed(params))),
    );
    connection.onDidCloseTextDocument(
      this.step('textDocument/didClose', (params) => this.touched(params, () => documents.closed(params))),
    );
    connection.onNotification(
      'fettle/cursor',
      this.step('fettle/cursor', (params: CursorWent) => documents.went(params)),
    );
    connection.onWillSaveTextDocument(
      this.step('textDocument/willSave', ({ textDocument, reason }) => this.grace.willSave(textDocument.uri, reason)),
    );
    connection.onDidSaveTextDocument(
      this.step('textDocument/didSave', ({ textDocument }) => this.saved(textDocument.uri)),
    );
    connection.onDidChangeWatchedFiles(
      this.step('workspace/didChangeWatchedFiles', ({ changes }) => this.onDisk(changes)),
    );
    connection.onDidChangeConfiguration(
      this.step('workspace/didChangeConfiguration', ({ settings }) =>
        this.configure((settings as { fettle?: unknown } | null)?.fettle),
      ),
    );
    answer(shared, this.across, this.shelf, this.completions, this.environment.pause);
    answerNames(shared, this.across, () => this.anew());
    answerLayout(shared);
    answerNew(shared, this.environment.today);
    answerOutline(shared, this.across);
    answerWorkspace(shared, this.across, () => this.hosts.folderUris);
    answerHints(shared, shared.settings.hintsFor);
    answerLenses(shared, this.findings, this.across, this.environment.pause);
    this.sheets.register();
    this.registerFindings();
  }

  private registerFindings(): void {
    const { connection, findings, whole } = this;
    const { log } = this.shared;
    connection.languages.diagnostics.on(
      guarded('textDocument/diagnostic', log, ({ textDocument, previousResultId }) =>
        findings.pull(textDocument.uri, previousResultId),
      ),
    );
    connection.languages.diagnostics.onWorkspace(
      guarded('workspace/diagnostic', log, (params, token) => whole.pull(params, token)),
    );
    connection.onRequest(
      'fettle/checkWorkspace',
      guarded('fettle/checkWorkspace', log, (_: unknown, token) => whole.check(token)),
    );
    connection.onExecuteCommand(
      guarded('workspace/executeCommand', log, ({ command }, token) =>
        command === checkCommand ? whole.check(token) : null,
      ),
    );
  }

  /** A notification has no answer: what throws is logged, and nothing after it is held up. */
  private step<P>(method: string, handle: (params: P) => void | Promise<void>): (params: P) => Promise<void> {
    return async (params) => {
      try {
        await handle(params);
      } catch (error) {
        this.shared.log(`${method}: ${wordsOf(error)}`);
      }
    };
  }

  /** Takes a change in; what other open files show of it is to be fetched anew. */
  private touched({ textDocument: { uri } }: { textDocument: { uri: string } }, take: () => void): void {
    take();
    this.refreshes.changed(uri);
    this.sheets.changed();
  }

  private settled(uris: readonly string[]): void {
    this.documents.settled(uris);
    if (uris.length > 0) this.refreshes.all();
    this.sheets.settled();
  }

  private async begin(): Promise<void> {
    const {
      connection,
      shared: { client },
    } = this;
    if (client.watches)
      await connection.client.register(DidChangeWatchedFilesNotification.type, {
        watchers: watched.map((globPattern) => ({ globPattern })),
      });
    await registerLayout(this.shared);
    if (client.workspaceFolders)
      connection.workspace.onDidChangeWorkspaceFolders(
        this.step('workspace/didChangeWorkspaceFolders', ({ added, removed }) =>
          this.folders(
            added.map(({ uri }) => uri),
            removed.map(({ uri }) => uri),
          ),
        ),
      );
    if (!client.configuration) return;
    await connection.client
      .register(DidChangeConfigurationNotification.type, { section: 'fettle' })
      .catch((error: unknown) => this.shared.log(`client/registerCapability: ${wordsOf(error)}`));
    await this.configure(undefined);
  }

  /** Takes settings as they were sent, or asks for them where the client answers that. */
  private async configure(sent: unknown): Promise<void> {
    const isOther = await this.shared.settings.configure(sent);
    this.refreshes.all();
    if (!isOther) return;
    this.findings.forgetSent();
    this.findings.refreshAll();
    await this.whole.again();
  }

  private async folders(added: readonly string[], removed: readonly string[]): Promise<void> {
    this.hosts.setFolders([...this.hosts.folderUris.filter((uri) => !removed.includes(uri)), ...added]);
    this.anew();
    if (this.shared.client.configuration) await this.configure(undefined);
  }

  /** A save ends the writing. Without watching, it is also the time at which files on disk may have changed. */
  private saved(uri: string): void {
    this.grace.saved(uri);
    if (!this.shared.client.watches) this.anew();
  }

  private anew(): void {
    this.hosts.setFolders(this.hosts.folderUris);
    this.shared.session.changedAnywhere();
    this.shelf.forget();
    this.across.index.changedAnywhere();
    this.refreshes.all();
    this.findings.refreshAll();
    this.sheets.changed();
  }

  private onDisk(changes: readonly { uri: string; type: FileChangeType }[]): void {
    this.hosts.setFolders(this.hosts.folderUris);
    for (const { uri, type } of changes) {
      this.shared.session.changedOnDisk(uri);
      this.across.index.changed(this.shared.session.pathOf(uri) ?? uri);
      if (type === FileChangeType.Changed) continue;
      this.shelf.forget();
      this.across.index.forget();
    }
    this.findings.refreshAll();
    for (const { uri } of changes) this.whole.changed(uri);
    this.refreshes.all();
    this.sheets.changed();
  }
}
