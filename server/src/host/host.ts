// What the rest needs of a file system: finding, listing and reading below a root, and nothing else.

/** Sync where the platform reads quickest that way, a promise where it must. */
export type Awaitable<T> = T | Promise<T>;

/** Where a named path lies: the root that bounds what is read with it, and its name below that root. */
export interface FileRef {
  readonly kind: 'file' | 'folder';
  /** Opaque: only handed back to the host. */
  readonly root: string;
  /** With `/` between folders on every platform; empty for the root itself. */
  readonly name: string;
}

/** Why something was not read, in a sentence that stands behind the path and a colon. */
export interface ReadError {
  readonly trouble: string;
}

export interface Listed {
  readonly name: string;
  readonly kind: 'file' | 'folder' | 'link' | 'other';
}

export interface Host {
  /** What a path stands for that someone named. Its root is the nearest folder above that holds `fettle.yaml`. */
  find(path: string): Awaitable<FileRef | ReadError>;
  /** The entries of a folder in code unit order. */
  list(root: string, folder: string): Awaitable<readonly Listed[] | ReadError>;
  /** The text of a regular file that lies below the root, links followed; undefined where there is none. */
  read(root: string, name: string): Awaitable<string | ReadError | undefined>;
  /** A folder below a root as a root of its own. */
  below(root: string, folder: string): string;
  /** A name below a root as people see it: from the current folder, with `/`. */
  shown(root: string, name: string): string;
}

export const isTrouble = (value: unknown): value is ReadError =>
  typeof value === 'object' && value !== null && 'trouble' in value;

/** The name of the file that makes a folder a workspace’s root. */
export const houseName = 'fettle.yaml';

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
