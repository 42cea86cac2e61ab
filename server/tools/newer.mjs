// Whether something made is older than what it is made from. Only modules of Node: it runs before anything is
// installed.
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** When a file was last changed; undefined when there is none. */
export function changedAt(path) {
  return statSync(path, { throwIfNoEntry: false })?.mtimeMs;
}

/** When anything in a folder was last changed, the folder itself included, so that a file taken out counts. */
export function lastChangeIn(folder) {
  let latest = changedAt(folder) ?? 0;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    latest = Math.max(latest, entry.isDirectory() ? lastChangeIn(path) : (changedAt(path) ?? 0));
  }
  return latest;
}
