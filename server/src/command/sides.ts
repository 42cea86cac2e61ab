// The two sides of a comparison: revisions, the working tree or folders, and the files that each holds.
import { folderOf, isTrouble, pathFrom, type Host } from '../host/host';
import { Loader } from '../session/loader';
import { troubleAt, type RunTrouble } from '../session/run-trouble';
import { walk, type Ours } from '../session/walk';
import { refusal, type World } from './world';

export interface Side {
  readonly host: Host;
  readonly loader: Loader;
  /** What is compared of it, as its host finds it. */
  readonly path: string;
  /** As it is called: `main (3f2a9c10ab)`, `working tree`, a folder. */
  readonly label: string;
}

/** A file of a side by its path from what is compared. */
export interface SideFile extends Ours {
  readonly key: string;
}

export interface SideFiles {
  readonly files: readonly SideFile[];
  /** The path of a file from what is compared, by its root and its name below it. */
  readonly keyOf: (root: string, name: string) => string;
  readonly troubles: readonly RunTrouble[];
}

const shortId = 10;

/** @throws Refusal where there is no such revision, or it cannot be read. */
export function revisionSide(world: World, revision: string, path: string, on: string): Side {
  const host = world.revision(revision);
  if (isTrouble(host)) throw refusal`${revision}: ${host}`;
  const short = host.id.slice(0, shortId);
  const label = host.id.startsWith(revision) ? short : `${revision} (${short})`;
  return { host, loader: new Loader(() => on), path, label };
}

export const folderSide = (world: World, path: string, label: string, on: string): Side => ({
  host: world.host,
  loader: new Loader(() => on),
  path,
  label,
});

/** The files of a side; a path that is not there on this side holds none. */
export async function filesOf({ host, path }: Side): Promise<SideFiles> {
  const found = await host.find(path);
  if (isTrouble(found))
    return { files: [], keyOf: (root, name) => host.shown(root, name), troubles: [troubleAt(path, found.trouble)] };
  const folder = found.kind === 'folder' ? found.name : folderOf(found.name);
  const shown = host.shown(found.root, folder);
  const base = shown === '.' ? '' : shown;
  // What stands above the path decides, too, what a build in it comes to.
  const walked = await walk(host, [host.pathIn(found.root, '')]);
  const keyOf = (root: string, name: string): string => pathFrom(base, host.shown(root, name));
  const files = walked.files.map((file) => ({ ...file, key: keyOf(file.root, file.name) }));
  return { files, keyOf, troubles: walked.troubles };
}

/** Whether a file lies below what is compared, and not beside it in the same workspace. */
export const isAsked = ({ key }: SideFile): boolean => !key.startsWith('../');
