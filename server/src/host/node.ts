// The file system of this machine. Nothing outside a root is read, links are followed before that is judged, and only
// regular files are opened: a pipe or a device would hang or never end.
import {
  closeSync,
  constants,
  fstatSync,
  lstatSync,
  openSync,
  readdirSync,
  readSync,
  realpathSync,
  statSync,
  type Dirent,
  type Stats,
} from 'node:fs';
import { dirname, isAbsolute, join, relative, resolve, sep } from 'node:path';
import { decode } from './decode';
import { houseName, type FileRef, type Host, type Listed, type ReadError } from './host';
import { limits, spelled } from './limits';

// Absent on Windows, where links are looked for before opening instead.
const noFollow: number | undefined = constants.O_NOFOLLOW;
const openFlags = constants.O_RDONLY | (constants.O_NONBLOCK ?? 0) | (noFollow ?? 0);
/** File systems that take `a` for `A` by default; the same files must give the same findings everywhere. */
const looseNames = process.platform === 'win32' || process.platform === 'darwin';

export class NodeHost implements Host {
  /** Real paths of folders, which hold for one run. */
  private readonly realFolders = new Map<string, string>();

  constructor(private readonly here: string) {}

  find(path: string): FileRef | ReadError {
    const full = resolve(this.here, path);
    try {
      const stat = statSync(full);
      if (stat.isDirectory()) return place('folder', rootAbove(full) ?? full, full);
      if (!stat.isFile()) return { trouble: 'is no regular file, so it is not opened.' };
      return place('file', rootAbove(dirname(full)) ?? this.plainRoot(full), full);
    } catch (error) {
      return { trouble: plainError(error) };
    }
  }

  /** With no `fettle.yaml` above, a file belongs to the current folder when it lies below it. */
  private plainRoot(file: string): string {
    const below = relative(this.here, file);
    return below.startsWith('..') || isAbsolute(below) ? dirname(file) : this.here;
  }

  list(root: string, folder: string): readonly Listed[] | ReadError {
    try {
      const entries = readdirSync(join(root, folder), { withFileTypes: true });
      return entries
        .map((entry) => ({ name: entry.name, kind: kindOf(entry) }))
        .sort((a, b) => (a.name < b.name ? -1 : 1));
    } catch (error) {
      return { trouble: plainError(error) };
    }
  }

  read(root: string, name: string): string | ReadError | undefined {
    const path = join(root, name);
    let file: number | undefined;
    try {
      const real = this.realPath(path);
      const bound = this.realFolder(root);
      if (!real.startsWith(bound.endsWith(sep) ? bound : bound + sep))
        return { trouble: 'leads out of the workspace, so it is not read.' };
      if (looseNames && !real.endsWith(lastStep(name))) return undefined;
      const unfit = refused(lstatSync(real));
      if (unfit) return unfit;
      file = openSync(real, openFlags);
      return readWhole(file);
    } catch (error) {
      return isAbsent(error) ? undefined : { trouble: plainError(error) };
    } finally {
      if (file !== undefined) closeSync(file);
    }
  }

  /** The real path; the folder’s is asked for once, the file’s only where it is a link. */
  private realPath(path: string): string {
    if (looseNames || noFollow === undefined || lstatSync(path).isSymbolicLink()) return realpathSync.native(path);
    return join(this.realFolder(dirname(path)), path.slice(path.lastIndexOf(sep) + 1));
  }

  private realFolder(folder: string): string {
    let real = this.realFolders.get(folder);
    if (real === undefined) this.realFolders.set(folder, (real = realpathSync.native(folder)));
    return real;
  }

  below(root: string, folder: string): string {
    return join(root, folder);
  }

  shown(root: string, name: string): string {
    const path = relative(this.here, join(root, name)) || '.';
    return sep === '/' ? path : path.replaceAll(sep, '/');
  }
}

function place(kind: FileRef['kind'], root: string, full: string): FileRef {
  return { kind, root, name: relative(root, full).replaceAll(sep, '/') };
}

function rootAbove(folder: string): string | undefined {
  for (let at = folder; ; at = dirname(at)) {
    if (statSync(join(at, houseName), { throwIfNoEntry: false })?.isFile()) return at;
    if (dirname(at) === at) return undefined;
  }
}

function kindOf(entry: Dirent): Listed['kind'] {
  if (entry.isFile()) return 'file';
  if (entry.isDirectory()) return 'folder';
  return entry.isSymbolicLink() ? 'link' : 'other';
}

const lastStep = (name: string): string => sep + name.replaceAll('/', sep);

/**
 * Why a file is not read, by what it is; asked before it is opened, as opening a pipe or a device can already do
 * something.
 */
function refused(stat: Stats): ReadError | undefined {
  if (stat.isDirectory()) return { trouble: 'is a folder, where a file was wanted.' };
  return stat.isFile() ? undefined : { trouble: 'is no regular file, so it is not opened.' };
}

/**
 * Reads an open file to its end; a file that grows past the limit meanwhile is refused like a large one. What it is, is
 * asked once more: something else may have been put in its place before it was opened.
 */
function readWhole(file: number): string | ReadError {
  const stat = fstatSync(file);
  const unfit = refused(stat);
  if (unfit) return unfit;
  const bytes = Buffer.allocUnsafe(Math.min(stat.size, limits.fileBytes) + 1);
  let held = 0;
  for (let got = -1; got !== 0 && held < bytes.length; held += got)
    got = readSync(file, bytes, held, bytes.length - held, null);
  if (held > limits.fileBytes || held > stat.size)
    return { trouble: `is larger than ${spelled(limits.fileBytes)} bytes, so it is not read; split it.` };
  return decode(bytes.subarray(0, held));
}

function isAbsent(error: unknown): boolean {
  const code = (error as NodeJS.ErrnoException).code;
  return code === 'ENOENT' || code === 'ENOTDIR' || code === 'ENAMETOOLONG';
}

/** Why the system refused, in plain words; its own for anything rare. */
function plainError(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  switch (code) {
    case 'ENOENT':
    case 'ENOTDIR':
      return 'there is no such file or folder.';
    case 'EACCES':
    case 'EPERM':
      return 'may not be read: the system denies it.';
    case 'ELOOP':
      return 'is a link that leads back to itself.';
    case 'ENAMETOOLONG':
      return 'is too long a name for this system.';
    case 'ENXIO':
      return 'is no regular file, so it is not opened.';
    default:
      return `cannot be read: ${message}.`;
  }
}
