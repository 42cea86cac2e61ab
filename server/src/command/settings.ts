// `fettle settings`: which settings hold for a file, and from which file and line each comes.
import type { Command } from 'commander';
import { isTrouble } from '../host/host';
import { toJson } from '../report/json';
import { settingsReport, settingsText } from '../report/settings';
import { Loader } from '../session/loader';
import { settingsAt } from '../session/settings-at';
import { shortPath } from '../session/run-trouble';
import { hostFor } from './settings-from';
import { textOrJson } from './options';
import { refusal, type Status, type World } from './world';

interface Options {
  readonly format: 'text' | 'json';
  readonly settingsFrom?: string;
}

export function addSettings(program: Command, world: World, end: (status: Status) => void): void {
  program
    .command('settings')
    .summary('show which settings hold for a file, and where each stands')
    .description(
      'Shows the settings that hold for a file or folder: its workspace, the parts folders, margins and grades, ' +
        'each with the line that states it, or as the default.',
    )
    .argument('[path]', 'a file or folder', '.')
    .addOption(textOrJson())
    .option('--settings-from <revision>', 'the settings as they stand in this revision of git')
    .addHelpText(
      'after',
      '\nExit status: 0 they are shown; 1 something in them is not read or changes nothing; 2 they could not be read.',
    )
    .action(async (path: string, options: Options) => end(await settings(path, options, world)));
}

async function settings(path: string, options: Options, world: World): Promise<Status> {
  const host = hostFor(options.settingsFrom, world);
  const found = await settingsAt(host, new Loader(() => world.today), path);
  if (isTrouble(found)) throw refusal`${shortPath(path)}: ${found}`;
  const report = settingsReport(found, (name) => host.shown(found.root, name), world.language());
  world.out(options.format === 'json' ? `${toJson(report)}\n` : settingsText(report, world.language()));
  return report.problems.length > 0 ? 1 : 0;
}
