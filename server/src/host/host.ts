// What the rest needs of a file system: finding, listing and reading below a root, and nothing else.

/** Sync where the platform reads quickest that way, a promise where it must. */
export type Awaitable<T> = T | Promise<T>;

/** Where a named path lies: the root that bounds what is read with it, and its name below that root. */
export interface FoundPath {
  readonly kind: 'file' | 'folder';
  /** Opaque: only handed back to the host. */
  readonly root: string;
  /** With `/` between folders on every platform; empty for the root itself. */
  readonly name: string;
  /** Whether `fettle.yaml` or a parts folder makes the root one; otherwise it is what was named, or the folder here. */
  readonly isMarked: boolean;
}

/** Why something was not read, in a sentence that stands behind the path and a colon. */
export interface ReadError {
  readonly trouble: string;
}

/** How a text may be written: ours is UTF-8, what tools of Windows write may be UTF-16. */
export type Encodings = 'UTF-8' | 'any';

export interface Listed {
  readonly name: string;
  readonly kind: 'file' | 'folder' | 'link' | 'other';
  /** Where a link leads that stays below the root: what is there, and its name below the root. */
  readonly target?: { readonly kind: 'file' | 'folder'; readonly name: string };
}

export interface Host {
  /** What a path stands for that someone named; its root as `rootAmong` says. */
  find(path: string): Awaitable<FoundPath | ReadError>;
  /** The entries of a folder below the root, links followed, in code unit order; undefined where there is none. */
  list(root: string, folder: string): Awaitable<readonly Listed[] | ReadError | undefined>;
  /** The text of a regular file that lies below the root, links followed; undefined where there is none. */
  read(root: string, name: string, encodings?: Encodings): Awaitable<string | ReadError | undefined>;
  /** The path of a file below a root: one file has one, and `find` takes it. */
  pathIn(root: string, name: string): string;
  /** A name below a root as people see it: from the current folder, with `/`. */
  shown(root: string, name: string): string;
}

export const isTrouble = (value: unknown): value is ReadError =>
  typeof value === 'object' && value !== null && 'trouble' in value;

/** The name of the file that makes a folder a workspace’s root. */
export const houseName = 'fettle.yaml';
/** The folder of part files where no settings name another; without settings, it makes a root too. */
export const partsName = 'parts';

/** A name below a folder; the empty folder is the root. */
export const within = (folder: string, name: string): string => (folder === '' ? name : `${folder}/${name}`);

/** The folder that a name lies in; empty for the root. */
export const folderOf = (name: string): string => name.slice(0, Math.max(0, name.lastIndexOf('/')));

/** What a name ends in: that of the file itself. */
export const lastStep = (name: string): string => name.slice(name.lastIndexOf('/') + 1);

/** The folder and the last step of a path, whichever sign its platform has between steps; `.` where it has one step. */
export function splitPath(path: string): readonly [folder: string, name: string] {
  const at = Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\'));
  return [at < 0 ? '.' : path.slice(0, Math.max(at, 1)), path.slice(at + 1)];
}

/** The name of a path below a folder’s path, empty for the folder itself; undefined where it lies elsewhere. */
export function nameBelow(folder: string, path: string): string | undefined {
  const bare = folder.replace(/[\\/]$/, '');
  const isBelow = path.startsWith(bare) && (bare === '' || path === bare || /[\\/]/.test(path.charAt(bare.length)));
  return isBelow
    ? path
        .slice(bare.length)
        .replace(/^[\\/]/, '')
        .replaceAll('\\', '/')
    : undefined;
}

/**
 * Whether a name of one or more folders stays below its root as written: no empty, dotted or hidden step, no
 * backslash, drive letter or control character.
 */
export function staysBelow(name: string): boolean {
  return (
    name !== '' && !/[\\:\p{Cc}]/u.test(name) && name.split('/').every((step) => step !== '' && !step.startsWith('.'))
  );
}

/** The name below its root of a file that another names by a path from its own folder; undefined where it leads out. */
export function nameFrom(file: string, path: string): string | undefined {
  const steps = file.split('/').slice(0, -1);
  for (const step of path.split('/')) {
    if (step === '..' && steps.pop() === undefined) return undefined;
    if (step !== '..' && step !== '.') steps.push(step);
  }
  const name = steps.join('/');
  return staysBelow(name) ? name : undefined;
}

/** A file’s path as it is seen from a folder; both are named from one place. */
export function pathFrom(folder: string, file: string): string {
  const [from, to] = [folder === '' ? [] : folder.split('/'), file.split('/')];
  let shared = 0;
  while (shared < from.length && shared < to.length - 1 && from[shared] === to[shared]) shared++;
  return [...from.slice(shared).map(() => '..'), ...to.slice(shared)].join('/');
}

/** The path from a file’s own folder to another below the same root. */
export const pathBetween = (file: string, other: string): string => pathFrom(folderOf(file), other);

/** A folder, and what in it makes a root. */
export interface FolderMarks {
  readonly folder: string;
  readonly hasSettings: boolean;
  readonly hasParts: boolean;
}

/**
 * The root among folders, from the inmost out: the nearest that holds `fettle.yaml`, else the nearest that holds a
 * parts folder, else none. So a folder answers the same, opened alone or from above.
 */
export function rootAmong(folders: Iterable<FolderMarks>): string | undefined {
  let withParts: string | undefined;
  for (const { folder, hasSettings, hasParts } of folders) {
    if (hasSettings) return folder;
    if (hasParts) withParts ??= folder;
  }
  return withParts;
}
