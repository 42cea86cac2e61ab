// Entry of the language server on this machine.
import { setImmediate } from 'node:timers/promises';
import { setFlagsFromString } from 'node:v8';
import { dayAt } from './core/text';
import { languageFor } from './core/words/languages';
import { version } from '../../package.json';
import { NodeAddresses } from './host/node-addresses';
import { serveProcess } from './language/process';

// The engine would let the heap grow fourfold over the 30 MB that live: 200 MB after thousands of edits, for nothing.
// By a third it is 145 MB, and 120 where the extension starts it, at a seventh more of processor time
// (tests/bench/memory.mjs).
setFlagsFromString('--heap-growing-percent=30');
setFlagsFromString('--semi-space-growth-factor=1');
// So small a heap is cleared by one thread as fast as by several, and on a busy machine a key need not wait until the
// others have had their turn.
setFlagsFromString('--no-parallel-scavenge');

// A fault in a step nobody waits for is told, and the server serves on.
const tell = (error: unknown): void =>
  void process.stderr.write(`${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`);
process.on('uncaughtException', tell);
process.on('unhandledRejection', tell);

serveProcess({
  makeHost: (here) => new NodeAddresses(here),
  version,
  languageFor,
  today: () => dayAt(new Date()),
  pause: () => setImmediate(),
  after: (ms, done) => {
    const timer = setTimeout(done, ms);
    return () => clearTimeout(timer);
  },
});
