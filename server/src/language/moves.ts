// Files that the editor moves: what has to change so that every build still finds its parts.
import type { WorkspaceEdit as ProtocolEdit } from 'vscode-languageserver/node';
import { partNameAt } from '../core/parts/part-name';
import type { Edit } from '../core/text';
import { renameWithin } from '../features/guide-uses';
import { movedFolders } from '../features/rename';
import { documentEdit, type TextDocumentEdit } from '../features/shapes';
import { wholeFile, type Named } from '../features/subject';
import { houseName, isTrouble, nameBelow } from '../host/host';
import { partsFolders } from '../session/loader';
import type { AddressedFile } from '../session/session';
import { fileRef } from '../session/texts';
import type { Asker } from '../session/use-index';
import { addEdit, type Across, type Here } from './across';
import { editForClient } from './client';
import { guidesLeft } from './guide-moves';
import type { Shared } from './findings';
import { cancelled } from './guard';

export interface Move {
  readonly oldUri: string;
  readonly newUri: string;
}

interface RenamedPart {
  readonly here: Here;
  readonly from: string;
  readonly to: string;
}

/** The change that moves bring with them: names of parts whose files are among them, parts folders in settings. */
export async function filesMoved(
  shared: Shared,
  across: Across,
  moves: readonly Move[],
  asker: Asker,
): Promise<ProtocolEdit | null> {
  across.readAnew();
  const changes = new Map<string, TextDocumentEdit>();
  // What cannot be changed safely stays, and is found when the builds are judged.
  const add = (file: AddressedFile, edits: readonly Edit[] = []): void => {
    addEdit(changes, documentEdit(file, file.doc, edits));
  };
  for (const move of moves) {
    if (across.isOwn(move)) continue;
    const [house, from, to] = (await movedFolder(shared, across, move)) ?? [];
    if (house && from !== undefined && to !== undefined) add(house, movedFolders(house.doc, from, to));
    for (const part of await renamedParts(shared, across, move, asker))
      for await (const user of across.users(part.here, [part.from], asker))
        for (const { doc, edits } of renameWithin(user, wholeFile(part.from), part.to) ?? [])
          addEdit(changes, documentEdit(user, doc, edits));
  }
  for await (const { guide, path } of guidesLeft(shared, across, moves, asker))
    add(guide, guide.guide!.ties.build?.renamed(path));
  const documentChanges = [...changes.values()];
  return documentChanges.length === 0 ? null : editForClient({ documentChanges }, shared.client.versionedEdits);
}

/** A folder that moves within its workspace, by its name below the root, with the workspace’s settings. */
async function movedFolder(
  { session }: Shared,
  across: Across,
  { oldUri, newUri }: Move,
): Promise<[AddressedFile & Named, string, string] | undefined> {
  const host = session.hostFor(oldUri);
  const [path, target] = [host?.pathOf(oldUri), host?.pathOf(newUri)];
  if (!host || path === undefined || target === undefined) return undefined;
  const found = await host.find(path);
  if (isTrouble(found) || found.kind !== 'folder' || found.name === '') return undefined;
  const house = await across.read(fileRef(host, found.root, houseName));
  const to = house && nameInWorkspace(house, target);
  return to === undefined ? undefined : [house!, found.name, to];
}

async function renamedParts(
  shared: Shared,
  across: Across,
  { oldUri, newUri }: Move,
  asker: Asker,
): Promise<RenamedPart[]> {
  const found: RenamedPart[] = [];
  for (const uri of await partUrisIn(shared, across, oldUri)) {
    if (asker.stopped()) throw cancelled();
    const here = await across.at(uri);
    const path = shared.session.pathOf(newUri + uri.slice(oldUri.length));
    const to = here && path !== undefined ? newPartName(here, path) : undefined;
    const from = here?.partName;
    if (here && from !== undefined && to !== undefined && from !== to) found.push({ here, from, to });
  }
  return found;
}

/** The part files at an address: the file itself, or those in a folder. */
async function partUrisIn({ session }: Shared, { index }: Across, uri: string): Promise<string[]> {
  if (uri.endsWith('.part.yaml')) return [uri];
  const host = session.hostFor(uri);
  const path = host?.pathOf(uri);
  const found = host && path !== undefined ? await host.find(path) : undefined;
  if (!host || path === undefined || !found || isTrouble(found) || found.kind !== 'folder') return [];
  const files = await index.filesOf({ host, root: found.root, name: found.name, path });
  const below = found.name === '' ? '' : `${found.name}/`;
  return files
    .filter(({ name }) => name.startsWith(below) && name.endsWith('.part.yaml'))
    .map(({ name }) =>
      [uri.replace(/\/$/, ''), ...name.slice(below.length).split('/').map(encodeURIComponent)].join('/'),
    );
}

/** The name of the part whose file comes to lie at a path; undefined where no build would find it there. */
function newPartName(here: Here, path: string): string | undefined {
  const name = nameInWorkspace(here, path);
  return name === undefined
    ? undefined
    : partsFolders(here.house).flatMap((folder) => partNameAt(folder, name) ?? [])[0];
}

/** A path as a name below the root of a file’s workspace; undefined where it lies elsewhere. */
export function nameInWorkspace({ place: { host, root } }: Pick<Here, 'place'>, path: string): string | undefined {
  const base = host.pathIn(root, '');
  const name = nameBelow(base, path) || undefined;
  // Where paths are addresses, names are encoded in them.
  return name && /^[a-z][\w+.-]+:/i.test(base) ? decodeURIComponent(name) : name;
}
