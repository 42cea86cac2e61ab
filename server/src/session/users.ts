// The builds that rest on part files or settings which someone named: changed alone, such a file is judged by what it
// makes of the builds that use it.
import { partNameAt } from '../core/parts/part-name';
import type { Host } from '../host/host';
import { partsFolders, type Loader } from './loader';
import { fileRef } from './texts';
import { walk, type Ours, type RestsOn, type Walked } from './walk';

/** What was walked, and the builds of the same workspaces that may rest on the part files and settings among it. */
export async function withUsers(host: Host, loader: Loader, walked: Walked): Promise<Walked> {
  const byRoot = new Map<string, RestsOn[]>();
  for (const file of walked.files) {
    const rest = file.named ? await usedAs(host, loader, file) : undefined;
    if (rest) byRoot.set(file.root, [...(byRoot.get(file.root) ?? []), rest]);
  }
  const files = new Map(walked.files.map((file) => [host.pathIn(file.root, file.name), file]));
  const troubles = [...walked.troubles];
  for (const [root, restsOn] of byRoot) {
    const all = await walk(host, [host.pathIn(root, '')]);
    troubles.push(...all.troubles);
    for (const file of all.files) {
      const path = host.pathIn(file.root, file.name);
      if ((file.kind === 'build' || file.kind === 'guide') && file.root === root && !files.has(path))
        files.set(path, { ...file, restsOn });
    }
  }
  const shown = (file: Ours): string => host.shown(file.root, file.name);
  return { files: [...files.values()].sort((a, b) => (shown(a) < shown(b) ? -1 : 1)), troubles };
}

/** How builds come to rest on a file: on settings all do, on a part those that name it. */
async function usedAs(host: Host, loader: Loader, { root, name, kind }: Ours): Promise<RestsOn | undefined> {
  const path = host.pathIn(root, name);
  if (kind === 'house') return { path };
  if (kind !== 'part') return undefined;
  const loaded = await loader.load(fileRef(host, root, name));
  const folder = loaded && partsFolders(loaded.house).find((one) => partNameAt(one, name) !== undefined);
  return folder === undefined ? undefined : { path, partName: partNameAt(folder, name)! };
}

/** Whether a text can name one of the files: read over, so that few builds need be judged to know it. */
export function mayRestOn(text: string, restsOn: readonly RestsOn[]): boolean {
  // What is written with escapes is not seen as text.
  return text.includes('\\') || restsOn.some(({ partName }) => partName === undefined || text.includes(partName));
}
