// Goes through files and judges them one after the other, so that no more than one build is held at a time.
import { judgeFile } from '../core/judge/judge';
import { Doc } from '../core/parts/doc';
import { isTrouble, type Host } from '../host/host';
import type { LoadedFile, Loader } from '../session/loader';
import { troubleAt, type RunTrouble } from '../session/run-trouble';
import { fileRef, type FileRef } from '../session/texts';
import { mayRestOn } from '../session/users';
import type { Ours } from '../session/walk';
import type { Section } from '../report/section';

/** Texts held at once, in UTF-16 units; what is read from a text takes some forty times as much. */
const heldText = 1_000_000;

/** A section with the root its file lies under, since paths are shown from elsewhere. */
export interface CheckRun {
  readonly section: Section;
  readonly root: string;
  /** A build with what it was judged from. */
  readonly file?: LoadedFile;
}

export interface JudgingOptions {
  readonly host: Host;
  readonly loader: Loader;
  readonly files: readonly Ours[];
  /** Whether a named build is judged without the files it is made of. */
  readonly alone: boolean;
}

export class Judging {
  private readonly seen: Set<string>;
  private readonly told = new Map<string, RunTrouble>();
  /** Parts that are listed and were judged when a build first read them; their turn comes later. */
  private readonly early = new Map<string, Section>();
  /** Part files whose turn has not come and that no build has read yet. */
  private readonly unread: Set<string>;

  constructor(private readonly options: JudgingOptions) {
    const { host, loader, files } = options;
    this.seen = new Set(files.map((file) => host.pathIn(file.root, file.name)));
    this.unread = new Set(
      files.filter((file) => file.kind === 'part').map((file) => host.pathIn(file.root, file.name)),
    );
    loader.texts.onRead = (doc, { path }) => this.judgeEarly(path, doc);
  }

  /** What kept files from being read and checks from being run, so far. */
  get troubles(): readonly RunTrouble[] {
    return [...this.told.values()];
  }

  async *sections(): AsyncGenerator<CheckRun> {
    for (const file of this.options.files) {
      try {
        yield* this.sectionsOf(file);
      } catch (error) {
        this.failed(file, error);
      }
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
    const before = this.early.get(place.path);
    this.early.delete(place.path);
    if (before) yield this.noted(await this.marked(before, place), file.root);
    if (before || (file.kind === 'part' && !this.unread.delete(place.path))) return;
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

  private async *loaded(file: LoadedFile, { named, restsOn }: Ours): AsyncGenerator<CheckRun> {
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
        ...(restsOn ? { along: true } : {}),
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
      if (this.seen.has(path)) continue;
      this.seen.add(path);
      const judgement = judgeFile(doc, { today: this.options.loader.today() });
      if (brings || judgement.findings.some(({ check }) => check.unread))
        yield this.noted(await this.marked({ doc, judgement }, { ...place, name: doc.name, path }), place.root);
    }
  }

  private async marked<S extends Section>(section: S, place: FileRef): Promise<S> {
    return { ...section, judgement: await this.options.loader.withKnown(place, section.judgement) };
  }

  /** A part with nothing to find is kept as its text alone. */
  private judgeEarly(path: string, doc: Doc): void {
    if (!this.unread.delete(path)) return;
    const judgement = judgeFile(doc);
    const kept = judgement.findings.length === 0 ? new Doc(doc.name, doc.kind, doc.text) : doc;
    this.early.set(path, { doc: kept, judgement: { ...judgement, answers: [] } });
  }

  private noted(section: Section, root: string, file?: LoadedFile): CheckRun {
    for (const { id, error } of section.judgement.failed)
      this.tell({ root, name: section.doc.name }, `the check ${id} failed by a fault of its own: ${error}`);
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
