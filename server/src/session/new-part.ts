// Where a new part file of a workspace belongs.
import { WorkspaceConfig } from '../core/build/workspace-config';
import { Doc } from '../core/parts/doc';
import { partPath } from '../core/parts/part-name';
import { houseName, partsName, type Host } from '../host/host';
import { partsFolders } from './loader';
import { fileRef, type FileRef, type Texts } from './texts';

/** The file of a part by its name, in the first of the workspace’s parts folders; undefined for a name that is none. */
export async function placeOfPart<H extends Host>(
  texts: Texts,
  host: H,
  root: string,
  name: string,
): Promise<FileRef<H> | undefined> {
  const house = await texts.read(fileRef(host, root, houseName));
  const [folder = partsName] = partsFolders(house instanceof Doc ? new WorkspaceConfig(house) : new WorkspaceConfig());
  const path = partPath(folder, name);
  return path === undefined ? undefined : fileRef(host, root, path);
}
