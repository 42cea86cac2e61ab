// `fettle check`: findings of all builds, part files and house settings under the named paths.
import { Option, type Command } from 'commander';
import type { Grade } from '../core/manifest/house-file';
import type { Doc } from '../core/parts/doc';
import { Tally } from '../report/tally';
import type { TextFormatOptions } from '../report/text';
import type { Host } from '../host/host';
import { Loader } from '../session/loader';
import { shortPath, troubleAt, type RunTrouble } from '../session/run-trouble';
import { withUsers } from '../session/users';
import { walk, type Ours, type Walked } from '../session/walk';
import { Crew, threadsFor } from './crew';
import { buildsAmong } from './judged';
import { keptRun } from './kept-run';
import { Mend, showMended } from './mend';
import { OneByOne, type Printed } from './one-by-one';
import { Mending } from '../session/mending';
import { onDay, readCount, readDay, readGrade } from './options';
import { sinceRevision } from './only-new';
import { openOutput, tellTroubles } from './output';
import { recordingFor } from './recording';
import { judgeShard } from './shard';
import { readShare, type Share } from './shares';
import { Stale } from './stale';
import { Progress } from './progress';
import { formats, isWhole, printers, type Format } from './printers';
import { hostFor, judgingOf } from './settings-from';
import { refuseAtOdds, withInput } from './standard-input';
import { watchCheck, type WatchOptions } from './watch';
import type { Setup } from './stretch';
import { statusOf } from './status';
import type { Status, World } from './world';

interface Options {
  readonly format: Format;
  readonly from?: Grade;
  readonly on?: string;
  readonly working?: true;
  readonly accepted?: true;
  readonly alone?: true;
  readonly allFixes?: true;
  readonly output?: string;
  readonly onlyNew?: string;
  readonly recordKnown?: string;
  readonly by?: string;
  readonly until?: string;
  readonly settingsFrom?: string;
  readonly quiet?: true;
  readonly stdin?: true;
  readonly as?: string;
  readonly mend?: true;
  readonly show?: true;
  readonly watch?: true;
  readonly workers?: number;
  readonly shard?: Share;
  readonly cache?: string;
}

export function addCheck(program: Command, world: World, end: (status: Status) => void): void {
  program
    .command('check')
    .summary('check builds, and say what does not hold')
    .description(
      'Checks the builds, part files and house settings under the named paths. A build named by itself is ' +
        'checked together with the files it is made of and the guides that name it, and a part file or settings ' +
        'with the builds and guides of its workspace that use it.',
    )
    .argument('[paths...]', 'files or folders', ['.'])
    .addOption(new Option('--format <format>', 'how to write').choices(formats).default('text'))
    .option('--working', 'show the figures behind every finding, down to file and line')
    .option(
      '--from <grade>',
      'the lightest grade to list, and to end with status 1 for: harm, stop, shortfall, note or unknown ' +
        '(without it: lists from note, status 1 from shortfall)',
      readGrade,
    )
    .option('--accepted', 'list findings that a build accepts, too')
    .option('--all-fixes', 'list all proven fixes of each finding, not the best alone')
    .option('--alone', 'check the named files only: no files or guides of a build, no builds that use a part')
    .option('--only-new <revision>', 'list what is new or worse since this revision of git only')
    .option(
      '--record-known <file>',
      'record what stands as known in this file, NAME.known.yaml: drops what is found no more, and with --by and ' +
        '--until takes in what is found; harm never',
    )
    .option('--by <who>', 'who lets stand what is recorded')
    .option('--until <date>', 'the day from which it counts again, as 2027-06-30', readDay)
    .option('--settings-from <revision>', 'judge by the settings as they stand in this revision of git')
    .option('--quiet', 'list only what ends the run with status 1, and write nothing where there is nothing')
    .option('--stdin', 'check the text on standard input, as if it stood at the path that --as names')
    .option('--as <path>', 'where the text on standard input is to stand; the file need not be there')
    .option('--mend', 'make the fixes that need nobody’s judgement in the named files, then check; says what is left')
    .option('--show', 'with --mend: write the changes as a unified diff and change no file')
    .option('--watch', 'check again what a change of files touches, until ended; then with the status as of then')
    .addOption(onDay())
    .option(
      '--workers <count>',
      'judge on so many threads (without it: by cores, where files and cores are many)',
      readCount,
    )
    .option(
      '--shard <i/n>',
      'judge the i-th of n shares of the files, with --format json; `fettle merge` puts the reports of all together',
      readShare,
    )
    .option(
      '--cache <folder>',
      'keep judgements in this folder for the next run, and take those that still hold; whoever can write there ' +
        'decides what is found',
    )
    .option('--output <file>', 'write into a file, whole or not at all')
    .addHelpText(
      'after',
      '\nExit status: 0 nothing at or above the grade; 1 findings, or something was not read; 2 the run itself ' +
        'failed.\nWith --mend --show: 0 nothing to mend; 1 there is, or something was not read.\n' +
        'A path that begins with - stands behind --, which ends the options.',
    )
    .action(async (paths: string[], options: Options, command: Command) => {
      refuseAtOdds(options, command.args);
      const { as } = options;
      if (options.watch) return end(await watch(paths, options, world));
      end(await (as === undefined ? check(paths, options, world) : check([as], options, await withInput(as, world))));
    });
}

