// `fettle verify`: a finished machine, by the outputs of common tools, held against its build.
import { languageOf } from '../core/words/names';
import type { Command } from 'commander';
import type { Build } from '../core/build/build';
import { recordText } from '../core/figures/built-record';
import { judgeBuild } from '../core/judge/judge';
import { ofTheMachine } from '../core/judge/machine';
import { distil, type Distilled } from '../core/machine/distill';
import type { Grade } from '../core/manifest/house-file';
import { recordName } from '../core/parts/doc';
import { isTrouble, splitPath } from '../host/host';
import { closingText } from '../report/closing-text';
import { listed, type Section } from '../report/section';
import { sectionJson, toJson } from '../report/json';
import { Tally } from '../report/tally';
import { sectionText } from '../report/text';
import { readText, unreadText } from '../report/verify-text';
import { readOutputs } from '../session/outputs';
import { shortPath } from '../session/run-trouble';
import { Mending } from '../session/mending';
import { openBuild, reportTroubles, type OneBuild } from './one-build';
import { onDay, readGrade, textOrJson } from './options';
import { openOutput } from './output';
import { refusal, type Status, type World } from './world';

interface Options {
  readonly format: 'text' | 'json';
  readonly from?: Grade;
  readonly on?: string;
  readonly working?: true;
  readonly accepted?: true;
  readonly record?: true;
}

export function addVerify(program: Command, world: World, end: (status: Status) => void): void {
  program
    .command('verify')
    .summary('hold a finished machine against its build')
    .description(
      'Reads a folder of outputs, as the script that `fettle collect` prints writes it, and holds each promise and ' +
        'place of the build against what is there. What no output shows is unknown, and says which tool would show it.',
    )
    .argument('<build>', 'a file whose name ends in .pcbuild.yaml')
    .argument('<folder>', 'the folder that holds the outputs')
    .addOption(textOrJson())
    .option('--working', 'show the figures behind every finding, down to the line of the output')
    .option(
      '--from <grade>',
      'the lightest grade to list, and to end with status 1 for: harm, stop, shortfall, note or unknown ' +
        '(without it: lists all, status 1 from shortfall)',
      readGrade,
    )
    .option('--accepted', 'list findings that the build accepts, too')
    .option('--record', 'keep what was read as NAME.asbuilt.yaml beside the build')
    .addOption(onDay())
    .addHelpText(
      'after',
      '\nExit status: 0 nothing at or above the grade; 1 findings; 2 the run itself failed, or not all was read.',
    )
    .action(async (path: string, folder: string, options: Options) => end(await verify(path, folder, options, world)));
}

async function verify(path: string, folder: string, options: Options, world: World): Promise<Status> {
  const today = options.on ?? world.today;
  const opened = await openBuild(path, world, today);
  const { distilled, troubles } = await machineIn(folder, today, world);
  opened.troubles.push(...troubles);
  const held = opened.build.heldAgainst(distilled.machine);
  const section = await judged(opened, held, options);
  const look = {
    shown: opened.shown,
    from: options.from ?? ('unknown' as const),
    working: options.working ?? false,
    accepted: options.accepted ?? false,
    language: languageOf(world.language(), opened.build),
    colour: world.colour,
  };
  if (options.record) record(path, held, world);
  const tally = new Tally();
  tally.add(section);
  if (options.format === 'json') world.out(`${toJson({ on: today, ...sectionJson(section, look) })}\n`);
  else world.out(`${sectionText(section, look)}${readText(distilled, look)}${closingText(tally, look)}`);
  for (const line of unreadText(distilled.unknown, look.language)) world.err(`fettle: ${line}\n`);
  if (reportTroubles(opened, world)) return 2;
  return tally.reaches(options.from ?? 'shortfall') ? 1 : 0;
}

/** Beside the build; a record that stands there is replaced, and version control shows what changed. */
function record(path: string, build: Build, world: World): void {
  const [, name] = splitPath(path);
  const output = openOutput(world, recordName(path));
  try {
    output.write(recordText(build, name));
    output.done();
  } finally {
    output.drop();
  }
}

async function machineIn(
  folder: string,
  today: string,
  { host }: World,
): Promise<{ distilled: Distilled; troubles: OneBuild['troubles'] }> {
  const read = await readOutputs(host, folder);
  const path = shortPath(folder);
  if (isTrouble(read)) throw refusal`${path}: ${read}`;
  const distilled = distil(read.docs, read.shown, today);
  if ((distilled.machine.from.value ?? []).length === 0)
    throw refusal`${path}: holds no output that is known; \`fettle collect linux\` prints a script for them.`;
  return { distilled, troubles: [...read.troubles] };
}

/** Fixes are proven against all that is said of the build; what is listed is of the machine. */
async function judged({ loader, loaded, section }: OneBuild, build: Build, options: Options): Promise<Section> {
  const whole = judgeBuild(build);
  const own = { ...section, judgement: ofTheMachine(whole), settings: build.house };
  const wanted = listed(own, { from: options.from ?? 'note', accepted: false });
  const fixes = await new Mending(loader, 'first', 1).fixesOf(own, { ...loaded, build, judgement: whole }, wanted);
  return { ...own, fixes };
}
