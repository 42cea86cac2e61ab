// Settings as they hold in a file: a client that answers for folders is asked once for all folders of the workspace,
// so that a file among ten thousand costs no question.
import type { Shared } from './findings';
import { wordsOf } from './guard';
import type { HintSettings, Settings } from './requests';
import { defaultSettings, settingsOf } from './shapes';

export class FolderSettings {
  /** What holds outside every folder. */
  private general: Settings = defaultSettings;
  private byFolder: ReadonlyMap<string, Settings> = new Map();
  private asked: Promise<void> | undefined;

  constructor(
    private readonly shared: () => Shared,
    private readonly folders: () => readonly string[],
  ) {}

  /** Settings of the start, for a client that answers no question. */
  begin(sent: unknown): void {
    this.general = this.read(sent);
  }

  /** Milliseconds of a pause: a habit of the one who writes, so it holds everywhere. */
  get pause(): number {
    return this.general.pause;
  }

  /** What holds in a file now: that of the inmost folder it lies in. */
  of(uri: string): Settings {
    let [holds, length] = [this.general, 0];
    for (const [folder, settings] of this.byFolder)
      if (folder.length > length && uri.startsWith(folder)) [holds, length] = [settings, folder.length];
    return holds;
  }

  /** The hints that are wished for in a file, once the client has said. */
  readonly hintsFor = async (uri: string): Promise<HintSettings> => {
    if (this.shared().client.configuration) await (this.asked ??= this.ask());
    return this.of(uri).hints;
  };

  /** Takes settings as they were sent, or asks for them; whether findings are to be shown anew. */
  async configure(sent: unknown): Promise<boolean> {
    const before = this.ofFindings();
    if (this.shared().client.configuration) await (this.asked = this.ask());
    else this.general = this.read(sent);
    return this.ofFindings() !== before;
  }

  private async ask(): Promise<void> {
    const { connection, log } = this.shared();
    const folders = this.folders();
    const section = 'fettle';
    try {
      const items = [{ section }, ...folders.map((scopeUri) => ({ scopeUri, section }))];
      const answers: unknown = await connection.workspace.getConfiguration(items);
      const [general, ...own] = Array.isArray(answers) ? (answers as unknown[]) : [];
      this.general = this.read(general);
      this.byFolder = new Map(folders.map((uri, n) => [`${uri.replace(/\/$/, '')}/`, this.read(own[n])]));
    } catch (error) {
      log(`workspace/configuration: ${wordsOf(error)}`);
      this.asked = undefined;
    }
  }

  private read(value: unknown): Settings {
    const { settings, problem } = settingsOf(value);
    if (problem) this.shared().log(problem);
    return settings;
  }

  private ofFindings(): string {
    const from = [...this.byFolder].map(([folder, settings]) => [folder, settings.from]);
    return JSON.stringify([this.general.from, this.general.pause, from]);
  }
}
