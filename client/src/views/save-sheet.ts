// Saves the bench sheet of a build as a file of its own: a page to print, or Markdown.
import { l10n, window, workspace, type Uri } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { ToServer } from '../../../server/src/language/requests';

type Params = ToServer['fettle/sheetFile']['params'];

interface Form {
  readonly label: string;
  readonly description: string;
  readonly ending: string;
  readonly form: Pick<Params, 'form' | 'paper'>;
}

const forms = (): readonly Form[] => [
  {
    label: l10n.t('Page for A4'),
    description: l10n.t('HTML, to print or to send'),
    ending: 'html',
    form: { form: 'html', paper: 'a4' },
  },
  {
    label: l10n.t('Page for Letter'),
    description: l10n.t('HTML, to print or to send'),
    ending: 'html',
    form: { form: 'html', paper: 'letter' },
  },
  { label: 'Markdown', description: l10n.t('to go on writing'), ending: 'md', form: { form: 'markdown' } },
];

export async function saveSheet(client: BaseLanguageClient, build: Uri | undefined): Promise<void> {
  if (!build) {
    void window.showInformationMessage(l10n.t('Open a build first: a file whose name ends in .pcbuild.yaml.'));
    return;
  }
  const chosen = await window.showQuickPick(forms(), { title: l10n.t('Save the bench sheet as') });
  if (!chosen) return;
  const { ending, form } = chosen;
  const target = await window.showSaveDialog({
    defaultUri: build.with({ path: build.path.replace(/(?:\.pcbuild\.yaml)?$/, `.bench-sheet.${ending}`) }),
    filters: ending === 'md' ? { Markdown: ['md'] } : { HTML: ['html'] },
  });
  if (!target) return;
  const params: Params = { textDocument: { uri: build.toString() }, ...form };
  const answer = await client.sendRequest<ToServer['fettle/sheetFile']['result']>('fettle/sheetFile', params);
  if (!answer) throw new Error(l10n.t('There is no build here any more.'));
  await workspace.fs.writeFile(target, new TextEncoder().encode(answer.text));
  void window.showInformationMessage(l10n.t('Bench sheet saved: {0}', workspace.asRelativePath(target)));
}
