// `fettle guide`: a first draft of a guide to a build, as Markdown that stays tied to it.
import { languageOf } from '../core/words/names';
import type { Command } from 'commander';
import { isTrouble, nameFrom, type Host } from '../host/host';
import { guideDraft } from '../report/guide-draft';
import type { FileRef } from '../session/texts';
import { openBuild, reportTroubles } from './one-build';
import { readDay } from './options';
import { openOutput } from './output';
import type { Status, World } from './world';

interface Options {
  readonly to?: string;
  readonly on?: string;
}

export function addGuide(program: Command, world: World, end: (status: Status) => void): void {
  program
    .command('guide')
    .summary('draft a guide to a build')
    .description(
      'Drafts a guide as Markdown: what the build comes to, its parts, the order of work with reasons and cautions, ' +
        'the first start and the acceptance. Its values, steps and cautions are marked, so that `fettle check` says ' +
        'when the build has left them behind; the prose around the marks may be written anew at will.',
    )
    .argument('<build>', 'a file whose name ends in .pcbuild.yaml')
    .option('--to <file>', 'write into a file, whole or not at all')
    .option('--on <date>', 'the day that counts as today, as 2027-06-30', readDay)
    .addHelpText('after', '\nExit status: 0 drafted; 2 the run itself failed, or not everything could be read.')
    .action(async (path: string, options: Options) => end(await guide(path, options, world)));
}

async function guide(name: string, options: Options, world: World): Promise<Status> {
  const opened = await openBuild(name, world, options.on);
  const { build, judgement, loaded } = opened;
  const output = openOutput(world, options.to);
  try {
    const path = await pathFrom(world.host, options.to, loaded.place);
    output.write(guideDraft(build, judgement, path, languageOf(world.language(), build)));
    output.done();
  } finally {
    output.drop();
  }
  return reportTroubles(opened, world) ? 2 : 0;
}

/** The way from the folder of the guide to the build; where none leads there, as if the guide lay beside it. */
async function pathFrom(host: Host, to: string | undefined, { root, name }: FileRef): Promise<string> {
  const beside = name.slice(name.lastIndexOf('/') + 1);
  const at = to === undefined ? -1 : Math.max(to.lastIndexOf('/'), to.lastIndexOf('\\'));
  if (to === undefined) return beside;
  const folder = await host.find(at < 0 ? '.' : to.slice(0, Math.max(at, 1)));
  if (isTrouble(folder) || folder.root !== root) return beside;
  const steps = folder.name === '' ? [] : folder.name.split('/');
  const own = name.split('/');
  let shared = 0;
  while (shared < steps.length && steps[shared] === own[shared] && shared < own.length - 1) shared++;
  const path = [...steps.slice(shared).map(() => '..'), ...own.slice(shared)].join('/');
  return nameFrom([...steps, 'guide.md'].join('/'), path) === name ? path : beside;
}
