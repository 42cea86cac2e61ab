// New files: all of them or none, and never over one that stands there.
import { linkSync, mkdirSync, rmdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';

/**
 * Writes files that are not there yet, with the folders they lie in.
 * @throws Error of the system, with the file it concerns as `path`; then nothing is left of any of them.
 */
export function createFiles(here: string, files: ReadonlyMap<string, string>): void {
  const undo: (() => void)[] = [];
  try {
    for (const [path, text] of files) create(resolve(here, path), text, undo);
  } catch (error) {
    for (const step of undo.reverse()) step();
    throw error;
  }
}

function create(full: string, text: string, undo: (() => void)[]): void {
  const folder = dirname(full);
  const made = mkdirSync(folder, { recursive: true });
  if (made !== undefined) undo.push(() => removeEmpty(folder, dirname(made)));
  const temporary = join(folder, `.new.${process.pid}.part`);
  try {
    writeFileSync(temporary, text, { flag: 'wx', flush: true });
    put(temporary, full, text);
    undo.push(() => rmSync(full, { force: true }));
  } finally {
    rmSync(temporary, { force: true });
  }
}

/** A second name comes whole or not at all, and takes no other file’s place; where there are none, a plain new file. */
function put(temporary: string, full: string, text: string): void {
  try {
    linkSync(temporary, full);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') throw error;
    writeFileSync(full, text, { flag: 'wx', flush: true });
  }
}

/** Removes folders that were made, from the inmost up to the one that was there. */
function removeEmpty(folder: string, above: string): void {
  for (let at = folder; at !== above && at !== dirname(at); at = dirname(at)) {
    try {
      rmdirSync(at);
    } catch {
      // Someone else has put something there.
      return;
    }
  }
}
