// Runs a general-purpose reference program and hands back what it prints, so that a test can hold our sums against it.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, isAbsolute, join } from 'node:path';
import { it } from 'vitest';

/** Places where system programs live although an ordinary user's PATH leaves them out. */
const SYSTEM_FOLDERS = ['/usr/bin', '/usr/sbin', '/bin', '/sbin'];

/** One run of an oracle: its exit status and both of its outputs, as text. */
export interface OracleRun {
  status: number;
  stdout: string;
  stderr: string;
}

/** The absolute path of a program found by name on PATH or among the system folders; undefined when absent. */
export function oraclePath(program: string): string | undefined {
  const folders = [...(process.env.PATH ?? '').split(delimiter), ...SYSTEM_FOLDERS];
  return folders
    .filter(isAbsolute)
    .map((folder) => join(folder, program))
    .find(isProgram);
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/**
 * Runs a program by its absolute path, in the C locale, with `input` on its standard input.
 * Throws when the program is absent, cannot be started, was ended by a signal or ran over 20 s;
 * an exit status other than 0 is an answer, not an error.
 */
export function runOracle(program: string, args: readonly string[], input: string | Uint8Array = ''): OracleRun {
  const path = oraclePath(program);
  if (path === undefined) throw new Error(`oracle program '${program}' is not installed`);
  const run = spawnSync(path, [...args], {
    input,
    encoding: 'utf8',
    env: { ...process.env, LC_ALL: 'C', TZ: 'UTC' },
    maxBuffer: 64 * 1024 * 1024,
    timeout: 45_000,
  });
  if (run.error) throw run.error;
  if (run.status === null) throw new Error(`oracle program '${program}' was ended by ${run.signal}`);
  return { status: run.status, stdout: run.stdout, stderr: run.stderr };
}

/**
 * A test that needs a reference program. Absent, the test is skipped and its title says why;
 * with CI set in the environment it fails instead, so that nothing is silently unproven there.
 */
export function itWithOracle(
  program: string,
  title: string,
  test: () => void | Promise<void>,
  timeoutMs = 60_000,
): void {
  if (oraclePath(program) !== undefined) {
    it(title, test, timeoutMs);
  } else if (process.env.CI) {
    it(title, () => {
      throw new Error(`oracle program '${program}' is not installed, and CI is set: install it`);
    });
  } else {
    it.skip(`${title} (skipped: '${program}' is not installed)`, test);
  }
}
