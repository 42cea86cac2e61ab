// Hints and lenses of a file also rest on other files: a client that can is asked to fetch them anew, one request at a
// time however many changes come.
import { CodeLensRefreshRequest, InlayHintRefreshRequest } from 'vscode-languageserver/node';
import type { Shared } from './findings';
import { wordsOf } from './guard';

export class Refreshes {
  private isAsking = false;
  private isStale = false;

  constructor(private readonly shared: Shared) {}

  /** A file changed: asked for only where another open one rests on it. */
  changed(uri: string): void {
    if (this.shared.session.restingOn(uri).some((other) => other !== uri)) this.all();
  }

  all(): void {
    this.isStale = true;
    if (!this.isAsking) void this.ask();
  }

  private async ask(): Promise<void> {
    const { client, connection, log } = this.shared;
    this.isAsking = true;
    while (this.isStale) {
      this.isStale = false;
      try {
        if (client.refreshesHints) await connection.sendRequest(InlayHintRefreshRequest.type);
        if (client.refreshesLenses) await connection.sendRequest(CodeLensRefreshRequest.type);
      } catch (error) {
        log(`refreshing hints and lenses: ${wordsOf(error)}`);
      }
    }
    this.isAsking = false;
  }
}
