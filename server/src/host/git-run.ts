// Runs git, and nothing through git: an absolute path outside the workspace, no shell, an environment of its own, and
// every way by which a repository could have something run, fetched or replaced switched off on the command line.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, lstatSync, realpathSync, statSync } from 'node:fs';
import { delimiter, dirname, isAbsolute, join } from 'node:path';
import type { ReadError } from './host';
import { isBelow } from './node-folder';

/** So long may one call take; so much may it write. */
const longestMs = 60_000;
const mostBytes = 512_000_000;

type Env = Readonly<Record<string, string | undefined>>;

/** What the command line says stands before what any configuration file says. */
const settings = [
  'core.fsmonitor=false',
  'core.hooksPath=/dev/null',
  'core.pager=cat',
  'core.askPass=',
  'core.sshCommand=false',
  'core.alternateRefsCommand=false',
  'core.commitGraph=false',
  'credential.helper=',
  'diff.external=',
  'log.showSignature=false',
  'protocol.allow=never',
  'safe.bareRepository=explicit',
].flatMap((setting) => ['-c', setting]);

const always = ['--no-pager', '--no-replace-objects', '--no-optional-locks', '--literal-pathspecs', ...settings];

export interface Git {
  /** Runs one of git’s own commands in the folder; what it wrote, or why there is nothing. */
  readonly run: (words: readonly string[], input?: string) => Buffer | ReadError;
}

/** Git for a folder; a trouble where none is found outside the workspace. */
export function gitFor(folder: string, env: Env): Git | ReadError {
  const bounds = workspaceOf(folder);
  const program = findGit(bounds, env);
  if (!program)
    return { trouble: 'needs git, and none is found on the PATH outside the workspace; name two folders instead.' };
  const own = ownEnvironment(bounds, env);
  return { run: (words, input = '') => runGit(program, folder, own, words, input) };
}

/** The real folder, and the outermost repository that it lies in. */
function workspaceOf(folder: string): readonly string[] {
  const here = realpathSync.native(folder);
  const bounds = [here];
  for (let at = here; at !== dirname(at); at = dirname(at))
    if (lstatSync(join(at, '.git'), { throwIfNoEntry: false })) bounds.push(at);
  return bounds;
}

/** The first program named git on the PATH; neither its entry nor where it leads lies in the workspace. */
function findGit(bounds: readonly string[], { PATH = '' }: Env): string | undefined {
  const name = process.platform === 'win32' ? 'git.exe' : 'git';
  for (const folder of PATH.split(delimiter)) {
    if (!isAbsolute(folder)) continue;
    const program = programAt(join(folder, name));
    if (program && ![program, folder, realOf(folder)].some((path) => isWithin(path, bounds))) return program;
  }
  return undefined;
}

const isWithin = (path: string, bounds: readonly string[]): boolean => bounds.some((bound) => isBelow(path, bound));

function programAt(path: string): string | undefined {
  try {
    const real = realpathSync.native(path);
    accessSync(real, constants.X_OK);
    return statSync(real).isFile() ? real : undefined;
  } catch {
    return undefined;
  }
}

function realOf(path: string): string {
  try {
    return realpathSync.native(path);
  } catch {
    return path;
  }
}

/**
 * Nothing is handed on but where the user’s own settings lie, which say whose repositories are trusted; not even that
 * where it lies in the workspace.
 */
function ownEnvironment(bounds: readonly string[], env: Env): Record<string, string> {
  const kept = ['HOME', 'XDG_CONFIG_HOME', 'USERPROFILE', 'SYSTEMROOT'].flatMap((key) => {
    const value = env[key];
    return value && isAbsolute(value) && !isWithin(realOf(value), bounds) ? [[key, value] as const] : [];
  });
  return {
    ...Object.fromEntries(kept),
    ...(kept.some(([key]) => key === 'HOME' || key === 'USERPROFILE') ? {} : { GIT_CONFIG_GLOBAL: '/dev/null' }),
    LC_ALL: 'C',
    GIT_CONFIG_NOSYSTEM: '1',
    GIT_ATTR_NOSYSTEM: '1',
    GIT_OPTIONAL_LOCKS: '0',
    GIT_NO_LAZY_FETCH: '1',
    GIT_NO_REPLACE_OBJECTS: '1',
    GIT_TERMINAL_PROMPT: '0',
    GIT_PROTOCOL_FROM_USER: '0',
    // Stands before `protocol.*` of any configuration: no way of fetching goes by this name.
    GIT_ALLOW_PROTOCOL: 'none',
  };
}

function runGit(
  program: string,
  cwd: string,
  env: Record<string, string>,
  words: readonly string[],
  input: string,
): Buffer | ReadError {
  const { stdout, stderr, status, error } = spawnSync(program, [...always, ...words], {
    cwd,
    env,
    input,
    timeout: longestMs,
    killSignal: 'SIGKILL',
    maxBuffer: mostBytes,
    windowsHide: true,
    shell: false,
  });
  if (error) return { trouble: failure((error as NodeJS.ErrnoException).code) };
  return status === 0 ? stdout : { trouble: refusal(stderr.toString('utf8')) };
}

function failure(code: string | undefined): string {
  if (code === 'ETIMEDOUT') return `is not read: git took longer than ${longestMs / 1000} s.`;
  if (code === 'ENOBUFS') return 'is not read: it holds more than is read of one revision.';
  return `is not read: git cannot be run (${code ?? 'no reason given'}).`;
}

/** Git’s own refusals that a user can do something about, in our words. */
function refusal(said: string): string {
  if (said.includes('dubious ownership'))
    return 'is not read: the repository belongs to somebody else; git’s safe.directory says whom you trust.';
  if (/not a git repository|must be run in a work tree|cannot use bare repository/i.test(said))
    return 'is not read: this folder lies in no git repository; name two folders instead.';
  return `is not read: git says “${said.trim().split('\n')[0]?.slice(0, 200) ?? ''}”.`;
}
