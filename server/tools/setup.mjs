// Brings a checkout to where everything runs: packages installed, bundles built. Quiet where nothing is to be done.
// It runs before anything is installed, so it uses modules of Node alone.
import { spawnSync } from 'node:child_process';
import { existsSync, rmSync, utimesSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { changedAt, lastChangeIn } from './newer.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const at = (path) => join(root, path);

/** npm writes this file last, so its presence says that an install went through. */
const installed = at('node_modules/.package-lock.json');

function run(words, ...args) {
  process.stderr.write(`${words}\n`);
  const { status, error } = spawnSync(args[0], args.slice(1), {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    shell: process.platform === 'win32',
  });
  if (status === 0) return true;
  process.stderr.write(`${words} failed${error ? `: ${error.message}` : ` with status ${status}`}.\n`);
  return false;
}

function install() {
  const done = changedAt(installed);
  if (done !== undefined && done >= (changedAt(at('package-lock.json')) ?? 0)) return true;
  if (!run('Installing packages (npm ci)', 'npm', 'ci', '--no-audit', '--no-fund')) return false;
  // npm keeps the times of an unchanged tree; the next run is to see that this one happened.
  if (existsSync(installed)) utimesSync(installed, new Date(), new Date());
  return true;
}

function build() {
  const sources = ['server/src', 'client/src'].filter((folder) => existsSync(at(folder)));
  const latest = Math.max(
    ...sources.map((folder) => lastChangeIn(at(folder))),
    changedAt(at('server/tools/build.mjs')) ?? 0,
    changedAt(installed) ?? 0,
  );
  const made = changedAt(at('dist/.built'));
  if (made !== undefined && made >= latest && existsSync(at('dist/fettle.js'))) return true;
  rmSync(at('dist/.built'), { force: true });
  return run('Building', process.execPath, at('server/tools/build.mjs'));
}

if (Number(process.versions.node.split('.')[0]) < 20) {
  process.stderr.write(`Fettle needs Node 20 or newer; this is ${process.version}.\n`);
  process.exitCode = 1;
} else {
  process.exitCode = install() && build() ? 0 : 1;
}
