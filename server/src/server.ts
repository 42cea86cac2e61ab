// Entry of the language server on this machine.
import { setImmediate } from 'node:timers/promises';
import { languageFor } from './core/words/languages';
import { version } from '../../package.json';
import { NodeAddresses } from './host/node-addresses';
import { serveProcess } from './language/process';

// A fault in a step nobody waits for is told, and the server serves on.
const tell = (error: unknown): void =>
  void process.stderr.write(`${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`);
process.on('uncaughtException', tell);
process.on('unhandledRejection', tell);

serveProcess({
  makeHost: (here) => new NodeAddresses(here),
  version,
  languageFor,
  today: () => new Date().toISOString().slice(0, 10),
  pause: () => setImmediate(),
  after: (ms, done) => {
    const timer = setTimeout(done, ms);
    return () => clearTimeout(timer);
  },
});
