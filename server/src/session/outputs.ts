// The outputs of a finished machine: the files of one folder that somebody names, read as text and nothing else.
import { Doc } from '../core/parts/doc';
import { isTrouble, within, type Host, type ReadError } from '../host/host';
import { troubleAt, type RunTrouble } from './run-trouble';

export interface OutputFolder {
  /** The folder as people see it. */
  readonly shown: string;
  readonly docs: readonly Doc[];
  readonly troubles: readonly RunTrouble[];
}

/** No folder of outputs holds more files. */
const mostFiles = 500;

export async function readOutputs(host: Host, path: string): Promise<OutputFolder | ReadError> {
  const found = await host.find(path);
  if (isTrouble(found)) return found;
  if (found.kind !== 'folder') return { trouble: 'is no folder; name the folder that holds the outputs.' };
  const listed = await host.list(found.root, found.name);
  if (listed === undefined) return { trouble: 'there is no such folder.' };
  if (isTrouble(listed)) return listed;
  const docs: Doc[] = [];
  const troubles: RunTrouble[] = [];
  const files = listed.filter(({ name, kind }) => kind === 'file' && !name.startsWith('.'));
  if (files.length > mostFiles)
    return { trouble: `holds more than ${mostFiles} files, which no machine’s outputs are.` };
  for (const { name } of files) {
    const below = within(found.name, name);
    const text = await host.read(found.root, below, 'any');
    const shown = host.shown(found.root, below);
    if (typeof text === 'string') docs.push(new Doc(shown, 'output', text));
    else if (text) troubles.push(troubleAt(shown, text.trouble));
  }
  return { shown: host.shown(found.root, found.name), docs, troubles };
}
