// A new part from a data sheet: its text on the left, what was read of it on the right, saved under the part’s name.
import { commands, env, l10n, Uri, ViewColumn, window, workspace, WorkspaceEdit, type Disposable } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { ToServer } from '../../server/src/language/requests';
import { alreadyThere, isThere, nearFor, notWritten, textOf } from './new-files';
import { reported } from './reported';

type Answer = ToServer['fettle/draftPart']['result'];
type Place = ToServer['fettle/partPlace']['result'];
type Drafted = Extract<Answer, { readonly text: string }>;

/** What a caller may give instead of being asked. */
interface Given {
  readonly text?: unknown;
  readonly kind?: unknown;
  readonly variant?: unknown;
  readonly name?: unknown;
}

interface Source {
  readonly text: string;
  readonly name: string;
}

export const offerSheetDrafts = (client: BaseLanguageClient): Disposable[] => [
  commands.registerCommand('fettle.newPartFromSheet', (given?: Given) => reported(() => newPart(client, given ?? {}))),
];

async function newPart(client: BaseLanguageClient, given: Given): Promise<void> {
  const near = await nearFor('part');
  const source = near && (await sourceOf(given));
  if (!near || !source) return;
  const drafted = await draftOf(client, source, given);
  if (!drafted) return;
  const preview = await shown(source, drafted);
  const name = textOf(given.name) ?? (await nameFor(drafted));
  if (name === undefined) return;
  const params = { near: client.code2ProtocolConverter.asUri(near), name: name.trim() };
  const place = await client.sendRequest<Place>('fettle/partPlace', params);
  if ('problem' in place) throw new Error(place.problem);
  await save(Uri.parse(place.uri, true), preview.getText());
}

/** What was copied, or a file that is chosen. */
async function sourceOf({ text }: Given): Promise<Source | undefined> {
  const own = textOf(text);
  if (own !== undefined) return { text: own, name: 'sheet.txt' };
  const copied = {
    label: l10n.t('What was copied'),
    detail: l10n.t('The text in the clipboard: a table, a page’s text.'),
  };
  const file = {
    label: l10n.t('A file…'),
    detail: l10n.t('Text, HTML, CSV, TSV or JSON; what decode-dimms or smartctl -x -j printed.'),
  };
  const chosen = await window.showQuickPick([copied, file], { title: l10n.t('New part from a sheet: which one?') });
  if (chosen === copied) return { text: await env.clipboard.readText(), name: 'sheet.txt' };
  const [uri] = chosen === file ? ((await window.showOpenDialog({ canSelectMany: false })) ?? []) : [];
  if (!uri) return undefined;
  const document = await workspace.openTextDocument(uri);
  return { text: document.getText(), name: uri.path.slice(uri.path.lastIndexOf('/') + 1) };
}

/** The draft, once kind and variant are plain or were asked for. */
async function draftOf(client: BaseLanguageClient, source: Source, given: Given): Promise<Drafted | undefined> {
  let [kind, variant] = [textOf(given.kind), textOf(given.variant)];
  for (let asked = 0; asked < 3; asked++) {
    const params = { ...source, ...(kind ? { kind } : {}), ...(variant ? { variant } : {}) };
    const answer = await client.sendRequest<Answer>('fettle/draftPart', params);
    if ('text' in answer) {
      if (answer.facts === 0) throw new Error(l10n.t('No fact could be read from that text.'));
      return answer;
    }
    if ('kinds' in answer) {
      const all = await client.sendRequest<ToServer['fettle/kinds']['result']>('fettle/kinds');
      const first = answer.kinds.filter((one) => all.includes(one));
      kind = await window.showQuickPick([...first, ...all.filter((one) => !first.includes(one))], {
        title: l10n.t('Of which kind of part does the sheet speak?'),
      });
      if (kind === undefined) return undefined;
    } else {
      variant = await window.showQuickPick([...answer.variants], {
        title: l10n.t('The sheet has several variants: which one?'),
      });
      if (variant === undefined) return undefined;
    }
  }
  return undefined;
}

/** Both side by side; the right one may be mended before it is saved. */
async function shown(source: Source, drafted: Drafted) {
  const sheet = await workspace.openTextDocument({ content: source.text, language: 'plaintext' });
  await window.showTextDocument(sheet, { viewColumn: ViewColumn.One, preview: false });
  const part = await workspace.openTextDocument({ content: drafted.text, language: 'fettle-part' });
  await window.showTextDocument(part, { viewColumn: ViewColumn.Beside, preview: false });
  return part;
}

const nameFor = ({ name = '', facts, unread }: Drafted): Thenable<string | undefined> =>
  window.showInputBox({
    title: l10n.t('Save the part: facts read: {0}, lines not read: {1}', facts, unread),
    prompt: l10n.t('Maker and model, as builds are to name it: small letters, figures and hyphens, with / between.'),
    placeHolder: l10n.t('maker/model'),
    value: name,
    ignoreFocusOut: true,
  });

async function save(uri: Uri, text: string): Promise<void> {
  if (await isThere(uri)) {
    await window.showTextDocument(uri);
    throw new Error(alreadyThere(uri));
  }
  const edit = new WorkspaceEdit();
  edit.createFile(uri, { overwrite: false, contents: new TextEncoder().encode(text) });
  if (!(await workspace.applyEdit(edit))) throw new Error(notWritten(uri));
  await window.showTextDocument(uri);
}
