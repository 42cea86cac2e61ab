// Goes through files and judges them one after the other, so that no more than one build is held at a time.
import { judgeFile } from '../core/judge/judge';
import { isTrouble, type Host } from '../host/host';
import type { LoadedFile, Loader } from '../session/loader';
import { failedWords, troubleAt, type RunTrouble } from '../session/run-trouble';
import { fileRef, type FileRef } from '../session/texts';
import { mayRestOn } from '../session/users';
import type { Ours } from '../session/walk';
import type { Section } from '../report/section';

/**
 * Texts held at once, in UTF-16 units; what is read from a text takes some forty times as much. Holding more saves
 * little: most parts are read again by builds far apart, and reading is cheap.
 */
const heldText = 150_000;

/** The paths of files. */
export const pathsOf = (host: Host, files: readonly Ours[]): ReadonlySet<string> =>
  new Set(files.map((file) => host.pathIn(file.root, file.name)));

export const buildsAmong = (files: readonly Ours[]): number => files.filter(({ kind }) => kind === 'build').length;

/** A section with the root its file lies under, since paths are shown from elsewhere. */
export interface CheckRun {
  readonly section: Section;
  readonly root: string;
  /** A build with what it was judged from. */
  readonly file?: LoadedFile;
  /** The path of a file that is not checked for itself: a build brought it, and it is reported once. */
  readonly brought?: string;
}

export interface JudgingOptions {
  readonly host: Host;
  readonly loader: Loader;
  readonly files: readonly Ours[];
  /** The paths of all files of the run, where these are some of them. */
  readonly listed?: ReadonlySet<string>;
  /** Whether a named build is judged without the files it is made of. */
  readonly alone: boolean;
}

export class Judging {
  /** The paths of files that have or had their turn. */
  private readonly listed: ReadonlySet<string>;
  private readonly brought = new Set<string>();
  /** Files beside those listed that could be read, which only a build named by itself brings. */
  private readonly sound = new Set<string>();
  private readonly told = new Map<string, RunTrouble>();

  constructor(private readonly options: JudgingOptions) {
    const { host, files } = options;
    this.listed = options.listed ?? pathsOf(host, files);
  }

  /** What kept files from being read and checks from being run, so far. */
  get troubles(): readonly RunTrouble[] {
    return [...this.told.values()];
  }

  async *sections(): AsyncGenerator<CheckRun> {
    for (const file of this.options.files) yield* this.of(file);
  }

  /** The sections of one of the files. */
  async *of(file: Ours): AsyncGenerator<CheckRun> {
    try {
      yield* this.sectionsOf(file);
    } catch (error) {
      this.failed(file, error);
    }
  }

  /** What `print` makes of a section; undefined, and one line among the troubles, where it throws. */
  async guarded<T>({ section, root }: CheckRun, print: () => Promise<T>): Promise<T | undefined> {
    try {
      return await print();
    } catch (error) {
      this.failed({ root, name: section.doc.name }, error);
      return undefined;
    }
  }

  private async *sectionsOf(file: Ours): AsyncGenerator<CheckRun> {
    const { host, loader } = this.options;
    const place = fileRef(host, file.root, file.name);
    const loaded = await this.load(file, place);
    if (loaded) yield* this.loaded(loaded, file);
    loader.texts.evict(heldText);
  }

  /** Undefined for what cannot be read, which is told, and for what rests on nothing that it is checked for. */
  private async load(file: Ours, place: FileRef): Promise<LoadedFile | undefined> {
    const { loader } = this.options;
    if (file.restsOn && (file.kind === 'build' || file.restsOn.every(({ isBuild }) => isBuild))) {
      const doc = await loader.texts.read(place);
      if (doc && !isTrouble(doc) && !mayRestOn(doc.text, file.restsOn)) return undefined;
    }
    const loaded = await loader.load(place);
    if (!loaded && file.kind === 'guide' && !loader.texts.troubleAt(place.path)) {
      if (file.named) this.tell(file, 'is a text that nothing ties to a build.');
      return undefined;
    }
    if (!loaded) this.tell(file, loader.texts.troubleAt(place.path) ?? 'there is no such file.');
    return loaded && file.restsOn?.every(({ path }) => !loaded.reads.get(path)) ? undefined : loaded;
  }

