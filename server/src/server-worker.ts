// Entry of the language server in a browser’s worker: it reads no files itself, it asks the editor for them.
import { languageFor } from './core/words/languages';
import { version } from '../../package.json';
import { serveWorker } from './language/worker';

serveWorker({
  makeHost: undefined,
  version,
  languageFor,
  today: () => new Date().toISOString().slice(0, 10),
  pause: () => new Promise((resolve) => setTimeout(resolve)),
  after: (ms, done) => {
    const timer = setTimeout(done, ms);
    return () => clearTimeout(timer);
  },
});
