// Changes that have come and not had their turn yet: a text that the next already follows need not be judged.
import type { DidChangeTextDocumentParams, Message } from 'vscode-languageserver/node';

export class WaitingChanges {
  /** How many wait, by the address of their file. */
  private readonly count = new Map<string, number>();

  /** A message has come; those that are no change are not counted. */
  came(message: Message): void {
    const { method, params } = message as { method?: string; params?: DidChangeTextDocumentParams };
    if (method !== 'textDocument/didChange' || !params) return;
    const { uri } = params.textDocument;
    this.count.set(uri, (this.count.get(uri) ?? 0) + 1);
  }

  /** A change of a file has its turn; whether another of that file waits. */
  taken(uri: string): boolean {
    const left = (this.count.get(uri) ?? 1) - 1;
    if (left > 0) this.count.set(uri, left);
    else this.count.delete(uri);
    return left > 0;
  }
}
