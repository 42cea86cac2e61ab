// The file system of this machine. Nothing outside a root is read, links are followed before that is judged, and only
// regular files are opened: a pipe or a device would hang or never end.
import {
  closeSync,
  constants,
  fstatSync,
  lstatSync,
  openSync,
  readSync,
  realpathSync,
  statSync,
  type Stats,
} from 'node:fs';
import { dirname, isAbsolute, join, relative, resolve, sep } from 'node:path';
import { decode } from './decode';
import { rootAmong, type Encodings, type FoundPath, type Host, type Listed, type ReadError } from './host';
import { limits } from './limits';
import { isBelow, readFolder } from './node-folder';
import { marksAbove } from './node-roots';
import { absent, isFolder, leadsOut, notRegular, tooLarge } from './troubles';

// Absent on Windows, where links are looked for before opening instead.
const noFollow: number | undefined = constants.O_NOFOLLOW;
const openFlags = constants.O_RDONLY | (constants.O_NONBLOCK ?? 0) | (noFollow ?? 0);
/** File systems that take `a` for `A` by default; the same files must give the same findings everywhere. */
const looseNames = process.platform === 'win32' || process.platform === 'darwin';

export class NodeHost implements Host {
  /** Real paths of folders, which hold for one run. */
  private readonly realFolders = new Map<string, string>();
  /** The roots that folders lie under, which hold for one run. */
  private readonly roots = new Map<string, string | undefined>();

  constructor(private readonly here: string) {}

  find(path: string): FoundPath | ReadError {
    const full = resolve(this.here, path);
    try {
      const stat = statSync(full);
      if (!stat.isDirectory() && !stat.isFile()) return notRegular;
      const folder = stat.isDirectory() ? full : dirname(full);
      const marked = this.rootOf(folder);
      const root = marked ?? (stat.isDirectory() ? full : this.plainRoot(full));
      const name = relative(root, full).replaceAll(sep, '/');
      return { kind: stat.isDirectory() ? 'folder' : 'file', root, name, isMarked: marked !== undefined };
    } catch (error) {
      return plainError(error);
    }
  }

  private rootOf(folder: string): string | undefined {
    if (!this.roots.has(folder)) this.roots.set(folder, rootAmong(marksAbove(folder)));
    return this.roots.get(folder);
  }

  /** With nothing above that makes a root, a file belongs to the current folder when it lies below it. */
  private plainRoot(file: string): string {
    const below = relative(this.here, file);
    return below.startsWith('..') || isAbsolute(below) ? dirname(file) : this.here;
  }

  list(root: string, folder: string): readonly Listed[] | ReadError | undefined {
    try {
      const bound = this.realFolder(root);
      const real = this.realFolder(this.pathIn(root, folder));
      return isBelow(real, bound) ? readFolder(real, bound) : leadsOut;
    } catch (error) {
      return isAbsent(error) ? undefined : plainError(error);
    }
  }

  read(root: string, name: string, encodings?: Encodings): string | ReadError | undefined {
    const path = this.pathIn(root, name);
    let file: number | undefined;
    try {
      const { real, stat } = this.reached(path);
      if (!isBelow(real, this.realFolder(root))) return leadsOut;
      if (looseNames && !real.endsWith(lastStep(name))) return undefined;
      const unfit = refused(stat);
      if (unfit) return unfit;
      file = openSync(real, openFlags);
      return readWhole(file, encodings);
    } catch (error) {
      return isAbsent(error) ? undefined : plainError(error);
    } finally {
      if (file !== undefined) closeSync(file);
    }
  }

  /** The real path, and what is there; the folder’s is asked for once, the file’s only where it is a link. */
  private reached(path: string): { readonly real: string; readonly stat: Stats } {
    if (!looseNames && noFollow !== undefined) {
      const stat = lstatSync(path);
      if (!stat.isSymbolicLink())
        return { real: this.pathIn(this.realFolder(dirname(path)), path.slice(path.lastIndexOf(sep) + 1)), stat };
    }
    const real = realpathSync.native(path);
    return { real, stat: lstatSync(real) };
  }

  private realFolder(folder: string): string {
    let real = this.realFolders.get(folder);
    if (real === undefined) this.realFolders.set(folder, (real = realpathSync.native(folder)));
    return real;
  }

  pathIn(root: string, name: string): string {
    if (name === '') return root;
    return (root.endsWith(sep) ? root : root + sep) + (sep === '/' ? name : name.replaceAll('/', sep));
  }

  shown(root: string, name: string): string {
    const path = relative(this.here, join(root, name)) || '.';
    return sep === '/' ? path : path.replaceAll(sep, '/');
  }
}

const lastStep = (name: string): string => sep + name.replaceAll('/', sep);

/**
 * Why a file is not read, by what it is; asked before it is opened, as opening a pipe or a device can already do
 * something.
 */
function refused(stat: Stats): ReadError | undefined {
  if (stat.isDirectory()) return isFolder;
  return stat.isFile() ? undefined : notRegular;
}

/**
 * Reads an open file to its end; a file that grows past the limit meanwhile is refused like a large one. What it is, is
 * asked once more: something else may have been put in its place before it was opened.
 */
function readWhole(file: number, encodings?: Encodings): string | ReadError {
  const stat = fstatSync(file);
  const unfit = refused(stat);
  if (unfit) return unfit;
  const bytes = Buffer.allocUnsafe(Math.min(stat.size, limits.fileBytes) + 1);
  let held = 0;
  // A read that brings all there should be, and less than it had room for, has met the end.
  for (let got = -1; got !== 0 && held < bytes.length && (got < 0 || held !== stat.size); held += got)
    got = readSync(file, bytes, held, bytes.length - held, null);
  if (held > limits.fileBytes || held > stat.size) return tooLarge;
  return decode(bytes.subarray(0, held), encodings);
}

function isAbsent(error: unknown): boolean {
  const code = (error as NodeJS.ErrnoException).code;
  return code === 'ENOENT' || code === 'ENOTDIR' || code === 'ENAMETOOLONG';
}

/** Why the system refused, in plain words; its own for anything rare. */
function plainError(error: unknown): ReadError {
  const { code, message } = error as NodeJS.ErrnoException;
  switch (code) {
    case 'ENOENT':
    case 'ENOTDIR':
      return absent;
    case 'EACCES':
    case 'EPERM':
      return { trouble: 'may not be read: the system denies it.' };
    case 'ELOOP':
      return { trouble: 'is a link that leads back to itself.' };
    case 'ENAMETOOLONG':
      return { trouble: 'is too long a name for this system.' };
    case 'ENXIO':
      return notRegular;
    default:
      return { trouble: `cannot be read: ${message}.` };
  }
}
