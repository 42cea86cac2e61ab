// `fettle draft build`: a build of a machine that stands already, from the outputs of common tools.
import type { Command } from 'commander';
import { distil } from '../core/machine/distill';
import { buildDraft } from '../core/machine/draft';
import { isTrouble } from '../host/host';
import { safe } from '../report/layout';
import { unreadText } from '../report/verify-text';
import { readOutputs } from '../session/outputs';
import { shortPath } from '../session/run-trouble';
import { Refusal, type Status, type World } from './world';

export function addDraftBuild(draft: Command, world: World, end: (status: Status) => void): void {
  draft
    .command('build')
    .summary('draft a build from the outputs of a machine')
    .description(
      'Reads a folder of outputs, as the script that `fettle collect` prints writes it, and writes a build that ' +
        'spells out what they say of each part, with the line behind it. No file is ever written over.',
    )
    .argument('<folder>', 'the folder that holds the outputs')
    .option('--as <name>', 'what the build is called', 'machine')
    .addHelpText('after', '\nExit status: 0 written; 2 nothing was written, and why.')
    .action(async (folder: string, { as }: { as: string }) => end(await draftBuild(folder, as, world)));
}

async function draftBuild(folder: string, name: string, world: World): Promise<Status> {
  if (!/^[\p{L}\p{N}][\p{L}\p{N} _-]{0,60}$/u.test(name))
    throw new Refusal(`${shortPath(name)}: a build is called by letters, digits, blanks, - and _ here.`);
  const read = await readOutputs(world.host, folder);
  if (isTrouble(read)) throw new Refusal(`${shortPath(folder)}: ${read.trouble}`);
  const { machine, unknown } = distil(read.docs, read.shown, world.today);
  const text = buildDraft(machine, name);
  if (text === undefined) throw new Refusal(`${shortPath(folder)}: no output there says anything of a part.`);
  const file = `${name.toLowerCase().replace(/ +/g, '-')}.pcbuild.yaml`;
  try {
    world.create(new Map([[file, text]]));
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    throw new Refusal(`${file}: ${code === 'EEXIST' ? 'is there already; nothing was written.' : message}`);
  }
  for (const line of unreadText(unknown)) world.err(`fettle: ${line}\n`);
  world.out(`Wrote ${safe(file)}.\nNext: look it over, then fettle check ${safe(file)}\n`);
  return 0;
}
