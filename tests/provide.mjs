// Installs what the tests need beyond npm: Debian packages, and VS Code's own workbench in a cache folder.
// Run: node tests/provide.mjs [PACKAGE…|workbench]. Nothing here waits for input; every step has a time limit.
import { accessSync, constants, existsSync, readdirSync } from 'node:fs';
import { chmod, copyFile, mkdir, mkdtemp, rename, rm, stat, symlink, writeFile } from 'node:fs/promises';
import { homedir } from 'node:os';
import { delimiter, dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { runGroup } from './tools/group.mjs';

/** Each Debian package with the sign that what it brings is there, whoever installed it. */
const packages = {
  chromium: () => Boolean(chromiumPath()),
  neovim: () => Boolean(programPath('nvim')),
  'emacs-nox': () => Boolean(programPath('emacs')),
  'elpa-eglot': () => hasEglot(),
  'edid-decode': () => Boolean(programPath('edid-decode')),
  units: () => Boolean(programPath('units')),
  'i2c-tools': () => Boolean(programPath('i2cdump')),
  dmidecode: () => Boolean(programPath('dmidecode')),
  pciutils: () => Boolean(programPath('lspci')),
  fdisk: () => Boolean(programPath('sfdisk')),
  pngquant: () => Boolean(programPath('pngquant')),
  optipng: () => Boolean(programPath('optipng')),
  advancecomp: () => Boolean(programPath('advpng')),
};

/** Pictures are only made small by hand. */
const FOR_PICTURES = new Set(['pngquant', 'optipng', 'advancecomp']);

/** What tests need. */
export const packageNames = Object.keys(packages).filter((name) => !FOR_PICTURES.has(name));

const APT_UPDATE_LIMIT_MS = 120_000;
const APT_INSTALL_LIMIT_MS = 600_000;
const NPM_LIMIT_MS = 300_000;

/** The newest line of the workbench that runs on Node 20; it carries VS Code 1.100. */
const WORKBENCH = { 'code-server': '4.100.3', ripgrep: '1.18.0', recipe: 1 };

export function programPath(name) {
  const folders = [...(process.env.PATH ?? '').split(delimiter), '/usr/sbin', '/sbin'];
  return folders
    .filter(Boolean)
    .map((folder) => join(folder, name))
    .find(isProgram);
}

export function chromiumPath() {
  return programPath('chromium') ?? programPath('chromium-browser');
}

function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function namesIn(folder) {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

/** Eglot is a package of its own up to Emacs 28 and part of Emacs from 29 on. */
function hasEglot() {
  if (namesIn('/usr/share/emacs/site-lisp/elpa').some((name) => name.startsWith('eglot-'))) return true;
  return namesIn('/usr/share/emacs').some((name) => /^(29|[3-9]\d)\b/.test(name));
}

export function missingPackages(names = packageNames) {
  return names.filter((name) => !packages[name]());
}

/**
 * Installs what is missing of `names`. Returns what is still missing and why; throws nothing, so that a caller can
 * skip or fail as it sees fit.
 */
export async function providePackages(names = packageNames, say = () => undefined) {
  const missing = missingPackages(names);
  if (missing.length === 0) return { missing, message: '' };
  const asRoot = await rootPrefix();
  if (!asRoot) {
    return {
      missing,
      message:
        `Missing: ${missing.join(', ')}. Not installed: this needs root on a Debian system. Run: sudo ` +
        `apt-get install ${missing.join(' ')}`,
    };
  }
  say(`Installing Debian packages: ${missing.join(' ')}`);
  const failure = await aptInstall(asRoot, missing);
  const left = missingPackages(missing);
  if (left.length === 0) return { missing: left, message: '' };
  return {
    missing: left,
    message: `Missing: ${left.join(', ')}. ${failure ?? 'apt-get ended well, yet they are not there.'}`,
  };
}

/** What to put before apt-get to run it as root, or undefined where we cannot. */
async function rootPrefix() {
  if (!programPath('apt-get')) return undefined;
  if (process.getuid?.() === 0) return [];
  if (!programPath('sudo')) return undefined;
  const { status } = await runGroup('sudo', ['-n', 'true'], { limitMs: 10_000 });
  return status === 0 ? ['sudo', '-n'] : undefined;
}

/** Installs by apt-get, refreshing the lists only when the first try fails. Returns what went wrong, if anything. */
async function aptInstall(asRoot, names) {
  const apt = (args, limitMs) => {
    const line = [
      ...asRoot,
      'env',
      'DEBIAN_FRONTEND=noninteractive',
      'apt-get',
      '-q',
      '-y',
      '-o',
      'DPkg::Lock::Timeout=60',
      ...args,
    ];
    return runGroup(line[0], line.slice(1), { limitMs });
  };
  const install = ['install', '--no-install-recommends', ...names];
  const first = await apt(install, APT_INSTALL_LIMIT_MS);
  if (first.status === 0) return undefined;
  const update = await apt(['update'], APT_UPDATE_LIMIT_MS);
  if (update.status !== 0) return failed('apt-get update', update);
  const second = await apt(install, APT_INSTALL_LIMIT_MS);
  return second.status === 0 ? undefined : failed('apt-get install', second);
}

function failed(what, { status, output }) {
  const how = status === 124 ? 'passed its time limit' : `ended with status ${status}`;
  return `${what} ${how}:\n${output.trim().split('\n').slice(-12).join('\n')}`;
}

/** Where downloads for the tests are kept: outside the repository, so that a clean checkout stays clean. */
export function cacheFolder() {
  const { FETTLE_TEST_CACHE: chosen, XDG_CACHE_HOME: caches } = process.env;
  return chosen || join(caches || join(homedir(), '.cache'), 'fettle-tests');
}

/**
 * VS Code's server and web workbench, installed on first use. Returns the folder that holds `out/server-main.js`.
 * The install happens beside its final place and is renamed when whole: what is there is always complete.
 */
export async function provideWorkbench(say = () => undefined) {
  const { 'code-server': version, recipe } = WORKBENCH;
  const home = join(cacheFolder(), `workbench-${version}-${process.platform}-${process.arch}-${recipe}`);
  const workbench = join(home, 'node_modules/code-server/lib/vscode');
  if (existsSync(home)) return workbench;
  await mkdir(cacheFolder(), { recursive: true });
  await removeAbandoned();
  const temporary = await mkdtemp(join(cacheFolder(), 'unfinished-'));
  try {
    say(`Installing the workbench ${version} into ${home}; this takes about a minute`);
    await installWorkbench(temporary);
    await rename(temporary, home).catch((error) => {
      if (!existsSync(home)) throw error; // another run was quicker: its copy serves as well
    });
  } finally {
    await rm(temporary, { recursive: true, force: true });
  }
  return workbench;
}

/** Takes away what a killed install left behind; one younger than all its limits together may still be at work. */
async function removeAbandoned() {
  for (const name of namesIn(cacheFolder()).filter((each) => each.startsWith('unfinished-'))) {
    const path = join(cacheFolder(), name);
    const { mtimeMs } = await stat(path).catch(() => ({ mtimeMs: Infinity }));
    if (Date.now() - mtimeMs > 4 * NPM_LIMIT_MS) await rm(path, { recursive: true, force: true });
  }
}

async function installWorkbench(folder) {
  const ripgrep = `@vscode/ripgrep-${process.platform}-${process.arch}`;
  await writeFile(join(folder, 'package.json'), '{ "private": true }\n');
  await npmInstall(folder, ['--no-save', `code-server@${WORKBENCH['code-server']}`, `${ripgrep}@${WORKBENCH.ripgrep}`]);
  const workbench = join(folder, 'node_modules/code-server/lib/vscode');
  await npmInstall(workbench, ['--omit=dev']);
  await npmInstall(join(workbench, 'extensions'), ['--omit=dev']);
  const searcher = join(workbench, 'node_modules/@vscode/ripgrep/bin/rg');
  await mkdir(dirname(searcher), { recursive: true });
  await copyFile(join(folder, 'node_modules', ripgrep, 'bin/rg'), searcher);
  await chmod(searcher, 0o755);
  await symlink('node_modules', join(workbench, 'node_modules.asar')).catch((error) => {
    if (error.code !== 'EEXIST') throw error;
  });
}

/** Installs without running any package's scripts: nothing native is needed. */
async function npmInstall(cwd, args) {
  const options = ['install', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error', ...args];
  const ended = await runGroup('npm', options, { cwd, limitMs: NPM_LIMIT_MS });
  if (ended.status !== 0) throw new Error(failed(`npm install in ${cwd}`, ended));
}

async function main(names) {
  const say = (text) => process.stderr.write(`${text}\n`);
  const unknown = names.filter((name) => name !== 'workbench' && !packageNames.includes(name));
  if (unknown.length > 0) {
    say(`Unknown: ${unknown.join(', ')}. Known: ${[...packageNames, 'workbench'].join(', ')}`);
    return 2;
  }
  const wanted = names.length > 0 ? names : [...packageNames, 'workbench'];
  const { message } = await providePackages(
    wanted.filter((name) => name !== 'workbench'),
    say,
  );
  if (message) say(message);
  try {
    if (wanted.includes('workbench')) await provideWorkbench(say);
  } catch (error) {
    say(`The workbench is not installed. ${error.message}`);
    return 1;
  }
  return message ? 1 : 0;
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  void main(process.argv.slice(2)).then((status) => (process.exitCode = status));
}