  private async *loaded(file: LoadedFile, { named, restsOn, along }: Ours): AsyncGenerator<CheckRun> {
    const { place, doc, build, judgement } = file;
    for (const { name, trouble } of file.troubles) this.tell({ root: place.root, name }, trouble);
    if (file.guide) return void (yield* this.guide(file, restsOn !== undefined));
    const title = build?.file.build.value;
    yield this.noted(
      {
        doc,
        judgement,
        ...(build ? { build, settings: build.house } : {}),
        ...(title ? { title } : {}),
        ...(restsOn || along ? { along: true } : {}),
      },
      place.root,
      file,
    );
    if (!build) return;
    this.options.loader.texts.forget(place.path);
    yield* this.filesOf(file, named && !this.options.alone);
  }

  /** A guide, then each of its fenced blocks. */
  private *guide({ blocks = [], guide, ...file }: LoadedFile, along: boolean): Generator<CheckRun> {
    const { place, doc, judgement } = file;
    const own = { doc, judgement, settings: file.house, ...(along ? { along } : {}) };
    yield this.noted(own, place.root, { ...file, guide });
    for (const [i, block] of blocks.entries()) {
      const title = block.build?.file.build.value;
      const section = { ...block, block: i + 1, settings: file.house, ...(title ? { title } : {}) };
      yield this.noted(section, place.root, { ...file, ...block, blocks });
    }
  }

  /**
   * A build that was named by itself brings the files it is made of: a slip in them is a slip of the build. Any other
   * brings those of them that could not be read.
   */
  private async *filesOf({ place, house, reads, pathOf }: LoadedFile, brings: boolean): AsyncGenerator<CheckRun> {
    const brought = new Set<string>(['part', 'known', 'asbuilt']);
    const parts = [...reads.values()].flatMap((doc) => (doc && brought.has(doc.kind) ? [doc] : []));
    const used = parts.sort((a, b) => (a.name < b.name ? -1 : 1));
    for (const doc of house.doc ? [house.doc, ...used] : used) {
      const path = pathOf(doc);
      if (this.listed.has(path) || this.brought.has(path) || (!brings && this.sound.has(path))) continue;
      const judgement = judgeFile(doc, { today: this.options.loader.today() });
      if (brings || judgement.findings.some(({ check }) => check.unread)) {
        this.brought.add(path);
        const section = await this.marked({ doc, judgement }, { ...place, name: doc.name, path });
        yield { ...this.noted(section, place.root), brought: path };
      } else this.sound.add(path);
    }
  }

  private async marked<S extends Section>(section: S, place: FileRef): Promise<S> {
    return { ...section, judgement: await this.options.loader.withKnown(place, section.judgement) };
  }

  private noted(section: Section, root: string, file?: LoadedFile): CheckRun {
    for (const failed of section.judgement.failed) this.tell({ root, name: section.doc.name }, failedWords(failed));
    return { section, root, ...(file ? { file } : {}) };
  }

  /** One file’s fault is one line of the report: it takes nothing of the other files with it. */
  private failed(file: Pick<Ours, 'root' | 'name'>, error: unknown): void {
    const words = error instanceof Error ? error.message : String(error);
    this.tell(file, `its report failed by a fault of Fettle’s own: ${words}`);
  }

  /** What many builds meet in one file is said once. */
  private tell({ root, name }: Pick<Ours, 'root' | 'name'>, trouble: string): void {
    const told = troubleAt(this.options.host.shown(root, name), trouble);
    this.told.set(`${told.path}\n${trouble}`, told);
  }
}
