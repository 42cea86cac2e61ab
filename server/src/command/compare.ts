// `fettle compare`: what a change does to the builds, between two revisions, a revision and the files here, or folders.
import { Option, type Command } from 'commander';
import { isTrouble } from '../host/host';
import { SettingsFrom } from '../host/settings-from';
import type { Grade } from '../core/manifest/house-file';
import type { Language } from '../core/words/language';
import { explain } from '../features/check-markdown';
import { comparisonComment } from '../report/comment';
import { comparisonAnnotations, comparisonSarif } from '../report/compare-formats';
import { brings, comparisonText } from '../report/compare-text';
import { toJson } from '../report/json';
import { safe } from '../report/layout';
import type { Comparison } from '../review/comparison';
import { compareSides } from './comparing';
import { compareRecords } from './comparing-records';
import { readDay, readGrade } from './options';
import { openOutput } from './output';
import { folderSide, revisionSide, type Side } from './sides';
import { refusal, type Status, type World } from './world';

interface Options {
  readonly format: CompareFormat;
  readonly from?: Grade;
  readonly in: string;
  readonly on?: string;
  readonly working?: true;
  readonly output?: string;
  readonly settingsFrom?: string;
}

interface Look {
  readonly from: Grade;
  readonly working: boolean;
  readonly language: Language;
}

/** Raised when a field of `schemas/comparison.schema.json` changes its meaning or goes. */
const comparisonShape = 1;

const comparePrinters = {
  text: comparisonText,
  json: (comparison: Comparison): string => `${toJson({ version: comparisonShape, ...comparison })}\n`,
  sarif: (comparison: Comparison, look: Look, version: string): string =>
    comparisonSarif(comparison, look, {
      version,
      language: look.language,
      page: (id) => explain(id, look.language),
    }),
  annotations: comparisonAnnotations,
  comment: comparisonComment,
} as const satisfies Record<string, (comparison: Comparison, look: Look, version: string) => string>;

export type CompareFormat = keyof typeof comparePrinters;
export const compareFormats = Object.keys(comparePrinters) as readonly CompareFormat[];

export function addCompare(program: Command, world: World, end: (status: Status) => void): void {
  program
    .command('compare')
    .summary('say what a change does to the builds')
    .description(
      'Judges every build that a change touches, by itself or through a part file or settings, before and after it: ' +
        'findings that come, go, grow or shrink, and the figures that move. Of the record of a finished machine: ' +
        'what changed from the one to the other, fact by fact.',
    )
    .argument(
      '<base>',
      'a revision of git, or with a second folder a folder, with a second record of a machine a record',
    )
    .argument('[head]', 'a revision, a folder or a record; without it the files as they lie here')
    .addOption(new Option('--format <format>', 'how to write').choices(compareFormats).default('text'))
    .option('--in <path>', 'compare what lies under this path only', '.')
    .option('--settings-from <revision>', 'judge both sides by the settings of this revision')
    .option('--working', 'show the changed lines behind every figure that moved')
    .option(
      '--from <grade>',
      'the lightest grade to list, and to end with status 1 for (without it: lists from note, status 1 from shortfall)',
      readGrade,
    )
    .option('--on <date>', 'the day that counts as today on both sides, as 2027-06-30', readDay)
    .option('--output <file>', 'write into a file, whole or not at all')
    .addHelpText(
      'after',
      '\nExit status: 0 the change brings nothing at or above the grade; 1 it does; 2 the run itself failed, or not ' +
        'everything could be read.',
    )
    .action(async (base: string, head: string | undefined, options: Options) =>
      end(await compare(base, head, options, world)),
    );
}

async function compare(base: string, head: string | undefined, options: Options, world: World): Promise<Status> {
  const on = options.on ?? world.today;
  const records = head === undefined ? undefined : await compareRecords(base, head, on, world);
  if (records) return tell(records, options, world);
  const sides = await sidesOf(base, head, options.in, on, world);
  const { settingsFrom } = options;
  const [before, after] = settingsFrom === undefined ? sides : settled(settingsFrom, sides, world);
  return tell(await compareSides(before, after, on, world.language()), options, world);
}

function tell(comparison: Comparison, options: Options, world: World): Status {
  const { before, after } = comparison;
  const language = world.language();
  const look = { from: options.from ?? 'note', working: options.working ?? false, language };
  for (const { side, path, trouble } of comparison.troubles)
    world.err(
      `fettle: ${safe(`${language.label(side === 'before' ? before : after)}: ${path}: ${language.plain(trouble)}`)}\n`,
    );
  const output = openOutput(world, options.output);
  try {
    output.write(comparePrinters[options.format](comparison, look, world.version));
    output.done();
  } finally {
    output.drop();
  }
  return statusOf(comparison, options.from ?? 'shortfall');
}

/** What was not read before the change hides nothing: all that its files hold now counts as new. */
function statusOf(comparison: Comparison, limit: Grade): Status {
  if (comparison.troubles.some(({ side }) => side === 'after')) return 2;
  return brings(comparison, limit) ? 1 : 0;
}

/** Both sides under the settings of a revision. @throws Refusal where there is no such revision. */
function settled(revision: string, [before, after]: readonly [Side, Side], world: World): readonly [Side, Side] {
  const { host } = revisionSide(world, revision, before.path, world.today);
  const under = (side: Side): Side => ({ ...side, host: new SettingsFrom(side.host, host) });
  return [under(before), under(after)];
}

/** Two folders where both are; else revisions, and without a second one the files here. */
async function sidesOf(
  base: string,
  head: string | undefined,
  path: string,
  on: string,
  world: World,
): Promise<readonly [Side, Side]> {
  if (head !== undefined && (await isFolder(base, world)) && (await isFolder(head, world)))
    return [folderSide(world, base, base, on), folderSide(world, head, head, on)];
  const here = await world.host.find(path);
  const sides = [
    revisionSide(world, base, path, on),
    head === undefined ? folderSide(world, path, 'working tree', on) : revisionSide(world, head, path, on),
  ] as const;
  if (head === undefined && isTrouble(here)) throw refusal`${path}: ${here}`;
  return sides;
}

async function isFolder(path: string, world: World): Promise<boolean> {
  const found = await world.host.find(path);
  return !isTrouble(found) && found.kind === 'folder';
}
