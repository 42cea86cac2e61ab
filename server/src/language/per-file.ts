// Settings that may differ from folder to folder: asked for by file where the client answers that, and kept until they
// change.
import type { Shared } from './findings';
import { wordsOf } from './guard';
import type { HintSettings } from './requests';
import { settingsOf } from './shapes';

export class PerFile {
  private readonly asked = new Map<string, Promise<HintSettings>>();

  constructor(private readonly shared: Shared) {}

  /** The hints that are wished for in a file. */
  readonly hintsFor = async (uri: string): Promise<HintSettings> => {
    const { client, settings } = this.shared;
    if (!client.configuration) return settings.hints;
    let asked = this.asked.get(uri);
    if (!asked) this.asked.set(uri, (asked = this.ask(uri)));
    return asked;
  };

  private async ask(scopeUri: string): Promise<HintSettings> {
    const { connection, log, settings } = this.shared;
    try {
      const { settings: own, problem } = settingsOf(
        await connection.workspace.getConfiguration({ scopeUri, section: 'fettle' }),
      );
      if (problem) log(problem);
      return own.hints;
    } catch (error) {
      log(`workspace/configuration: ${wordsOf(error)}`);
      this.asked.delete(scopeUri);
      return settings.hints;
    }
  }

  /** Settings have changed, or a file was closed. */
  forget(uri?: string): void {
    if (uri === undefined) this.asked.clear();
    else this.asked.delete(uri);
  }
}
