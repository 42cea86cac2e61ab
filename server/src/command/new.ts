// `fettle new`: a first build in the current folder, with the settings and the parts folder where there are none yet.
import type { Command } from 'commander';
import { houseName, isTrouble } from '../host/host';
import { safe } from '../report/layout';
import { shortPath } from '../session/run-trouble';
import { firstBuild, firstHouse, firstPart, firstPartName } from './first-build';
import { Refusal, type Status, type World } from './world';

const ending = '.pcbuild.yaml';

export function addNew(program: Command, world: World, end: (status: Status) => void): void {
  program
    .command('new')
    .summary('write a first build to go on from')
    .description(
      'Writes a first build with comments into the current folder, and beside it the house settings and a parts ' +
        'folder, unless the folder lies in a workspace that has them. No file is ever written over.',
    )
    .argument('<build>', 'what the build is called; its file gets that name with .pcbuild.yaml')
    .action(async (name: string) => end(await newBuild(name, world)));
}

async function newBuild(given: string, world: World): Promise<Status> {
  const name = given.endsWith(ending) ? given.slice(0, -ending.length) : given;
  if (!isFileName(name))
    throw new Refusal(`${shortPath(given)}: a build is called by letters, digits, blanks, - and _ here.`);
  const found = await world.host.find('.');
  if (isTrouble(found)) throw new Refusal(`the current folder: ${found.trouble}`);
  const file = `${name.replaceAll(' ', '-')}${ending}`;
  const house: [string, string][] = found.isMarked
    ? []
    : [
        [houseName, firstHouse],
        [`parts/${firstPartName}.part.yaml`, firstPart],
      ];
  const files = new Map([[file, firstBuild(JSON.stringify(name), file, !found.isMarked)], ...house]);
  try {
    world.create(files);
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    throw new Refusal(
      code === 'EEXIST'
        ? `${file}: it stands there already, or a file beside it; nothing was written.`
        : `${file}: cannot be written: ${message}`,
    );
  }
  world.out(`Wrote ${[...files.keys()].map(safe).join(', ')}.\nNext: fettle check ${safe(file)}\n`);
  return 0;
}

/** A name that is a file’s on every platform, and no path. */
const isFileName = (name: string): boolean => /^[\p{L}\p{N}_][\p{L}\p{M}\p{N} _-]{0,79}$/u.test(name);
