// The settings that hold at a path: those of the root that it lies under.
import { WorkspaceConfig } from '../core/build/workspace-config';
import { houseName, isTrouble, type Host, type ReadError } from '../host/host';
import type { Loader } from './loader';
import { fileRef } from './texts';

export interface SettingsAt {
  readonly root: string;
  /** What makes the folder a root: its settings, a parts folder, or nothing. */
  readonly markedBy: 'settings' | 'parts' | undefined;
  readonly settings: WorkspaceConfig;
}

/** Why there are none to show, where the path is not there or its settings cannot be read. */
export async function settingsAt(host: Host, { texts }: Loader, path: string): Promise<SettingsAt | ReadError> {
  const found = await host.find(path);
  if (isTrouble(found)) return found;
  const read = await texts.read(fileRef(host, found.root, houseName));
  if (isTrouble(read)) return { trouble: `its settings, ${host.shown(found.root, houseName)}: ${read.trouble}` };
  const markedBy = read ? 'settings' : found.isMarked ? 'parts' : undefined;
  return { root: found.root, markedBy, settings: new WorkspaceConfig(read) };
}
