// `fettle uses`: which builds use a part, a place or a firmware version, and what would come of them if the part file
// said otherwise.
import type { Command } from 'commander';
import { Build } from '../core/build/build';
import { WorkspaceConfig } from '../core/build/workspace-config';
import { Guide } from '../core/guide/guide';
import { answersApart, type Judgement } from '../core/judge/finding';
import { checksBeside, judgeBuild } from '../core/judge/judge';
import type { Grade } from '../core/manifest/house-file';
import type { Doc } from '../core/parts/doc';
import { isPartName, nameOfPath } from '../core/parts/part-name';
import { isTrouble, type Host } from '../host/host';
import { brings, comparisonText } from '../report/compare-text';
import { toJson } from '../report/json';
import { usesText, type UseRow } from '../report/uses';
import { compareFile, lackCount } from '../review/compare';
import type { Comparison, FileComparison } from '../review/comparison';
import { readSaid, saying, usesIn, type Asked, type Said, type Use } from '../review/uses';
import { Loader } from '../session/loader';
import { shortPath, troubleAt, type RunTrouble } from '../session/run-trouble';
import { fileRef, heldByRun } from '../session/texts';
import { walk, type Ours } from '../session/walk';
import { byWeight } from './comparing';
import { onDay, readGrade, textOrJson } from './options';
import { tellTroubles } from './output';
import type { Language } from '../core/words/language';
import { refusal, type Status, type World } from './world';

interface Options {
  readonly at?: string;
  readonly firmware?: string;
  readonly if: readonly string[];
  readonly format: 'text' | 'json';
  readonly working?: true;
  readonly from?: Grade;
  readonly on?: string;
}

export function addUses(program: Command, world: World, end: (status: Status) => void): void {
  program
    .command('uses')
    .summary('list the builds that use a part, a place or a firmware version')
    .description(
      'Lists the builds that use a part, or that put a part into a slot, port or header, or run a firmware version, ' +
        'of this name. With --if, judges them as if the part file said something else: which break, which heal, and ' +
        'which figures move.',
    )
    .argument('<name>', 'a part as builds name it or by its file; or a slot, port, header or firmware version')
    .argument('[paths...]', 'files or folders to look through', ['.'])
    .option('--at <place>', 'only where it stands in this slot, port or header')
    .option('--firmware <version>', 'only where it arrives with this firmware, or is brought to it')
    .option(
      '--if <key: value>',
      'as if the part file said so, several times for several; keys inside each other as `draw.peak: 80 W`, and ' +
        '`height:` as if it said nothing',
      (one: string, all: readonly string[]) => [...all, one],
      [],
    )
    .addOption(textOrJson())
    .option('--working', 'with --if: show the changed lines behind every figure that moved')
    .option('--from <grade>', 'with --if: the lightest grade to list, and to end with status 1 for', readGrade)
    .addOption(onDay())
    .addHelpText(
      'after',
      '\nExit status: 0 listed, and with --if no build breaks; 1 one does; 2 the run itself failed, the part is not ' +
        'found, or not everything could be read.',
    )
    .action(async (name: string, paths: string[], options: Options) => end(await uses(name, paths, options, world)));
}

async function uses(name: string, paths: readonly string[], options: Options, world: World): Promise<Status> {
  const said = options.if.map((text) => {
    const one = readSaid(text);
    if (!one) throw refusal`--if ${JSON.stringify(text)}: expected a key and a value, as 'height: 158 mm'.`;
    return one;
  });
  const asked = askedBy(name, options);
  if (said.length > 0 && asked.part === undefined)
    throw refusal`${name}: is no part; --if says what the file of a part would say, as boreas/tower-155.`;
  const language = world.language();
  const search = new Search(world.host, asked, said, options.on ?? world.today, language);
  await search.run(paths);
  if (search.isUnheardOf) {
    const all = paths.map(shortPath).join(', ');
    throw refusal`${name}: there is no part file of that name under ${all}, and no build names it.`;
  }
  tellTroubles(search.troubles, world);
  const report = { asked: wordsOf(name, options, language), uses: search.rows, builds: search.builds };
  const json = options.format === 'json';
  if (said.length === 0) {
    world.out(json ? `${toJson(report)}\n` : usesText(report, language));
    return search.troubles.length > 0 ? 2 : 0;
  }
  const comparison = search.comparison();
  const look = { from: options.from ?? 'note', working: options.working ?? false, language };
  world.out(json ? `${toJson({ ...report, comparison })}\n` : comparisonText(comparison, look));
  if (search.troubles.length > 0) return 2;
  return brings(comparison, options.from ?? 'shortfall') ? 1 : 0;
}

/** A path to a part file stands for the part; what can name no part is a place or a version. */
function askedBy(name: string, { at, firmware }: Options): Asked {
  const part = name.endsWith('.part.yaml') ? nameOfPath(name) : name;
  return {
    ...(isPartName(part) ? { part } : { word: name }),
    ...(at === undefined ? {} : { at }),
    ...(firmware === undefined ? {} : { firmware }),
  };
}

const wordsOf = (name: string, { at, firmware }: Options, language: Language): string =>
  [
    name,
    ...(at === undefined ? [] : [language.words`at ${at}`]),
    ...(firmware === undefined ? [] : [language.words`with firmware ${firmware}`]),
  ].join(' ');

