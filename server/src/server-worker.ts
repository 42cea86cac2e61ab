// Entry of the language server in a browser’s worker: it reads no files itself, it asks the editor for them.
import { dayAt } from './core/text';
import { languageFor } from './core/words/languages';
import { version } from '../../package.json';
import { serveWorker } from './language/worker';

serveWorker({
  makeHost: undefined,
  version,
  languageFor,
  today: () => dayAt(new Date()),
  pause: () => new Promise((resolve) => setTimeout(resolve)),
  after: (ms, done) => {
    const timer = setTimeout(done, ms);
    return () => clearTimeout(timer);
  },
});
