// The command `fettle`: gives a run the real world, and its status to the shell.
import { readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { isMainThread } from 'node:worker_threads';
import { version } from '../../package.json';
import { run } from './command/run';
import type { World } from './command/world';
import { stretchesOf, type Setup, type Stretch } from './command/stretch';
import { dayAt } from './core/text';
import { english } from './core/words/languages';
import { createFiles } from './host/create';
import { openRevision } from './host/git';
import { NodeHost } from './host/node';
import { fileSink } from './host/output';
import { digest, reportText } from './host/report-file';
import { rewriteFile } from './host/rewrite';
import { sheetText } from './host/sheet-file';
import { openStore } from './host/store';
import { readInput } from './host/standard-input';
import { openWatcher } from './host/watcher';
import { openThreads, serveThread } from './host/threads';

const here = process.cwd();
const { NO_COLOR, FORCE_COLOR } = process.env;

// A reader that closes early, such as `head`, ends the writing and nothing else.
for (const stream of [process.stdout, process.stderr]) stream.on('error', () => undefined);

const world: World = {
  host: new NodeHost(here),
  version,
  // In UTC, so that the same files give the same findings wherever they are checked.
  today: dayAt(new Date()),
  colour: !NO_COLOR && (FORCE_COLOR ? FORCE_COLOR !== '0' : process.stdout.isTTY === true),
  // Whatever the terminal speaks: the same text gives the same output until --language asks for another.
  language: english,
  cores: availableParallelism(),
  threads: (count, setup) => openThreads(__filename, count, setup),
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  ...(process.stderr.isTTY
    ? { terminal: { write: (text) => void process.stderr.write(text), hasOut: process.stdout.isTTY === true } }
    : {}),
  revision: (revision) => openRevision(here, revision, process.env),
  anew: () => new NodeHost(here),
  watch: (paths) => openWatcher(here, paths),
  input: () => readInput(process.stdin),
  rewrite: rewriteFile,
  sheet: (path) => sheetText(here, path),
  report: (path) => reportText(here, path),
  digest,
  program: () => digest(`${process.version} ${version}\n${readFileSync(__filename, 'utf8')}`),
  store: (folder) => openStore(here, folder),
  sink: (path) => fileSink(here, path),
  create: (files) => createFiles(here, files),
};

if (isMainThread) void run(process.argv.slice(2), world).then((status) => (process.exitCode = status));
else
  serveThread((setup) => {
    const report = stretchesOf(world.host, setup as Setup);
    return (stretch) => report(stretch as Stretch);
  });
