// Runs the command over files in memory, and says what it wrote and how it ended.
import { run } from '../../server/src/command/run';
import type { World } from '../../server/src/command/world';
import { isTrouble, type Host } from '../../server/src/host/host';
import { MemoryHost } from './memory-host';
import { today } from './bench';

export interface Ran {
  readonly status: number;
  readonly out: string;
  readonly err: string;
  readonly files: ReadonlyMap<string, string>;
}

/** `files` by path, or a host of one’s own. `words` are what follows `fettle` on the command line. */
export async function fettle(files: Record<string, string> | Host, ...words: string[]): Promise<Ran> {
  const host: Host =
    typeof files.read === 'function'
      ? (files as Host)
      : new MemoryHost(Object.entries(files as Record<string, string>));
  const written = new Map<string, string>();
  let out = '';
  let err = '';
  const world: World = {
    host,
    version: '1.2.3',
    today,
    colour: false,
    out: (text) => void (out += text),
    err: (text) => void (err += text),
    create(files) {
      for (const [path, text] of files) {
        if (!isTrouble(host.find(path))) throw Object.assign(new Error('EEXIST'), { code: 'EEXIST' });
        written.set(path, text);
      }
    },
    sink(path) {
      let text = '';
      return { write: (more) => void (text += more), done: () => void written.set(path, text), drop: () => undefined };
    },
  };
  const status = await run(words, world);
  return { status, out, err, files: written };
}
