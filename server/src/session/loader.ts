// Loads one file with every file that it rests on, and judges it: the one way in, for the server and the command alike.
import { Build, type FindPart } from '../core/build/build';
import type { KnownFinding } from '../core/build/known-findings';
import { recordOf } from '../core/machine/as-built';
import type { AsBuilt } from '../core/manifest/as-built';
import { WorkspaceConfig } from '../core/build/workspace-config';
import { Guide } from '../core/guide/guide';
import { isTied, tiesOf } from '../core/guide/ties';
import { judgeAgain } from '../core/judge/again';
import type { Judgement } from '../core/judge/finding';
import { judgeBuild, judgeFile, judgeGuide } from '../core/judge/judge';
import type { FencedDoc } from '../core/guide/fenced';
import { kindOfFile, recordName, type Doc } from '../core/parts/doc';
import { partPath } from '../core/parts/part-name';
import { houseName, isTrouble, nameFrom, staysBelow, type Awaitable, type Host } from '../host/host';
import { withKnown } from '../review/known';
import { recordsOf } from './known-records';
import { fileRef, Texts, type FileRef } from './texts';

/** A file that was read with every file it names. */
export interface FileRead<H extends Host = Host> {
  readonly place: FileRef<H>;
  readonly doc: Doc;
  readonly build?: Build;
  /** Present where the file is a guide. */
  readonly guide?: Guide;
  readonly house: WorkspaceConfig;
  /** What the house’s files of known findings say of it. */
  readonly known: readonly KnownFinding[];
  /** Every path that was looked at, with what stood there. */
  readonly reads: ReadonlyMap<string, Doc | undefined>;
  /** The same with what was looked at later, for fixes; it grows. */
  readonly looked: ReadonlyMap<string, Doc | undefined>;
  /** Files that could not be read, by name, and why. */
  readonly troubles: readonly { readonly name: string; readonly trouble: string }[];
  /** The path of a file that was read. */
  readonly pathOf: (doc: Doc) => string;
}

/** A judged file, with what its judgement rests on. */
export interface LoadedFile<H extends Host = Host> extends FileRead<H> {
  readonly judgement: Judgement;
  /** The day that counted as today. */
  readonly judgedOn: string;
  /** The fenced blocks of a guide, each judged as a file of its own. */
  readonly blocks?: readonly JudgedBlock[];
}

/** A fenced block of a guide; its places are the guide’s. */
export interface JudgedBlock {
  readonly doc: FencedDoc;
  readonly build?: Build;
  readonly judgement: Judgement;
}

/** The parts folders of a house that lie below its root; the others are reported, and nothing in them is read. */
export const partsFolders = (house: Pick<WorkspaceConfig, 'folders'>): readonly string[] =>
  house.folders.filter(staysBelow);

export class Loader {
  readonly texts = new Texts();
  private readonly plainHouse = new WorkspaceConfig();

  /**
   * `today` gives the day that counts as today, as `2026-11-25`; `alsoKnown` a file of known findings that counts
   * though no settings name it, by its path.
   */
  constructor(
    readonly today: () => string,
    private readonly alsoKnown?: string,
  ) {}

  /**
   * Judges a file as it stands now. At once where its host reads at once. Undefined where it is not there or cannot be
   * read, which `texts.troubleAt` then tells. `before`: the same file as it was judged last.
   */
  load<H extends Host>(place: FileRef<H>, before?: LoadedFile<H>): Awaitable<LoadedFile<H> | undefined> {
    const pass = this.pass(place);
    const read = pass.read(this.plainHouse);
    const result = read && pass.judge(read, before);
    return pass.pending.length > 0 ? Promise.all(pass.pending).then(() => this.load(place, before)) : result;
  }

  /** The same without judging it, for whoever asks what a file names. */
  read<H extends Host>(place: FileRef<H>): Awaitable<FileRead<H> | undefined> {
    const pass = this.pass(place);
    const result = pass.read(this.plainHouse);
    return pass.pending.length > 0 ? Promise.all(pass.pending).then(() => this.read(place)) : result;
  }

  /** The judgement of a file by itself, with what is known of it. */
  withKnown(place: FileRef, judgement: Judgement): Awaitable<Judgement> {
    if (judgement.findings.length === 0) return judgement;
    const pass = this.pass(place);
    const known = pass.knownAlone(this.plainHouse);
    return pass.pending.length > 0
      ? Promise.all(pass.pending).then(() => this.withKnown(place, judgement))
      : withKnown(judgement, undefined, known, this.today());
  }

  private pass<H extends Host>(place: FileRef<H>): LoadPass<H> {
    return new LoadPass(this.texts, place, this.today(), this.alsoKnown);
  }
}

/** One try at judging: what is not read yet is asked for, and the judging is tried again when it has come. */
class LoadPass<H extends Host> {
  readonly pending: Promise<unknown>[] = [];
  private readonly reads = new Map<string, Doc | undefined>();
  private readonly troubles: { name: string; trouble: string }[] = [];
  private readonly paths = new Map<Doc, string>();

  constructor(
    private readonly texts: Texts,
    private readonly place: FileRef<H>,
    private readonly today: string,
    private readonly alsoKnown: string | undefined,
  ) {}

