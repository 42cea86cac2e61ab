// `fettle order`: the order of work that a build's parts give, with reasons and cautions.
import { languageOf } from '../core/words/names';
import type { Command } from 'commander';
import { toJson } from '../report/json';
import { orderReport, orderText } from '../report/order';
import { openBuild, reportTroubles } from './one-build';
import { textOrJson } from './options';
import type { Status, World } from './world';

interface Options {
  readonly format: 'text' | 'json';
}

export function addOrder(program: Command, world: World, end: (status: Status) => void): void {
  program
    .command('order')
    .summary('print the order of work that the parts give')
    .description(
      'Prints the steps of the work as they follow from the parts of the build: what each comes after and why, ' +
        'and the cautions before it. What the build itself lists under `steps:` is not asked.',
    )
    .argument('<build>', 'a file whose name ends in .pcbuild.yaml')
    .addOption(textOrJson())
    .addHelpText('after', '\nExit status: 0 printed; 2 the run itself failed, or not everything could be read.')
    .action(async (path: string, options: Options) => end(await order(path, options, world)));
}

async function order(path: string, { format }: Options, world: World): Promise<Status> {
  const opened = await openBuild(path, world);
  const { build, section, shown } = opened;
  const title = section.title ?? shown(section.doc);
  world.out(
    format === 'json'
      ? `${toJson(orderReport(build, title))}\n`
      : orderText(build, title, languageOf(world.language(), build)),
  );
  return reportTroubles(opened, world) ? 2 : 0;
}
