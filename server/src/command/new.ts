// `fettle new`: a first build in the current folder, with the settings and the parts folder where there are none yet;
// or a part file to be filled in, in the workspace’s parts folder.
import type { Command } from 'commander';
import { kindNames } from '../core/parts/kinds';
import { newBuild, type NewFiles } from '../features/first-files';
import { newPart } from '../features/first-part';
import { safe } from '../report/layout';
import { shortPath } from '../session/run-trouble';
import { currentFolder, kindCalled, placeOfNew, writeNew } from './new-files';
import { refusal, type Status, type World } from './world';

export function addNew(program: Command, world: World, end: (status: Status) => void): void {
  program
    .command('new')
    .summary('write a first build, or a part file to fill in')
    .description(
      'Writes a first build with comments into the current folder, and beside it the house settings and a parts ' +
        'folder, unless the folder lies in a workspace that has them. With --part it writes a part file instead: ' +
        'the keys that are asked for most, each to be filled in. No file is ever written over.',
    )
    .argument('<name>', 'what the build is called; or the part, as maker/model')
    .option('--part <kind>', `a part of this kind: ${kindNames.join(', ')}`)
    .action(async (name: string, { part }: { part?: string }) => {
      const files = part === undefined ? await buildFiles(name, world) : await partFile(name, part, world);
      const [file = ''] = files.keys();
      writeNew(files, refusal`${file}: it stands there already, or a file beside it; nothing was written.`, world);
      const language = world.language();
      const next =
        part === undefined
          ? language.words`Next: fettle check ${safe(file)}`
          : language.words`Next: look its facts up, and name it: use: ${safe(name)}`;
      world.out(`${language.words`Wrote ${[...files.keys()].map(safe).join(', ')}.`}\n${next}\n`);
      end(0);
    });
}

async function buildFiles(name: string, world: World): Promise<NewFiles> {
  const { isMarked } = await currentFolder(world.host);
  const files = newBuild(name, isMarked, world.language());
  if (!files) throw refusal`${shortPath(name)}: a build is called by letters, digits, blanks, - and _ here.`;
  return files;
}

async function partFile(name: string, word: string, { host, language }: World): Promise<NewFiles> {
  const kind = kindCalled(word);
  const place = await placeOfNew(name, host);
  return new Map([[host.shown(place.root, place.name), newPart(kind, language()).text]]);
}
