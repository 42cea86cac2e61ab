// The bench sheet beside the text: one panel that follows the build at hand, both ways.
import {
  commands,
  env,
  l10n,
  Position,
  Range,
  Selection,
  TextEditorRevealType,
  Uri,
  ViewColumn,
  window,
  type Disposable,
  type TextEditor,
  type WebviewPanel,
} from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { SheetChanged, ToServer } from '../../../server/src/language/requests';
import { buildLanguage, languageIds } from '../languages';
import { reported, wordsOf } from '../reported';
import { saveSheet } from './save-sheet';
import { isFromPanel, isPanelState, type ToPanel } from './sheet-messages';
import { sheetPage } from './sheet-page';

const viewType = 'fettle.benchSheet';

type Answer<M extends keyof ToServer> = ToServer[M]['result'];

/** Where the last jump went: the same thing asked for once more leads to where it is described. */
interface Landed {
  readonly place: string;
  readonly uri: string;
  readonly line: number;
}

/** Registers the panel’s commands, and brings a panel back after a reload. */
export function benchSheet(client: BaseLanguageClient, extension: Uri): Disposable[] {
  const view = new BenchSheet(client, extension);
  return [
    view,
    commands.registerCommand('fettle.openBenchSheet', () => reported(() => view.open())),
    commands.registerCommand('fettle.saveBenchSheet', () => reported(() => saveSheet(client, view.current))),
    window.registerWebviewPanelSerializer(viewType, {
      deserializeWebviewPanel: (panel, state: unknown) =>
        view.restore(panel, isPanelState(state) ? state.uri : undefined),
    }),
    client.onNotification('fettle/sheetChanged', ({ uri }: SheetChanged) => view.changed(uri)),
    client.onDidChangeState(() => client.isRunning() && view.changed()),
    window.onDidChangeActiveTextEditor((editor) => view.follow(editor)),
    window.onDidChangeTextEditorSelection(({ textEditor }) => {
      if (textEditor === window.activeTextEditor) void view.light();
    }),
  ];
}

class BenchSheet implements Disposable {
  private panel: WebviewPanel | undefined;
  private build: Uri | undefined;
  /** The sheet that the panel shows; undefined while it shows nothing. */
  private have: string | undefined;
  private isReady = false;
  private isAsking = false;
  private isStale = false;
  private landed: Landed | undefined;
  private asked = 0;

  constructor(
    private readonly client: BaseLanguageClient,
    private readonly extension: Uri,
  ) {}

  /** The build at hand: that of the text that is written in, else the one that is shown. */
  get current(): Uri | undefined {
    const document = window.activeTextEditor?.document;
    return document?.languageId === buildLanguage ? document.uri : this.build;
  }

  async open(): Promise<void> {
    const uri = this.current;
    if (!uri) {
      void window.showInformationMessage(l10n.t('Open a build first: a file whose name ends in .pcbuild.yaml.'));
      return;
    }
    this.build = uri;
    if (this.panel) return this.panel.reveal(undefined, true);
    const column = { viewColumn: ViewColumn.Beside, preserveFocus: true };
    await this.fill(window.createWebviewPanel(viewType, l10n.t('Bench Sheet'), column, { enableFindWidget: true }));
  }

  async restore(panel: WebviewPanel, uri: string | undefined): Promise<void> {
    if (this.panel) return panel.dispose();
    this.build = this.current ?? (uri ? Uri.parse(uri, true) : undefined);
    await this.fill(panel);
  }

  private async fill(panel: WebviewPanel): Promise<void> {
    this.panel = panel;
    const scripts = Uri.joinPath(this.extension, 'dist');
    panel.webview.options = { enableScripts: true, localResourceRoots: [scripts] };
    panel.webview.onDidReceiveMessage((message: unknown) => {
      if (isFromPanel(message)) void (message.type === 'ready' ? this.begin() : reported(() => this.go(message.place)));
    });
    panel.onDidDispose(() => {
      this.panel = undefined;
      this.isReady = false;
    });
    panel.onDidChangeViewState(() => {
      // What is hidden is taken down; it says so once it is there again.
      if (!panel.visible) this.isReady = false;
    });
    const { css } = await this.client.sendRequest<Answer<'fettle/sheetStyle'>>('fettle/sheetStyle');
    const lang = /^de\b/i.test(env.language) ? 'de' : 'en';
    const script = panel.webview.asWebviewUri(Uri.joinPath(scripts, 'sheet-script.js')).toString();
    panel.webview.html = sheetPage({ css, script, nonce: makeNonce(), lang, word: (english) => l10n.t(english) });
  }

