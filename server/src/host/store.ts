// A folder that a run keeps things in for the next one. What is not found whole there counts as not there.
import { closeSync, constants, existsSync, fstatSync, mkdirSync, openSync, readFileSync, realpathSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { houseName, type ReadError } from './host';
import { fileSink } from './output';

export interface Store {
  /** What is kept under a name, or undefined. */
  read(name: string): string | undefined;
  /** Keeps a text whole or not at all. @throws Error of the system. */
  write(name: string, text: string): void;
}

/** A larger file is none of ours. */
const mostBytes = 200_000_000;
const flags = constants.O_RDONLY | (constants.O_NONBLOCK ?? 0) | (constants.O_NOFOLLOW ?? 0);

/** Opens a folder, made where it is not there; refused where whoever writes a change could fill it. */
export function openStore(here: string, folder: string): Store | ReadError {
  try {
    const full = resolve(here, folder);
    if (isOwned(realpathSync(nearest(full))))
      return { trouble: 'lies in a repository or workspace, so that a change could fill it; name a folder outside.' };
    mkdirSync(full, { recursive: true });
    const real = realpathSync(full);
    return {
      read: (name) => textOf(join(real, name)),
      write(name, text) {
        const sink = fileSink(real, name);
        try {
          sink.write(text);
          sink.done();
        } finally {
          sink.drop();
        }
      },
    };
  } catch (error) {
    return { trouble: `cannot be used: ${(error as Error).message}.` };
  }
}

/** The nearest folder that is there. */
function nearest(folder: string): string {
  return existsSync(folder) || dirname(folder) === folder ? folder : nearest(dirname(folder));
}

/** Whether a folder lies in a repository or a workspace. */
function isOwned(folder: string): boolean {
  if ([houseName, '.git'].some((mark) => existsSync(join(folder, mark)))) return true;
  return dirname(folder) !== folder && isOwned(dirname(folder));
}

function textOf(path: string): string | undefined {
  let file: number | undefined;
  try {
    file = openSync(path, flags);
    const stat = fstatSync(file);
    return stat.isFile() && stat.size <= mostBytes ? readFileSync(file, 'utf8') : undefined;
  } catch {
    return undefined;
  } finally {
    if (file !== undefined) closeSync(file);
  }
}