  read(plainHouse: WorkspaceConfig): FileRead<H> | undefined {
    const { today } = this;
    const doc = this.textOf(this.place.name);
    const houseDoc = this.place.name === houseName ? doc : this.textOf(houseName);
    if (!doc || this.pending.length > 0 || (doc.kind === 'guide' && !isTied(doc))) return undefined;
    const house = houseOf(houseDoc, plainHouse);
    for (const folder of house.folders) if (!staysBelow(folder)) this.refuseFolder(folder);
    const folders = partsFolders(house);
    const find = (name: string): Doc | undefined => this.part(folders, name);
    const build = doc.kind === 'build' ? new Build(doc, find, house, today, this.machine()) : undefined;
    const guide = doc.kind === 'guide' ? this.guide(doc, find, house, today) : undefined;
    const known = this.known(house, doc, build?.file.build.value);
    if (this.pending.length > 0) return undefined;
    const { place, paths } = this;
    const pathOf = (of: Doc): string => paths.get(of) ?? place.host.pathIn(place.root, of.name);
    return {
      place,
      doc,
      ...(build ? { build } : {}),
      ...(guide ? { guide } : {}),
      house,
      known,
      ...this.restsOn(),
      looked: this.reads,
      pathOf,
    };
  }

  judge(read: FileRead<H>, before?: LoadedFile<H>): LoadedFile<H> {
    const { guide, build, doc } = read;
    const judged = guide ? judgeGuide(guide) : this.judged(doc, build, before);
    const judgement = this.marked(read, judged, build);
    const judgedOn = this.today;
    if (!guide) return { ...read, judgement, judgedOn, ...this.restsOn() };
    const blocks = guide.blocks.map((block, i) => ({
      ...block,
      judgement: this.marked(read, this.judged(block.doc, block.build), block.build, i + 1),
    }));
    return { ...read, judgement, judgedOn, blocks, ...this.restsOn() };
  }

  private judged(doc: Doc, build: Build | undefined, before?: LoadedFile<H>): Judgement {
    if (build && before?.build) return judgeAgain(build, { build: before.build, judgement: before.judgement });
    return build ? judgeBuild(build) : judgeFile(doc, { today: this.today });
  }

  private marked({ known }: FileRead<H>, judgement: Judgement, build?: Build, block?: number): Judgement {
    const records = known.filter((one) => one.block === block);
    return withKnown(judgement, build, records, this.today);
  }

  /** What is known of a file, read without the rest. */
  knownAlone(plainHouse: WorkspaceConfig): readonly KnownFinding[] {
    const doc = this.textOf(this.place.name);
    return doc ? this.known(houseOf(this.textOf(houseName), plainHouse), doc, undefined) : [];
  }

  private known(house: WorkspaceConfig, doc: Doc, title: string | undefined): readonly KnownFinding[] {
    const { place, alsoKnown } = this;
    return recordsOf(doc, title, house.knownFiles, {
      place,
      alsoKnown,
      textOf: (name) => this.textOf(name),
      isPending: () => this.pending.length > 0,
      isTroubled: (name) => this.troubles.some((one) => one.name === name),
      tell: (trouble) => this.troubles.push({ name: houseName, trouble }),
    });
  }

  /** What the finished machine said of itself, where its record lies beside the build. */
  private machine(): AsBuilt | undefined {
    const name = recordName(this.place.name);
    const record = name === undefined ? undefined : this.textOf(name);
    return record && recordOf(record);
  }

  /** A guide with the build that its front matter names by its path from the guide’s own folder. */
  private guide(doc: Doc, find: FindPart, house: WorkspaceConfig, today: string): Guide {
    const path = nameFrom(doc.name, tiesOf(doc).build?.path ?? '');
    const named = path !== undefined && kindOfFile(path) === 'build' ? this.textOf(path) : undefined;
    return new Guide(doc, find, house, today, named && new Build(named, find, house, today));
  }

  /** Copies: a build that is tried with another part looks for it here later, and does not rest on it. */
  private restsOn(): Pick<FileRead, 'reads' | 'troubles'> {
    return { reads: new Map(this.reads), troubles: [...this.troubles] };
  }

  private refuseFolder(folder: string): void {
    const trouble = `names a parts folder that does not lie below it, ${JSON.stringify(folder)}; it is not read.`;
    this.troubles.push({ name: houseName, trouble });
  }

  /** A part file by name, from the first of the parts folders that has it. */
  private part(folders: readonly string[], name: string): Doc | undefined {
    for (const folder of folders) {
      const path = partPath(folder, name);
      const doc = path === undefined ? undefined : this.textOf(path);
      if (doc) return doc;
    }
    return undefined;
  }

  private textOf(name: string): Doc | undefined {
    const file = fileRef(this.place.host, this.place.root, name);
    if (this.reads.has(file.path)) return this.reads.get(file.path);
    const read = this.texts.read(file);
    if (read instanceof Promise) {
      this.pending.push(read);
      return undefined;
    }
    if (isTrouble(read)) this.troubles.push({ name, trouble: read.trouble });
    const doc = isTrouble(read) ? undefined : read;
    this.reads.set(file.path, doc);
    if (doc) this.paths.set(doc, file.path);
    return doc;
  }
}

/** House settings are read once a text. */
const houseOf = (doc: Doc | undefined, plain: WorkspaceConfig): WorkspaceConfig =>
  doc?.kept(WorkspaceConfig, () => new WorkspaceConfig(doc)) ?? plain;
