// `fettle new`: a first build in the current folder, with the settings and the parts folder where there are none yet;
// or a part file to be filled in, in the workspace’s parts folder.
import type { Command } from 'commander';
import { isKind, kindNames } from '../core/parts/kinds';
import { newBuild, type NewFiles } from '../features/first-files';
import { newPart } from '../features/first-part';
import { isTrouble } from '../host/host';
import { safe } from '../report/layout';
import { placeOfPart } from '../session/new-part';
import { shortPath } from '../session/run-trouble';
import { Texts } from '../session/texts';
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
      write(files, world);
      const [file] = [...files.keys()];
      const language = world.language();
      const next =
        part === undefined
          ? language.words`Next: fettle check ${safe(file!)}`
          : language.words`Next: look its facts up, and name it: use: ${safe(name)}`;
      world.out(`${language.words`Wrote ${[...files.keys()].map(safe).join(', ')}.`}\n${next}\n`);
      end(0);
    });
}

async function buildFiles(name: string, world: World): Promise<NewFiles> {
  const found = await world.host.find('.');
  if (isTrouble(found)) throw refusal`the current folder: ${found}`;
  const files = newBuild(name, found.isMarked, world.language());
  if (!files) throw refusal`${shortPath(name)}: a build is called by letters, digits, blanks, - and _ here.`;
  return files;
}

async function partFile(name: string, kind: string, { host, language }: World): Promise<NewFiles> {
  if (!isKind(kind)) throw refusal`${shortPath(kind)} is no kind of part; the kinds are ${kindNames.join(', ')}.`;
  const found = await host.find('.');
  if (isTrouble(found)) throw refusal`the current folder: ${found}`;
  const place = await placeOfPart(new Texts(), host, found.root, name);
  if (!place) throw refusal`${shortPath(name)}: a part is called by its path in the parts folder: maker/model.`;
  return new Map([[host.shown(place.root, place.name), newPart(kind, language()).text]]);
}

/** All of them or none. */
function write(files: NewFiles, world: World): void {
  const [file] = files.keys();
  try {
    world.create(files);
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    throw code === 'EEXIST'
      ? refusal`${file!}: it stands there already, or a file beside it; nothing was written.`
      : refusal`${file!}: cannot be written: ${message}`;
  }
}
