// The builds and guides that rest on files which someone named: a part file or settings are judged by what they make of
// the builds that use them, a build comes with the guides that name it, and a guide with its build.
import { tiesOf } from '../core/guide/ties';
import { kindOfFile } from '../core/parts/doc';
import { partNameAt } from '../core/parts/part-name';
import { folderOf, isTrouble, lastStep, nameFrom, within, type Host } from '../host/host';
import { partsFolders, type Loader } from './loader';
import { fileRef } from './texts';
import { walk, type Ours, type RestsOn, type Walked } from './walk';

/** What was walked, and the builds and guides of the same workspaces that may rest on the named files among it. */
export async function withUsers(host: Host, loader: Loader, walked: Walked): Promise<Walked> {
  const byFolder = new Map<string, { file: Ours; restsOn: RestsOn[] }>();
  for (const file of walked.files) {
    const rest = file.named ? await usedAs(host, loader, file) : undefined;
    const folder = rest && (await placeOfUsers(host, file));
    if (!rest || folder === undefined) continue;
    byFolder.set(folder, { file, restsOn: [...(byFolder.get(folder)?.restsOn ?? []), rest] });
  }
  const files = new Map(walked.files.map((file) => [host.pathIn(file.root, file.name), file]));
  const troubles = [...walked.troubles];
  for (const [folder, { file: of, restsOn }] of byFolder) {
    const isRoot = folder === host.pathIn(of.root, '');
    const all = await walk(host, [folder], undefined, isRoot);
    troubles.push(...all.troubles);
    const ofBuilds = restsOn.filter(({ isBuild }) => !isBuild);
    for (const found of all.files) {
      // Beside a file that lies in no workspace, all goes by the root that the file goes by.
      const name = isRoot ? found.name : within(folderOf(of.name), found.name);
      const file = isRoot ? found : { ...found, root: of.root, name };
      const path = host.pathIn(file.root, name);
      const own = file.kind === 'guide' ? restsOn : file.kind === 'build' ? ofBuilds : [];
      if (own.length > 0 && file.root === of.root && !files.has(path)) files.set(path, { ...file, restsOn: own });
    }
  }
  for (const guide of walked.files) {
    const build = guide.named && guide.kind === 'guide' ? await buildOf(host, loader, guide) : undefined;
    const path = build && host.pathIn(build.root, build.name);
    if (path !== undefined && !files.has(path)) files.set(path, build!);
  }
  const shown = (file: Ours): string => host.shown(file.root, file.name);
  return { files: [...files.values()].sort((a, b) => (shown(a) < shown(b) ? -1 : 1)), troubles };
}

/** The build that a guide is about, where it is there. */
async function buildOf(host: Host, loader: Loader, { root, name }: Ours): Promise<Ours | undefined> {
  const doc = await loader.texts.read(fileRef(host, root, name));
  const path = doc && !isTrouble(doc) ? nameFrom(name, tiesOf(doc).build?.path ?? '') : undefined;
  if (path === undefined || kindOfFile(path) !== 'build') return undefined;
  const build = await loader.texts.read(fileRef(host, root, path));
  return build ? { root, name: path, kind: 'build', named: false, along: true } : undefined;
}

/** How others come to rest on a file: on settings and records all do, on a part or a build those that name it. */
async function usedAs(host: Host, loader: Loader, { root, name, kind }: Ours): Promise<RestsOn | undefined> {
  const path = host.pathIn(root, name);
  if (kind === 'house' || kind === 'known' || kind === 'asbuilt') return { path };
  if (kind === 'build') return { path, word: lastStep(name), isBuild: true };
  if (kind !== 'part') return undefined;
  const loaded = await loader.load(fileRef(host, root, name));
  const folder = loaded && partsFolders(loaded.house).find((one) => partNameAt(one, name) !== undefined);
  return folder === undefined ? undefined : { path, word: partNameAt(folder, name)! };
}

/**
 * Where to look for what rests on a file: in its whole workspace; for a build that lies in none, only beside it, since
 * the folder above may be anybody’s.
 */
async function placeOfUsers(host: Host, { root, name, kind }: Ours): Promise<string | undefined> {
  const whole = host.pathIn(root, '');
  if (kind !== 'build') return whole;
  const found = await host.find(host.pathIn(root, name));
  if (isTrouble(found)) return undefined;
  return found.isMarked ? whole : host.pathIn(root, folderOf(name));
}

/** Whether a text can name one of the files: read over, so that few need be judged to know it. */
export function mayRestOn(text: string, restsOn: readonly RestsOn[]): boolean {
  // What is written with escapes is not seen as text.
  return text.includes('\\') || restsOn.some(({ word }) => word === undefined || text.includes(word));
}
