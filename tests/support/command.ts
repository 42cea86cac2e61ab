// Runs the command over files in memory, and says what it wrote and how it ended.
import { run } from '../../server/src/command/run';
import { stretchesOf, type Setup, type Stretch } from '../../server/src/command/stretch';
import type { World } from '../../server/src/command/world';
import { isTrouble, type Host } from '../../server/src/host/host';
import { digest } from '../../server/src/host/report-file';
import type { Store } from '../../server/src/host/store';
import type { Threads } from '../../server/src/host/threads';
import type { Language } from '../../server/src/core/words/language';
import { english } from '../../server/src/core/words/languages';
import type { Watcher } from '../../server/src/host/watcher';
import { MemoryHost } from './memory-host';
import { today } from './bench';

export interface Ran {
  readonly status: number;
  readonly out: string;
  readonly err: string;
  readonly files: ReadonlyMap<string, string>;
}

/** As the command, its messages in a language of one’s own. */
export const fettleIn = (language: Language, files: Record<string, string> | Host, ...words: string[]): Promise<Ran> =>
  ran({}, files, words, () => language);

/** `files` by path, or a host of one’s own. `words` are what follows `fettle` on the command line. */
export const fettle = (files: Record<string, string> | Host, ...words: string[]): Promise<Ran> =>
  ran({}, files, words, english);

/** The same with a text on standard input. */
export const fettleGiven = (input: string, files: Record<string, string> | Host, ...words: string[]): Promise<Ran> =>
  ran({}, files, words, english, input);

/** The same while files change: each step changes them and says which. */
export function fettleWatching(host: MemoryHost, steps: readonly (() => string[])[], ...words: string[]) {
  const left = [...steps];
  const added: string[] = [];
  return ran({}, host, words, english, '', {
    add: (paths) => void added.push(...paths),
    next: async () => left.shift()?.(),
    close: async () => undefined,
  }).then((done) => ({ ...done, added }));
}

/** The same where the repository has revisions. */
export const fettleAmong = (revisions: Revisions, files: Files, ...words: string[]): Promise<Ran> =>
  ran(revisions, files, words, english);

type Files = Record<string, string> | Host;
type Revisions = Readonly<Record<string, Files>>;

async function ran(
  revisions: Revisions,
  files: Files,
  words: readonly string[],
  language: () => Language,
  input = '',
  watcher: Watcher = { add: () => undefined, next: async () => undefined, close: async () => undefined },
): Promise<Ran> {
  const host = hostOf(files);
  const written = new Map<string, string>();
  let out = '';
  let err = '';
  const world: World = {
    host,
    version: '1.2.3',
    today,
    colour: false,
    language,
    cores: 1,
    threads: (_, setup) => threadsOver(host, setup),
    out: (text) => void (out += text),
    err: (text) => void (err += text),
    create(files) {
      for (const [path, text] of files) {
        if (!isTrouble(host.find(path))) throw Object.assign(new Error('EEXIST'), { code: 'EEXIST' });
        written.set(path, text);
      }
    },
    revision: (name) =>
      Object.hasOwn(revisions, name)
        ? Object.assign(hostOf(revisions[name]!), { id: '0123456789'.repeat(4) })
        : { trouble: 'names no commit of this repository.' },
    anew: () => host,
    watch: async () => watcher,
    input: async () => input,
    rewrite(_root, path, before, after) {
      if (host.read('', path) !== before) return { trouble: 'has changed since it was read; nothing was written.' };
      written.set(path, after);
      if (host instanceof MemoryHost) host.write(path, after);
      return undefined;
    },
    sheet(path) {
      const text = host.read('', path) as ReturnType<MemoryHost['read']>;
      return text ?? { trouble: 'there is no such file.' };
    },
    report: (path) => (host.read('', path) as ReturnType<MemoryHost['read']>) ?? { trouble: 'there is no such file.' },
    digest,
    program: () => 'program',
    store: (folder) => storeIn(folder, host),
    sink(path) {
      let text = '';
      return { write: (more) => void (text += more), done: () => void written.set(path, text), drop: () => undefined };
    },
  };
  const status = await run(words, world);
  return { status, out, err, files: written };
}

/** What is kept in a folder lies among the files. */
function storeIn(folder: string, host: Host): Store {
  return {
    read: (name) => host.read('', `${folder}/${name}`) as string | undefined,
    write: (name, text) => void (host as MemoryHost).write(`${folder}/${name}`, text),
  };
}

/** Threads that are none: they get copies, as threads do, and answer in another order; every tenth fails. */
function threadsOver(host: Host, setup: unknown): Threads {
  const report = stretchesOf(host, structuredClone(setup) as Setup);
  let count = 0;
  return {
    async run(work) {
      const own = ++count;
      for (let i = 0; i < (own % 3) * 5; i++) await Promise.resolve();
      if (own % 10 === 0) throw new Error('a thread that failed');
      return structuredClone(await report(work as Stretch));
    },
    end: async () => undefined,
  };
}

const hostOf = (files: Record<string, string> | Host): Host =>
  typeof files.read === 'function' ? (files as Host) : new MemoryHost(Object.entries(files as Record<string, string>));
