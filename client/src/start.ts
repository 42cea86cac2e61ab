// Client wiring: starts the server, registers the commands, shows what the server says.
import {
  commands,
  l10n,
  languages,
  LanguageStatusSeverity,
  ProgressLocation,
  window,
  workspace,
  type Disposable,
  type ExtensionContext,
  type LanguageStatusItem,
} from 'vscode';
import type { BaseLanguageClient, LanguageClientOptions } from 'vscode-languageclient';
import type { ClientOptions, ToServer, WorkspaceChecked } from '../../server/src/language/requests';
import { answerFiles } from './files';
import { tellOfCursor } from './cursor';
import { checkScheme, ExplainPages } from './explain';
import { offerFirstSteps } from './first-steps';
import { offerNewFiles } from './new-files';
import { reported, wordsOf } from './reported';
import { offerSheetDrafts } from './sheet-draft';
import { WorkingPages } from './workings';
import { writeAt } from './write-at';
import { indentAsSet } from './indentation';
import { guideLanguage, languageIds } from './languages';
import { benchSheet } from './views/bench-sheet';
import { Told, worstGrade } from './views/status';
import { onceWanted } from './wanted';

/** What the server is told of this client. */
const own: ClientOptions = {
  explains: true,
  files: true,
  guides: true,
  hintsAbove: true,
  lenses: true,
  pages: checkScheme,
  showsFindings: true,
  suggest: 'editor.action.triggerSuggest',
  wholeOnRequest: true,
  writesAt: true,
};

/** Makes a client for a transport: a process on the desktop, a worker in a browser. */
export type MakeClient = (options: LanguageClientOptions) => BaseLanguageClient;

/** Files where they live: not the older texts that a comparison shows under schemes of its own. */
function selector(): { language: string; scheme: string }[] {
  const schemes = new Set(['file', 'untitled', ...(workspace.workspaceFolders ?? []).map(({ uri }) => uri.scheme)]);
  const ours = languageIds.flatMap((language) => [...schemes].map((scheme) => ({ language, scheme })));
  schemes.delete('untitled');
  return [...ours, ...[...schemes].map((scheme) => ({ language: guideLanguage, scheme }))];
}

/** A command as people find it, in the editor’s language. */
function titleOf({ extension }: ExtensionContext, command: string): string {
  const { contributes } = extension.packageJSON as { contributes: { commands: { command: string; title: string }[] } };
  return `Fettle: ${contributes.commands.find((one) => one.command === command)?.title ?? command}`;
}

/**
 * Offers everything, and starts the server once something wants it; what is made here ends with the extension. A
 * command that asks the server starts it by that.
 */
export function start(context: ExtensionContext, make: MakeClient): void {
  indentAsSet();
  const log = window.createOutputChannel('Fettle', { log: true });
  const told = new Told();
  const client = make({
    documentSelector: selector(),
    initializationOptions: { ...own, workings: titleOf(context, 'fettle.showWorking') } satisfies ClientOptions,
    outputChannel: log,
    markdown: { isTrusted: false, supportHtml: false },
    // Names of parts lead to their files as definitions do. The line that the editor draws under each link looks like a
    // finding, so only addresses are links here.
    middleware: {
      provideDocumentLinks: async (document, token, next) =>
        (await next(document, token))?.filter(({ target }) => target?.scheme === 'https'),
      provideDiagnostics: async (document, previous, token, next) => {
        const report = await next(document, previous, token);
        // What is answered is put on show behind this.
        if (report) setTimeout(() => told.add('uri' in document ? document.uri : document));
        return report;
      },
    },
    diagnosticPullOptions: { onChange: true, onSave: false, onFocus: true },
  });
  const status = statusItem();
  const pages = new ExplainPages(client);
  const workings = new WorkingPages(client);
  context.subscriptions.push(
    log,
    status,
    pages,
    workings,
    answerFiles(client),
    told,
    client.onDidChangeState(() => told.clear()),
    ...worstGrade(
      selector().filter(({ language }) => language !== guideLanguage),
      told,
      () => client.isRunning(),
    ),
    tellOfCursor(client),
    ...benchSheet(client, context.extensionUri),
    ...register(client, status, pages, workings, () => log.show()),
    ...offerNewFiles(client),
    ...offerSheetDrafts(client),
    ...offerFirstSteps(context),
    client,
  );
  context.subscriptions.push(onceWanted(selector(), () => run(status, () => client.start())));
}

function register(
  client: BaseLanguageClient,
  status: LanguageStatusItem,
  pages: ExplainPages,
  workings: WorkingPages,
  showLog: () => void,
): Disposable[] {
  return [
    commands.registerCommand('fettle.checkWorkspace', () => reported(() => checkWorkspace(client))),
    commands.registerCommand('fettle.explain', (check?: unknown) => reported(() => pages.show(check))),
    commands.registerCommand('fettle.showWorking', () => reported(() => workings.show())),
    commands.registerCommand('fettle.restart', () => run(status, () => restart(client))),
    commands.registerCommand('fettle.showLog', showLog),
    commands.registerCommand('fettle.writeAt', (uri: unknown, at: unknown) => reported(() => writeAt(uri, at))),
  ];
}

async function restart(client: BaseLanguageClient): Promise<void> {
  if (client.isRunning()) await client.stop();
  await client.start();
}

async function checkWorkspace(client: BaseLanguageClient): Promise<void> {
  const checked = await window.withProgress(
    { location: ProgressLocation.Window, title: l10n.t('Fettle checks the workspace') },
    () => client.sendRequest<ToServer['fettle/checkWorkspace']['result']>('fettle/checkWorkspace'),
  );
  for (const trouble of checked.troubles) client.outputChannel.appendLine(trouble);
  void window.showInformationMessage(summary(checked));
  await commands.executeCommand('workbench.actions.view.problems');
}

function summary({ files, worst, troubles }: WorkspaceChecked): string {
  const counts = Object.entries(worst).map(([grade, count]) => l10n.t('{0} at worst {1}', count, grade));
  const found = counts.length > 0 ? counts.join(', ') : l10n.t('nothing found');
  const checked = files === 1 ? l10n.t('1 file checked: {0}.', found) : l10n.t('{0} files checked: {1}.', files, found);
  if (troubles.length === 0) return checked;
  return `${checked} ${l10n.t('{0} could not be read; the log says why.', troubles.length)}`;
}

function statusItem(): LanguageStatusItem {
  const status = languages.createLanguageStatusItem(
    'fettle.server',
    languageIds.map((language) => ({ language })),
  );
  status.name = 'Fettle';
  status.command = { title: l10n.t('Show the log'), command: 'fettle.showLog' };
  return status;
}

async function run(status: LanguageStatusItem, work: () => Promise<void>): Promise<void> {
  Object.assign(status, { text: l10n.t('Fettle starts'), busy: true, severity: LanguageStatusSeverity.Information });
  try {
    await work();
    Object.assign(status, { text: l10n.t('Fettle checks as you type'), busy: false });
  } catch (error) {
    const text = l10n.t('Fettle does not run');
    Object.assign(status, { text, busy: false, severity: LanguageStatusSeverity.Error });
    void window.showErrorMessage(l10n.t('Fettle could not start: {0}', wordsOf(error)));
  }
}
