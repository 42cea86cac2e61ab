// `fettle guide`: a first draft of a guide to a build, as Markdown that stays tied to it.
import { languageOf } from '../core/words/names';
import type { Command } from 'commander';
import { isTrouble, lastStep, nameFrom, pathBetween, splitPath, within, type Host } from '../host/host';
import { guideDraft } from '../report/guide-draft';
import type { FileRef } from '../session/texts';
import { openBuild, reportTroubles } from './one-build';
import { onDay } from './options';
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
    .addOption(onDay())
    .addHelpText('after', '\nExit status: 0 drafted; 2 the run itself failed, or not everything could be read.')
    .action(async (path: string, options: Options) => end(await guide(path, options, world)));
}

async function guide(name: string, options: Options, world: World): Promise<Status> {
  const opened = await openBuild(name, world, options.on);
  const { build, judgement, loaded } = opened;
  const output = openOutput(world, options.to);
  try {
    const path = await pathOfBuild(world.host, options.to, loaded.place);
    output.write(guideDraft(build, judgement, path, languageOf(world.language(), build)));
    output.done();
  } finally {
    output.drop();
  }
  return reportTroubles(opened, world) ? 2 : 0;
}

/** The way from the folder of the guide to the build; where none leads there, as if the guide lay beside it. */
async function pathOfBuild(host: Host, to: string | undefined, { root, name }: FileRef): Promise<string> {
  const beside = lastStep(name);
  if (to === undefined) return beside;
  const [folder, file] = splitPath(to);
  const found = await host.find(folder);
  if (isTrouble(found) || found.root !== root) return beside;
  const guide = within(found.name, file);
  const path = pathBetween(guide, name);
  return nameFrom(guide, path) === name ? path : beside;
}