async function check(paths: readonly string[], options: Options, world: World): Promise<Status> {
  const on = options.on ?? world.today;
  const host = hostFor(options.settingsFrom, world);
  const recording = await recordingFor(options, on, world);
  const loader = new Loader(() => on, recording?.path);
  const onlyNew = options.onlyNew === undefined ? undefined : sinceRevision(options.onlyNew, on, world);
  const alone = options.alone ?? false;
  const below = await walk(host, paths);
  const walked = alone ? below : await withUsers(host, loader, below);
  const { files } = walked;
  const mend = options.mend && new Mend(host, world, on);
  await mend?.workOut(below.files);
  if (mend && options.show) return showMended(mend, walked.troubles, options.output, world);
  mend?.write();
  // Files were read before they were mended, to find what rests on them.
  if (mend) loader.texts.forgetAll();
  const fails = options.from ?? 'shortfall';
  if (options.shard) return checkShard(options.shard, { paths, host, loader, walked }, options, { on, fails }, world);
  // A file that a finding speaks of lies in the workspace being judged.
  const at = { root: '' };
  const look = lookOf(options, world, (doc) => host.shown(at.root, doc.name));
  const run = { on, version: world.version, fails, isSince: onlyNew !== undefined };
  const { shown: _, language, ...plain } = look;
  const setup = { files, alone, allFixes: options.allFixes ?? false, look: plain, language: language.tag, run };
  const isPlain = !recording && !onlyNew && !mend && options.as === undefined && host === world.host;
  const crew = isPlain && options.cache === undefined ? crewFor(options, setup, loader, world) : undefined;
  const kept = options.cache === undefined ? undefined : keptRun(options.cache, options.format, loader, setup, world);
  const printer = printers[options.format](look, run);
  const printed: Printed =
    kept ??
    crew ??
    new OneByOne({
      judging: judgingOf({ host, loader, files, alone }, world),
      mending: new Mending(loader, setup.allFixes ? 'all' : 'first', buildsAmong(files)),
      taken: async (found) =>
        onlyNew ? { ...found, section: await onlyNew.narrowed(found) } : (recording?.taken(found) ?? found),
      printer,
      look,
      at,
    });
  const tally = new Tally();
  const stale = new Stale();
  const output = openOutput(world, options.output);
  const progress = progressOf(files.length, options, world);
  let isEmpty = true;
  try {
    output.write(printer.open());
    for await (const text of printed.texts(tally, stale)) {
      isEmpty = false;
      output.write(text);
      progress.step();
    }
    progress.end();
    const met = [...walked.troubles, ...printed.troubles];
    const troubles = [
      ...met,
      ...(isEmpty && met.length === 0 ? ifNothing(paths, files) : []),
      ...(mend?.troubles ?? []),
    ];
    tellTroubles(troubles, world);
    kept?.tell(world);
    tally.known = onlyNew?.known ?? 0;
    tally.cleared = recording ? 0 : tally.cleared + (await stale.count(host));
    output.write(printer.close(tally, troubles));
    output.done();
    await recording?.done(paths, troubles.length > 0);
    return statusOf(tally, troubles, fails);
  } finally {
    progress.end();
    output.drop();
    await crew?.end();
  }
}