class Search {
  readonly rows: UseRow[] = [];
  readonly troubles: RunTrouble[] = [];
  builds = 0;
  private readonly files: FileComparison[] = [];
  private unknown = 0;
  private isThere = false;
  private readonly loader: Loader;
  private readonly house = new WorkspaceConfig();
  /** Part files as they would be, by their text as it is. */
  private readonly changed = new WeakMap<Doc, Doc>();

  constructor(
    private readonly host: Host,
    private readonly asked: Asked,
    private readonly said: readonly Said[],
    private readonly on: string,
    private readonly language: Language,
  ) {
    this.loader = new Loader(() => on);
  }

  async run(paths: readonly string[]): Promise<void> {
    const { files, troubles } = await walk(this.host, paths);
    this.troubles.push(...troubles);
    for (const file of files) {
      if (file.kind === 'build' || file.kind === 'guide') await this.look(file);
      if (file.kind === 'part' && this.asked.part !== undefined && file.name.endsWith(`/${this.asked.part}.part.yaml`))
        this.isThere = true;
      this.loader.texts.evict(heldByRun);
    }
  }

  /** Neither a build names the part, nor is its file among those that were looked through. */
  get isUnheardOf(): boolean {
    return this.asked.part !== undefined && !this.isThere && this.rows.length === 0 && this.troubles.length === 0;
  }

  private async look(file: Ours): Promise<void> {
    if (file.kind === 'build') this.builds++;
    const place = fileRef(this.host, file.root, file.name);
    const text = await this.loader.texts.read(place);
    if (isTrouble(text)) this.tell(file, file.name, text.trouble);
    if (!text || isTrouble(text) || !mayHold(text.text, this.asked)) return;
    const builds = this.buildsIn(text);
    if (file.kind === 'guide') this.builds += builds.length;
    const uses = builds.map((build) => usesIn(build, this.asked));
    this.rows.push(...uses.flatMap((found, i) => found.map((use) => this.row(use, builds[i]!, file))));
    if (this.said.length === 0 || uses.every(({ length }) => length === 0)) return;
    const read = await this.loader.read(place);
    for (const { name, trouble } of read?.troubles ?? []) this.tell(file, name, trouble);
    const whole = read?.build ? [read.build] : (read?.guide?.blocks ?? []).flatMap(({ build }) => build ?? []);
    for (const build of whole) this.whatIf(build, usesIn(build, this.asked), file);
  }

  /** The builds of a file without their part files: what they name, and where it goes, stands in the file itself. */
  private buildsIn(doc: Doc): readonly Build[] {
    const find = (): undefined => undefined;
    if (doc.kind === 'build') return [new Build(doc, find, this.house, this.on)];
    return new Guide(doc, find, this.house, this.on).blocks.flatMap(({ build }) => build ?? []);
  }

  private row({ placed, places, firmware }: Use, { doc, file: { build: title } }: Build, file: Ours): UseRow {
    const { used, path, span } = placed;
    return {
      file: this.host.shown(file.root, file.name),
      line: doc.lines.positionAt((used?.span ?? span).start).line + 1,
      ...(title.value === undefined ? {} : { title: title.value }),
      subject: path,
      ...(used ? { part: used.name } : {}),
      places,
      firmware,
    };
  }

  /** Judges a build as it is, and as the part file would have it: there only what looks at the part is asked again. */
  private whatIf(build: Build, found: readonly Use[], file: Ours): void {
    if (found.length === 0) return;
    const doc = found[0]!.placed.used?.file;
    if (!doc)
      return this.tell(
        file,
        file.name,
        this.language.words`names ${this.asked.part ?? ''}, whose file is not found: --if cannot be asked.`,
      );
    const now = this.saying(doc, file);
    const before = judgeBuild(build);
    const other = build.withPartFile(doc, now);
    const known = answersApart(before, [...new Set(found.map(({ placed }) => placed.role))]);
    const after: Judgement = judgeBuild(other, { known, checks: checksBeside(known) });
    const shown = (one: Doc): string => this.host.shown(file.root, one.name);
    const sides = [
      { doc: build.doc, judgement: before, build, shown, language: this.language },
      { doc: build.doc, judgement: after, build: other, shown, language: this.language },
    ] as const;
    this.files.push(compareFile(...sides, [shown(doc)]));
    this.unknown += lackCount(sides[1]);
  }

  private saying(doc: Doc, { root }: Ours): Doc {
    const made = this.changed.get(doc) ?? saying(doc, this.said);
    if (typeof made === 'string') throw refusal`${this.host.shown(root, doc.name)}: ${{ trouble: made }}`;
    this.changed.set(doc, made);
    return made;
  }

  /** What the change of the part file would do, those builds first that it breaks. */
  comparison(): Comparison {
    const { on, files, builds, unknown, troubles } = this;
    return {
      before: this.language.word('as it stands'),
      after: this.language.words`with ${this.said.map(({ text }) => text).join(', ')}`,
      on,
      files: [...files].sort(byWeight),
      covers: { builds, touched: files.length, unknown },
      troubles: troubles.map((one) => ({ side: 'after', ...one })),
    };
  }

  private tell({ root }: Ours, name: string, trouble: string): void {
    const path = this.host.shown(root, name);
    if (!this.troubles.some((told) => told.path === path && told.trouble === trouble))
      this.troubles.push(troubleAt(path, trouble));
  }
}

/** Whether a text can name what is asked for; what is written with escapes is not seen as text. */
function mayHold(text: string, { part, at, firmware, word }: Asked): boolean {
  return text.includes('\\') || [part, at, firmware, word].every((one) => one === undefined || text.includes(one));
}
