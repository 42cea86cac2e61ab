// A client that types into files of a workspace in memory, and reads the findings that come of it.
import type { Diagnostic } from 'vscode-languageserver-protocol/node';
import { Lines } from '../../../server/src/core/text';
import { TestClient } from '../../support/client';

export interface Change {
  readonly at: number;
  readonly cut: number;
  readonly put: string;
}

export const lspOf = ({ code, message, range }: Diagnostic): object => ({
  id: code,
  message: String(message).split('\n')[0],
  range,
});

export class TypingClient {
  private readonly client: TestClient;
  private versions = 0;

  constructor(files: Readonly<Record<string, string>>) {
    this.client = new TestClient(Object.fromEntries(Object.entries(files).map(([name, text]) => [`ws/${name}`, text])));
  }

  async begin(): Promise<void> {
    await this.client.start({ textDocument: { publishDiagnostics: { relatedInformation: true } } });
  }

  /** Types changes into an opened text, one after the other; ends with the file closed. */
  async typed(
    name: string,
    text: string,
    changes: readonly Change[],
  ): Promise<{ text: string; findings: readonly Diagnostic[] }> {
    await this.client.open(name, text);
    const after = await this.type(name, text, changes);
    const findings = await this.client.findings(name);
    await this.close(name);
    return { text: after, findings };
  }

  async opened(name: string, text: string): Promise<readonly Diagnostic[]> {
    await this.client.open(name, text);
    const findings = await this.client.findings(name);
    await this.close(name);
    return findings;
  }

  /** Findings of one file after another was typed into, and again with both opened as they are then. */
  async besides(
    name: string,
    text: string,
    other: string,
    its: string,
    changes: readonly Change[],
  ): Promise<{ after: readonly Diagnostic[]; fresh: readonly Diagnostic[] }> {
    await this.client.open(other, its);
    await this.client.open(name, text);
    const typed = await this.type(other, its, changes);
    const after = await this.client.findings(name);
    await this.close(name);
    await this.close(other);
    await this.client.open(other, typed);
    const fresh = await this.opened(name, text);
    await this.close(other);
    return { after, fresh };
  }

  private async type(name: string, text: string, changes: readonly Change[]): Promise<string> {
    this.versions = 1;
    for (const { at, cut, put } of changes) {
      const lines = new Lines(text);
      // Through positions, as an editor would: none splits a surrogate pair or a CRLF.
      const start = lines.offsetAt(lines.positionAt(at % (text.length + 1)));
      const end = Math.max(start, lines.offsetAt(lines.positionAt(Math.min(start + cut, text.length))));
      const range = { start: lines.positionAt(start), end: lines.positionAt(end) };
      text = text.slice(0, start) + put + text.slice(end);
      await this.client.connection.sendNotification('textDocument/didChange', {
        textDocument: { uri: this.client.uri(name), version: ++this.versions },
        contentChanges: [{ range, text: put }],
      });
    }
    return text;
  }

  private async close(name: string): Promise<void> {
    await this.client.connection.sendNotification('textDocument/didClose', {
      textDocument: { uri: this.client.uri(name) },
    });
  }

  dispose(): void {
    this.client.dispose();
  }
}
