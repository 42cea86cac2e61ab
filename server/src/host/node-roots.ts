// The folders above a path, as far up as a workspace’s root is looked for: to the root of the repository, and into
// no folder of someone else, whose settings are none of ours.
import { lstatSync, statSync, type Stats } from 'node:fs';
import { dirname, join } from 'node:path';
import { houseName, partsName, type FolderMarks } from './host';

/** A folder and those above it, with what in them makes a root. */
export function* marksAbove(folder: string): Generator<FolderMarks> {
  const own = statOf(folder);
  for (let at = folder, stat = own; stat && own; ) {
    yield {
      folder: at,
      hasSettings: statOf(join(at, houseName))?.isFile() === true,
      hasParts: statOf(join(at, partsName))?.isDirectory() === true,
    };
    const above = dirname(at);
    if (above === at || isRepository(at)) return;
    at = above;
    stat = statOf(at);
    if (!stat || stat.uid !== own.uid || isShared(stat)) return;
  }
}

/** A repository’s root holds `.git`: a folder, or in a second checkout or a submodule a file. */
const isRepository = (folder: string): boolean => statOf(join(folder, '.git'), lstatSync) !== undefined;

/** Where everyone may put files, as in the system’s folder for temporary ones. */
const isShared = ({ mode }: Stats): boolean => (mode & 0o1002) === 0o1002;

/** Undefined for what is not there or may not be looked at. */
function statOf(path: string, stat: typeof statSync = statSync): Stats | undefined {
  try {
    return stat(path, { throwIfNoEntry: false });
  } catch {
    return undefined;
  }
}
