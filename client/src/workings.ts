// The whole working of a finding: a read-only page that the server writes, opened from a hover.
import { type Uri, workspace, type Disposable, type TextDocumentContentProvider } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { ToServer } from '../../server/src/language/requests';

/** Workings stand under this scheme; which finding is meant is in the query. */
export const workingScheme = 'fettle-working';

type Asked = ToServer['fettle/working']['params'];

export class WorkingPages implements TextDocumentContentProvider, Disposable {
  private readonly registration: Disposable;

  constructor(private readonly client: BaseLanguageClient) {
    this.registration = workspace.registerTextDocumentContentProvider(workingScheme, this);
  }

  async provideTextDocumentContent({ query }: Uri): Promise<string> {
    const asked = readQuery(query);
    const page =
      asked && (await this.client.sendRequest<ToServer['fettle/working']['result']>('fettle/working', asked));
    return page?.markdown ?? 'This finding is gone: the build has changed since.\n';
  }

  dispose(): void {
    this.registration.dispose();
  }
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
