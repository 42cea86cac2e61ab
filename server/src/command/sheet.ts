// `fettle sheet`: the bench sheet of a build, as one page of HTML or as Markdown.
import { languageOf } from '../core/words/names';
import { Option, type Command } from 'commander';
import { sheetPage } from '../report/sheet/html';
import { sheetMarkdown } from '../report/sheet/markdown';
import { sheetOf } from '../report/sheet/sheet';
import { papers, type Paper } from '../report/sheet/style';
import { Mending } from '../session/mending';
import { openBuild, reportTroubles, reportUnread } from './one-build';
import { onDay } from './options';
import { openOutput } from './output';
import type { Status, World } from './world';

interface Options {
  readonly paper: Paper;
  readonly markdown?: true;
  readonly to?: string;
  readonly on?: string;
}

export function addSheet(program: Command, world: World, end: (status: Status) => void): void {
  program
    .command('sheet')
    .summary('print the bench sheet of a build')
    .description(
      'Prints what a build needs at the bench: what it promises and what was found, what to have at hand, the ' +
        'firmware route, the order of work with its cautions, the first start, the tests with their limits, the ' +
        'hand-over record, and what a person still has to look at. One HTML file that needs nothing else, or Markdown.',
    )
    .argument('<build>', 'a file whose name ends in .pcbuild.yaml')
    .addOption(new Option('--paper <paper>', 'the paper it is printed on').choices(papers).default('a4'))
    .option('--markdown', 'as Markdown instead of HTML')
    .option('--to <file>', 'write into a file, whole or not at all')
    .addOption(onDay())
    .addHelpText('after', '\nExit status: 0 printed; 2 the run itself failed, or not everything could be read.')
    .action(async (path: string, options: Options) => end(await sheet(path, options, world)));
}

async function sheet(path: string, options: Options, world: World): Promise<Status> {
  const opened = await openBuild(path, world, options.on);
  const { build, judgement, loader, loaded, section, shown } = opened;
  const listed = judgement.findings.filter(({ grade }) => grade !== 'unknown');
  const { of: fixes } = await new Mending(loader, 'first', 1).fixesOf(section, loaded, listed);
  const made = sheetOf(build, judgement, {
    date: options.on ?? world.today,
    fileName: shown(section.doc),
    fixes,
    language: languageOf(world.language(), build),
  });
  const output = openOutput(world, options.to);
  try {
    output.write(options.markdown ? sheetMarkdown(made) : sheetPage(made, { paper: options.paper }));
    output.done();
  } finally {
    output.drop();
  }
  const isUnread = reportUnread(opened, world);
  return reportTroubles(opened, world) || isUnread ? 2 : 0;
}
