// `fettle missing`: the facts a build waits for, as a list to work off.
import { languageOf } from '../core/words/names';
import type { Command } from 'commander';
import { toJson } from '../report/json';
import { missingReport, missingText, wantedOf } from '../report/missing';
import { openBuild, reportTroubles, reportUnread } from './one-build';
import { onDay, textOrJson } from './options';
import type { Status, World } from './world';

interface Options {
  readonly format: 'text' | 'json';
  readonly on?: string;
}

export function addMissing(program: Command, world: World, end: (status: Status) => void): void {
  program
    .command('missing')
    .summary('list the facts that a build waits for')
    .description(
      'Lists the facts that no file states and that checks of the build wait for: where each belongs, ' +
        'where it is usually printed, and what it would decide.',
    )
    .argument('<build>', 'a file whose name ends in .pcbuild.yaml')
    .addOption(textOrJson())
    .addOption(onDay())
    .addHelpText(
      'after',
      '\nExit status: 0 nothing is missing; 1 facts are missing, or not everything was read; 2 the run itself failed.',
    )
    .action(async (path: string, options: Options) => end(await missing(path, options, world)));
}

async function missing(path: string, options: Options, world: World): Promise<Status> {
  const opened = await openBuild(path, world, options.on);
  const { section, shown } = opened;
  const language = languageOf(world.language(), opened.build);
  const look = {
    shown,
    from: 'unknown',
    working: false,
    accepted: true,
    language,
  } as const;
  world.out(options.format === 'json' ? `${toJson(missingReport(section, look))}\n` : missingText(section, look));
  if (reportTroubles(opened, world)) return 2;
  return reportUnread(opened, world) || wantedOf(section).length > 0 ? 1 : 0;
}
