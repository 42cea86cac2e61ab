// Pages on checks: read-only documents whose text the server writes, shown as Markdown.
import {
  commands,
  l10n,
  Uri,
  window,
  workspace,
  type Diagnostic,
  type Disposable,
  type TextDocumentContentProvider,
} from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { ToServer } from '../../server/src/language/requests';
import { findingsAtCursor } from './views/status';

/** Pages stand under this scheme, by the check’s id: `fettle-check:/cooler-too-tall.md`. */
export const checkScheme = 'fettle-check';

export class ExplainPages implements TextDocumentContentProvider, Disposable {
  private readonly registration: Disposable;

  constructor(private readonly client: BaseLanguageClient) {
    this.registration = workspace.registerTextDocumentContentProvider(checkScheme, this);
  }

  async provideTextDocumentContent({ path }: Uri): Promise<string> {
    const page = await this.client.sendRequest<ToServer['fettle/explain']['result']>('fettle/explain', {
      check: path.replace(/^\/|\.md$/g, ''),
    });
    return page?.markdown ?? `${l10n.t('There is no check of this name.')}\n`;
  }

  /** Shows the page of a check; without a name, that of the finding at the cursor, or of one that is asked for. */
  async show(check: unknown): Promise<void> {
    const id = typeof check === 'string' ? check : await this.atCursor();
    if (id === undefined || !/^[a-z0-9.-]{1,80}$/.test(id)) return;
    await commands.executeCommand('markdown.showPreview', Uri.from({ scheme: checkScheme, path: `/${id}.md` }));
  }

  private async atCursor(): Promise<string | undefined> {
    const ids = [...new Set(findingsAtCursor().flatMap(({ code }) => idOf(code)))];
    if (ids.length === 1) return ids[0];
    return ids.length > 1
      ? window.showQuickPick(ids, { title: l10n.t('Which check?') })
      : window.showInputBox({
          title: l10n.t('Which check?'),
          prompt: l10n.t('The name of a check, as a finding gives it.'),
        });
  }

  dispose(): void {
    this.registration.dispose();
  }
}

/** The check that a diagnostic names, with or without a link to its page. */
function idOf(code: Diagnostic['code']): string[] {
  const value = typeof code === 'object' ? code.value : code;
  return typeof value === 'string' ? [value] : [];
}
