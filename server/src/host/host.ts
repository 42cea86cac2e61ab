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

/** Names below a folder. */
export const within = (folder: string, name: string): string => (folder === '' ? name : `${folder}/${name}`);

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

/** The path from a file’s own folder to another below the same root. */
export function pathBetween(file: string, other: string): string {
  const [from, to] = [file.split('/').slice(0, -1), other.split('/')];
  const shared = from.findIndex((step, i) => i === to.length - 1 || step !== to[i]);
  const common = shared < 0 ? from.length : shared;
  return [...from.slice(common).map(() => '..'), ...to.slice(common)].join('/');
}

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
