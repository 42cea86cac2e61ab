// The entries of one folder of this machine, within limits; links among them are followed only as far as the root goes.
import { opendirSync, realpathSync, statSync, type Dirent } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { Listed, ReadError } from './host';
import { limits } from './limits';
import { tooFull } from './troubles';

/** Whether a real path is a real folder or lies below it. */
export function isBelow(path: string, folder: string): boolean {
  return path === folder || path.startsWith(folder.endsWith(sep) ? folder : folder + sep);
}

/**
 * Reads a folder by its real path, which lies below the real root `bound`.
 * @throws Error of the system when it cannot be read.
 */
export function readFolder(folder: string, bound: string): readonly Listed[] | ReadError {
  const entries: Listed[] = [];
  const opened = opendirSync(folder, { bufferSize: 512 });
  try {
    for (let entry = opened.readSync(); entry; entry = opened.readSync()) {
      if (entries.length >= limits.folderEntries) return tooFull;
      entries.push(listed(entry, folder, bound));
    }
  } finally {
    opened.closeSync();
  }
  return entries.sort((a, b) => (a.name < b.name ? -1 : 1));
}

function listed(entry: Dirent, folder: string, bound: string): Listed {
  const { name } = entry;
  if (entry.isFile()) return { name, kind: 'file' };
  if (entry.isDirectory()) return { name, kind: 'folder' };
  if (!entry.isSymbolicLink()) return { name, kind: 'other' };
  const target = targetOf(join(folder, name), bound);
  return { name, kind: 'link', ...(target ? { target } : {}) };
}

/** Where a link leads; undefined when that lies outside, is neither file nor folder, or is not there. */
function targetOf(link: string, bound: string): Listed['target'] {
  try {
    const real = realpathSync.native(link);
    const stat = statSync(real);
    if (!isBelow(real, bound) || (!stat.isFile() && !stat.isDirectory())) return undefined;
    return { kind: stat.isFile() ? 'file' : 'folder', name: relative(bound, real).replaceAll(sep, '/') };
  } catch {
    return undefined;
  }
}