  /** The page shows nothing yet: it was opened, or comes back from behind another. */
  private async begin(): Promise<void> {
    this.isReady = true;
    this.have = undefined;
    await this.update();
  }

  /** Another build is at hand. */
  follow(editor: TextEditor | undefined): void {
    const document = editor?.document;
    if (document?.languageId === buildLanguage && document.uri.toString() !== this.build?.toString()) {
      this.build = document.uri;
      this.have = undefined;
      this.landed = undefined;
      void this.update();
    } else void this.light();
  }

  /** There is another sheet of a build, or of any. */
  changed(uri?: string): void {
    if (uri === undefined || uri === this.build?.toString()) void this.update();
  }

  /** Asks for the sheet as long as there is another: one request at a time, and none while nobody looks. */
  private async update(): Promise<void> {
    this.isStale = true;
    if (this.isAsking) return;
    this.isAsking = true;
    try {
      while (this.isStale && this.panel?.visible && this.isReady && this.build) {
        this.isStale = false;
        await this.ask(this.panel, this.build.toString());
      }
    } catch (error) {
      this.client.outputChannel.appendLine(`The bench sheet was not made: ${wordsOf(error)}`);
    } finally {
      this.isAsking = false;
    }
  }

  private async ask(panel: WebviewPanel, uri: string): Promise<void> {
    const answer = await this.client.sendRequest<Answer<'fettle/sheet'>>('fettle/sheet', {
      textDocument: { uri },
      picturesFirst: true,
      ...(this.have === undefined ? {} : { have: this.have }),
    });
    if (panel !== this.panel || uri !== this.build?.toString()) return;
    if (!answer) {
      this.have = undefined;
      this.send({ type: 'none', why: l10n.t('There is no build here any more.') });
      return;
    }
    const { id, order, blocks, old, title, more } = answer;
    this.have = id;
    panel.title = l10n.t('Bench Sheet: {0}', title);
    this.send({ type: 'sheet', uri, order, blocks, old });
    if (more) this.isStale = true;
    else await this.light();
  }

  private send(message: ToPanel): void {
    void this.panel?.webview.postMessage(message);
  }

  /** Has the cursor’s line light up on the sheet. */
  async light(): Promise<void> {
    const editor = window.activeTextEditor;
    if (!editor || !this.build || !this.panel?.visible || !this.isReady) return;
    if (!languageIds.includes(editor.document.languageId)) return;
    const asked = ++this.asked;
    const { line, character } = editor.selection.active;
    try {
      const lit = await this.client.sendRequest<Answer<'fettle/sheetPlaces'>>('fettle/sheetPlaces', {
        textDocument: { uri: editor.document.uri.toString() },
        position: { line, character },
        build: this.build.toString(),
      });
      if (asked === this.asked) this.send({ type: 'lit', ...lit });
    } catch (error) {
      this.client.outputChannel.appendLine(`The line was not lit up on the bench sheet: ${wordsOf(error)}`);
    }
  }

  /** Goes to where a thing stands in the build; asked for once more, to where it is described. */
  private async go(place: string): Promise<void> {
    if (!this.build) return;
    const isSecond = this.landed?.place === place && isAt(this.landed);
    const found = await this.client.sendRequest<Answer<'fettle/sheetPlace'>>('fettle/sheetPlace', {
      textDocument: { uri: this.build.toString() },
      place,
      definition: isSecond,
    });
    if (!found) return;
    const { line, character } = found.range.start;
    await this.land(Uri.parse(found.uri, true), new Position(line, character));
    this.landed = isSecond ? undefined : { place, uri: found.uri, line };
  }

  private async land(uri: Uri, at: Position): Promise<void> {
    const open = window.visibleTextEditors.find(({ document }) => document.uri.toString() === uri.toString());
    const beside = window.visibleTextEditors.find(
      ({ viewColumn }) => viewColumn && viewColumn !== this.panel?.viewColumn,
    );
    const viewColumn =
      open?.viewColumn ??
      beside?.viewColumn ??
      (this.panel?.viewColumn === ViewColumn.One ? ViewColumn.Beside : ViewColumn.One);
    const editor = await window.showTextDocument(uri, { viewColumn });
    editor.selection = new Selection(at, at);
    editor.revealRange(new Range(at, at), TextEditorRevealType.InCenterIfOutsideViewport);
  }

  dispose(): void {
    this.panel?.dispose();
  }
}

/** Whether the cursor is still where a jump put it. */
const isAt = ({ uri, line }: Landed): boolean =>
  window.visibleTextEditors.some(
    ({ document, selection }) => document.uri.toString() === uri && selection.active.line === line,
  );

/** A word that nobody can guess: what bears it may run on the page, nothing else. */
function makeNonce(): string {
  const bytes = globalThis.crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
