// What the commands that write new files share: which kind and where, and that all of them are written or none.
import { isKind, kindNames, type Kind } from '../core/parts/kinds';
import { isTrouble, type FoundPath, type Host } from '../host/host';
import { placeOfPart } from '../session/new-part';
import { shortPath } from '../session/run-trouble';
import { Texts, type FileRef } from '../session/texts';
import { refusal, type Refusal, type World } from './world';

/** @throws Refusal where it cannot be read. */
export async function currentFolder(host: Host): Promise<FoundPath> {
  const found = await host.find('.');
  if (isTrouble(found)) throw refusal`the current folder: ${found}`;
  return found;
}

/** @throws Refusal where there is no such kind of part. */
export function kindCalled(word: string): Kind {
  if (!isKind(word)) throw refusal`${shortPath(word)} is no kind of part; the kinds are ${kindNames.join(', ')}.`;
  return word;
}

/** Where the file of a part belongs in the workspace around the current folder. @throws Refusal for what is no name. */
export async function placeOfNew(name: string, host: Host): Promise<FileRef> {
  const { root } = await currentFolder(host);
  const place = await placeOfPart(new Texts(), host, root, name);
  if (!place) throw refusal`${shortPath(name)}: a part is called by its path in the parts folder: maker/model.`;
  return place;
}

/**
 * Writes new files, by their paths from the current folder: all of them or none.
 * @param isThere what is said where something stands in the place of one.
 * @throws Refusal where they are not written.
 */
export function writeNew(files: ReadonlyMap<string, string>, isThere: Refusal, { create }: World): void {
  const [first = ''] = files.keys();
  try {
    create(files);
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    throw code === 'EEXIST' ? isThere : refusal`${shortPath(first)}: cannot be written: ${message}`;
  }
}
