// A build typed key by key into a file that is not saved yet: calm on the way, a list wherever something fits, and in
// the end what an opened file says.
import { deepStrictEqual, ok, strictEqual } from 'node:assert';
import * as vscode from 'vscode';
import { codeOf, until } from './looking';

const keyMs = 110;

/** What is typed, and a finding that it must end with. */
export interface Typed {
  readonly text: string;
  readonly finding: string;
  /** A key that means nothing, and is therefore in no list. */
  readonly slip?: string;
}

const codesOf = ({ uri }: vscode.TextDocument): string[] =>
  vscode.languages.getDiagnostics(uri).map((one) => `${String(codeOf(one))} ${one.range.start.line}`);

export async function typesBuild({ text, finding, slip }: Typed): Promise<Record<string, number>> {
  // A busy machine may pause where no typist does.
  const settings = vscode.workspace.getConfiguration('fettle');
  await settings.update('pause', 30_000, vscode.ConfigurationTarget.Global);
  try {
    const document = await vscode.workspace.openTextDocument({ language: 'fettle-build', content: '' });
    const typist = new Typist(await vscode.window.showTextDocument(document));
    await typist.begin();
    for (const [i, line] of text.split('\n').entries()) {
      if (i > 0) await typist.key('\n');
      await typist.line(line, slip);
    }
    strictEqual(document.getText(), text, 'the text as it was typed');
    ok(typist.lists > 0);
    await endsAsOpened(typist.editor, finding);
    return { keysTyped: typist.keys, listsLookedAt: typist.lists };
  } finally {
    await settings.update('pause', undefined, vscode.ConfigurationTarget.Global);
  }
}

/** Types as a person does, and looks after each key. */
class Typist {
  keys = 0;
  lists = 0;

  constructor(readonly editor: vscode.TextEditor) {}

  /** The editor indents; a person takes back or adds what is left. */
  async line(line: string, slip?: string): Promise<void> {
    const rest = line.trimStart();
    const wanted = line.length - rest.length;
    if (rest !== '') {
      while (this.at.character > wanted) await vscode.commands.executeCommand('deleteLeft');
      while (this.at.character < wanted) await this.key(' ');
    }
    const asked = line.trimStart().startsWith(`${slip}:`) ? new Map<number, string>() : offersIn(line);
    for (let i = wanted; i < line.length; i++) {
      const word = asked.get(i);
      if (word !== undefined) await this.isOffered(word);
      await this.key(line[i]!);
    }
  }

  async key(text: string): Promise<void> {
    this.keys++;
    await vscode.commands.executeCommand('type', { text });
    await new Promise((resolve) => setTimeout(resolve, keyMs));
    const { uri } = this.editor.document;
    const shown = vscode.languages
      .getDiagnostics(uri)
      .filter(({ severity, range }) => severity === vscode.DiagnosticSeverity.Error && range.end.line >= this.at.line);
    deepStrictEqual(
      shown.map(({ message }) => message),
      [],
      `after ${JSON.stringify(this.editor.document.getText())}`,
    );
  }

  /** Waits for the server, which may only just have been started. */
  async begin(): Promise<void> {
    await until('the keys of a build are offered', async () => (await this.offered()).includes('format'));
  }

  private async offered(): Promise<string[]> {
    const { items } = await vscode.commands.executeCommand<vscode.CompletionList>(
      'vscode.executeCompletionItemProvider',
      this.editor.document.uri,
      this.at,
    );
    return items.map(({ label }) => (typeof label === 'string' ? label : label.label));
  }

  /** The list at the cursor holds what is typed next. */
  private async isOffered(word: string): Promise<void> {
    const { document } = this.editor;
    const labels = await this.offered();
    ok(labels.includes(word), `${word} is not offered after ${JSON.stringify(document.getText())}: ${labels.join()}`);
    this.lists++;
  }

  private get at(): vscode.Position {
    return this.editor.selection.active;
  }
}

/** Values of these keys are one's own words and numbers. */
const own: ReadonlySet<string> = new Set(['format', 'build', 'purpose', 'name']);

/** Where on a line a list must hold what comes next: each key, each value that is one of several, and each unit. */
function offersIn(line: string): Map<number, string> {
  const asked = new Map<number, string>();
  let key = '';
  for (const found of line.matchAll(/([a-z][a-z-]*):(?= |$)|"([^"]*)"|([^\s{}[\],:"-][^{}[\],:"]*)/g)) {
    const [, named, quoted, plain] = found;
    const value = (quoted ?? plain ?? '').trimEnd();
    const unit = /^(\d[\d.]*) \S+$/.exec(value);
    if (named !== undefined) asked.set(found.index, (key = named));
    else if (unit && !own.has(key)) asked.set(found.index + unit[1]!.length + 1, value);
    else if (!own.has(key) && !/^\d+$/.test(value)) asked.set(found.index, value);
  }
  return asked;
}

/** Once the cursor is elsewhere, the same is said as of the text opened. */
async function endsAsOpened(editor: vscode.TextEditor, finding: string): Promise<void> {
  const { document } = editor;
  editor.selection = new vscode.Selection(0, 0, 0, 0);
  await until(`${finding} is shown once the cursor has left it`, () => codesOf(document).includes(finding));
  const opened = await vscode.workspace.openTextDocument({ language: 'fettle-build', content: document.getText() });
  await vscode.window.showTextDocument(opened);
  await until('the same is said of the text opened', () => codesOf(opened).join() === codesOf(document).join());
}
