// `fettle check --record-known`: what a run finds, written down as known.
import { knownFindings, type KnownFinding } from '../core/build/known-findings';
import { WorkspaceConfig } from '../core/build/workspace-config';
import type { Grade } from '../core/manifest/house-file';
import { Doc, kindOfFile } from '../core/parts/doc';
import { houseName, isTrouble, splitPath, staysBelow, within } from '../host/host';
import { knownFileText } from '../report/known-file';
import { safe } from '../report/layout';
import { Recording, type Answering } from '../review/recording';
import { fileRef, Texts } from '../session/texts';
import type { CheckRun } from './judged';
import { openOutput } from './output';
import { refusal, type World } from './world';

interface Options {
  readonly recordKnown?: string;
  readonly by?: string;
  readonly until?: string;
  readonly from?: Grade;
  readonly onlyNew?: string;
  readonly settingsFrom?: string;
  readonly stdin?: true;
  readonly show?: true;
}

/** Where the record lies: its workspace’s root, its name below that, and what it says so far. */
interface Place {
  readonly root: string;
  readonly name: string;
  readonly before: readonly KnownFinding[];
  readonly isNew: boolean;
}

/** @throws Refusal where the options do not go together, or the file cannot be one of known findings. */
export async function recordingFor(options: Options, on: string, world: World): Promise<KnownRun | undefined> {
  const { recordKnown: file, by, until } = options;
  if (file === undefined) {
    if (by !== undefined || until !== undefined) throw refusal`--by and --until go with --record-known.`;
    return undefined;
  }
  if (options.onlyNew !== undefined || options.settingsFrom !== undefined || options.stdin || options.show)
    throw refusal`--record-known records all that stands here: leave the other option out.`;
  const place = await placeOf(file, world);
  const answering = answeringOf(by, until, on);
  if (place.isNew && !answering)
    throw refusal`${file}: nothing is recorded yet; say by --by WHO and --until DAY who lets it stand until when.`;
  return new KnownRun(file, place, new Recording(place.before, answering, options.from ?? 'note', on), world);
}

function answeringOf(by: string | undefined, until: string | undefined, on: string): Answering | undefined {
  if (by === undefined && until === undefined) return undefined;
  if (!by?.trim()) throw refusal`--until goes with --by WHO: nothing is let stand without a name.`;
  if (until === undefined) throw refusal`--by goes with --until DAY: nothing is let stand for ever.`;
  if (until <= on) throw refusal`--until ${until}: that day has come; name a later one.`;
  return { by: by.trim(), until };
}

async function placeOf(file: string, { host }: World): Promise<Place> {
  if (kindOfFile(file) !== 'known') throw refusal`${file}: expected a name that ends in .known.yaml.`;
  const [beside, step] = splitPath(file);
  const found = await host.find(file);
  const folder = isTrouble(found) ? await host.find(beside) : found;
  if (isTrouble(folder)) throw refusal`${file}: ${folder}`;
  const name = isTrouble(found) ? within(folder.name, step) : found.name;
  if (!staysBelow(name)) throw refusal`${file}: expected a path of a file in the workspace.`;
  const doc = isTrouble(found) ? undefined : await new Texts().read(fileRef(host, folder.root, name));
  if (isTrouble(doc)) throw refusal`${file}: ${doc}`;
  if (doc && doc.parsed.problems.length > 0)
    throw refusal`${file}: cannot be read whole, so recording would lose what it says; mend it first.`;
  return { root: folder.root, name, before: doc ? knownFindings(doc) : [], isNew: doc === undefined };
}

export class KnownRun {
  private elsewhere = 0;
  private harm = 0;

  constructor(
    private readonly file: string,
    private readonly place: Place,
    private readonly recording: Recording,
    private readonly world: World,
  ) {}

  /** The record’s path, as hosts name it. */
  get path(): string {
    return this.world.host.pathIn(this.place.root, this.place.name);
  }

  /** The run with what is known of it by now. */
  taken(run: CheckRun): CheckRun {
    const { section, root } = run;
    const { doc, block, build, judgement } = section;
    if (doc.kind === 'known') return run;
    if (root !== this.place.root) {
      this.elsewhere++;
      return run;
    }
    this.harm += judgement.findings.filter(({ grade, accepted }) => grade === 'harm' && !accepted).length;
    return {
      ...run,
      section: { ...section, judgement: this.recording.take({ file: doc.name, block, build, judgement }) },
    };
  }

  /** Writes the record, unless something was not read: what was not looked at would be lost. */
  async done(paths: readonly string[], isTroubled: boolean): Promise<void> {
    const { file, world, recording } = this;
    const language = world.language();
    const { name } = this.place;
    if (isTroubled)
      return void world.err(
        `fettle: ${safe(world.language().words`${file}: nothing is recorded, since not everything was read.`)}\n`,
      );
    const gone = await this.gone(paths);
    const text = knownFileText(recording.records((name) => gone.has(name)));
    if (new Doc(name, 'known', text).parsed.problems.length > 0)
      throw refusal`${file}: so many findings are more than one file holds; record each folder in one of its own.`;
    const output = openOutput(world, file);
    try {
      output.write(text);
      output.done();
    } finally {
      output.drop();
    }
    world.err(
      this.summary()
        .map((line) => `fettle: ${safe(line)}\n`)
        .join(''),
    );
    if (!(await this.isNamed()))
      world.err(`fettle: ${safe(language.words`so that it counts, fettle.yaml is to say: known: [${name}]`)}\n`);
  }

  private summary(): string[] {
    const { taken, kept, dropped, open } = this.recording.counts;
    const language = this.world.language();
    const counts =
      taken === 1
        ? language.words`${this.file}: 1 finding taken in, ${kept} kept, ${dropped} dropped.`
        : language.words`${this.file}: ${taken} findings taken in, ${kept} kept, ${dropped} dropped.`;
    return [
      counts,
      ...some(
        open,
        language.word('1 finding stays open: not recorded.'),
        () => language.words`${open} findings stay open: not recorded.`,
      ),
      ...some(
        this.harm,
        language.word('1 finding of harm: never recorded.'),
        () => language.words`${this.harm} findings of harm: never recorded.`,
      ),
      ...some(
        this.elsewhere,
        language.word('1 file of other workspaces: record each in a file of its own.'),
        () => language.words`${this.elsewhere} files of other workspaces: record each in a file of its own.`,
      ),
    ];
  }

  /** The recorded files that are there no more, where the run went over the whole workspace. */
  private async gone(paths: readonly string[]): Promise<ReadonlySet<string>> {
    const { host } = this.world;
    const { root, before } = this.place;
    const gone = new Set<string>();
    for (const path of paths) {
      const found = await host.find(path);
      if (isTrouble(found) || found.kind !== 'folder' || found.root !== root || found.name !== '') continue;
      for (const { file } of before) if (isTrouble(await host.find(host.pathIn(root, file)))) gone.add(file);
    }
    return gone;
  }

  private async isNamed(): Promise<boolean> {
    const { root, name } = this.place;
    const house = await new Texts().read(fileRef(this.world.host, root, houseName));
    return house instanceof Doc && new WorkspaceConfig(house).knownFiles.includes(name);
  }
}

const some = (count: number, one: string, several: () => string): string[] =>
  count === 0 ? [] : [count === 1 ? one : several()];
