// Open files: opened, changed in steps, closed; each step ends with what it means for findings.
import { TextDocument } from 'vscode-languageserver-textdocument';
import type {
  DidChangeTextDocumentParams,
  DidCloseTextDocumentParams,
  DidOpenTextDocumentParams,
} from 'vscode-languageserver/node';
import type { Findings, Shared } from './findings';
import type { WorkspaceDiagnostics } from './workspace-diagnostics';

export class Documents {
  private readonly open = new Map<string, TextDocument>();

  constructor(
    private readonly shared: Shared,
    private readonly findings: Findings,
    private readonly whole: WorkspaceDiagnostics,
  ) {}

  opened({ textDocument: { uri, languageId, version, text } }: DidOpenTextDocumentParams): void {
    this.take(TextDocument.create(uri, languageId, version, text));
  }

  changed({ textDocument: { uri, version }, contentChanges }: DidChangeTextDocumentParams): void {
    const document = this.open.get(uri);
    if (!document) return this.shared.log(`textDocument/didChange: ${uri} is not open; the change is left out.`);
    this.take(TextDocument.update(document, contentChanges, version));
  }

  private take(document: TextDocument): void {
    const { uri, version } = document;
    this.open.set(uri, document);
    this.shared.session.open(uri, version, document.getText());
    this.findings.changed(uri);
    this.whole.changed(uri);
  }

  closed({ textDocument: { uri } }: DidCloseTextDocumentParams): void {
    this.open.delete(uri);
    this.shared.session.close(uri);
    this.findings.closed(uri);
    // What rests on the file rests on the saved text again.
    this.findings.changed(uri);
    this.whole.closed(uri);
  }
}