/** Told on a terminal that nothing else is written to. */
function progressOf(files: number, { output }: Options, { terminal, language }: World): Progress {
  const line = terminal && (output !== undefined || !terminal.hasOut) ? terminal.write : undefined;
  return new Progress(line, files, () => performance.now(), language());
}

async function checkShard(
  share: Share,
  {
    paths,
    host,
    loader,
    walked: { files, troubles },
  }: { readonly paths: readonly string[]; readonly host: Host; readonly loader: Loader; readonly walked: Walked },
  options: Options,
  { on, fails }: { readonly on: string; readonly fails: Grade },
  world: World,
): Promise<Status> {
  const { working = false, alone = false, allFixes = false, settingsFrom } = options;
  const look = lookOf(options, world, (doc) => doc.name);
  const settings = host === world.host ? null : (settingsFrom ?? null);
  const common = { paths, fails, working, allFixes, alone, settings };
  const run = { ...common, walked: troubles, ifNothing: ifNothing(paths, files) };
  const output = openOutput(world, options.output);
  const progress = progressOf(Math.ceil(files.length / share.of), options, world);
  try {
    const done = await judgeShard({ share, host, loader, files, look, run, on }, world, () => progress.step());
    progress.end();
    tellTroubles(done.troubles, world);
    output.write(done.text);
    output.done();
    return statusOf(done.tally, done.troubles, fails);
  } finally {
    progress.end();
    output.drop();
  }
}

const lookOf = (options: Options, world: World, shown: (doc: Doc) => string): TextFormatOptions => ({
  shown,
  from: options.from ?? (options.quiet ? 'shortfall' : 'note'),
  quiet: options.quiet ?? false,
  working: options.working ?? false,
  accepted: options.accepted ?? false,
  language: world.language(),
  colour: world.colour && options.output === undefined,
});

/** Threads for a run, where its files are many and its format is written section by section. */
function crewFor(
  { format, workers }: Options,
  setup: Omit<Setup, 'format'>,
  loader: Loader,
  world: World,
): Crew | undefined {
  const count = workers ?? threadsFor(setup.files.length, world.cores);
  if (!isWhole(format) || count < 2) return undefined;
  const all = { ...setup, format };
  return new Crew({ host: world.host, loader, setup: all, threads: world.threads(count, all), count });
}

function watch(paths: readonly string[], options: Options, world: World): Promise<Status> {
  const on = options.on ?? world.today;
  const fails = options.from ?? 'shortfall';
  const { onlyNew: since, settingsFrom } = options;
  const watched: WatchOptions = {
    on,
    ...(settingsFrom === undefined ? {} : { settingsFrom }),
    ...(since === undefined ? {} : { onlyNew: sinceRevision(since, on, world) }),
    alone: options.alone ?? false,
    allFixes: options.allFixes ?? false,
    printer(shown) {
      const look = lookOf(options, world, shown);
      return { look, print: printers.text(look) };
    },
    status: (tally, troubles) => statusOf(tally, troubles, fails),
  };
  return watchCheck(paths, watched, world);
}

/** What is told where nothing was judged: texts that nothing ties to a build are no reason to be silent. */
const ifNothing = (paths: readonly string[], files: readonly Ours[]): readonly RunTrouble[] =>
  files.every(({ kind }) => kind === 'guide')
    ? [
        troubleAt(
          paths.map(shortPath).join(', '),
          'there are no builds here; a build is a file whose name ends in .pcbuild.yaml.',
        ),
      ]
    : [];
