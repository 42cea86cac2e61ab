// The whole working of a finding: a read-only page that the server writes, opened at the cursor.
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

/** Workings stand under this scheme; which finding is meant is in the query. */
const workingScheme = 'fettle-working';

type Asked = ToServer['fettle/working']['params'];

export class WorkingPages implements TextDocumentContentProvider, Disposable {
  private readonly registration: Disposable;

  constructor(private readonly client: BaseLanguageClient) {
    this.registration = workspace.registerTextDocumentContentProvider(workingScheme, this);
  }

  /** Shows the working of the finding at the cursor, or of the one that is chosen of several. */
  async show(): Promise<void> {
    const editor = window.activeTextEditor;
    if (!editor) return;
    const found = findingsAtCursor().flatMap((one) => {
      const data = dataOf(one);
      return data ? [{ label: data.check, detail: one.message, data }] : [];
    });
    if (found.length === 0) {
      void window.showInformationMessage(l10n.t('Put the cursor on a finding first.'));
      return;
    }
    const chosen =
      found.length === 1 ? found[0] : await window.showQuickPick(found, { title: l10n.t('Which working?') });
    if (!chosen) return;
    const asked: Asked = { uri: editor.document.uri.toString(), ...chosen.data };
    const page = Uri.from({ scheme: workingScheme, path: `/${asked.check}.md`, query: JSON.stringify(asked) });
    await commands.executeCommand('markdown.showPreview', page);
  }

  async provideTextDocumentContent({ query }: Uri): Promise<string> {
    const asked = readQuery(query);
    const page =
      asked && (await this.client.sendRequest<ToServer['fettle/working']['result']>('fettle/working', asked));
    return page?.markdown ?? `${l10n.t('This finding is gone: the build has changed since.')}\n`;
  }

  dispose(): void {
    this.registration.dispose();
  }
}

/** What tells a finding from the others of its file; a missing fact has no working. */
function dataOf(found: Diagnostic): Omit<Asked, 'uri'> | undefined {
  const { data } = found as Diagnostic & { readonly data?: Omit<Asked, 'uri'> };
  return data && data.check !== 'fact-not-stated' ? data : undefined;
}

function readQuery(query: string): Asked | undefined {
  try {
    const { uri, check, subject, ordinal } = JSON.parse(query) as Record<string, unknown>;
    const texts = [uri, check, subject].every((one) => typeof one === 'string');
    return texts && Number.isInteger(ordinal) ? ({ uri, check, subject, ordinal } as Asked) : undefined;
  } catch {
    return undefined;
  }
}
