// Starts commands in process groups of their own and sees to it that none outlives its caller.
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const leash = fileURLToPath(new URL('./leash.mjs', import.meta.url));
const KEPT_CHARACTERS = 200_000;

/**
 * Starts `command` in its own process group. It ends when `end()` is called, when `limitMs` have passed, or when this
 * process goes away for any reason, a kill included: the leash it runs under notices the closed pipe. The folder
 * `scratch`, where given, is removed afterwards.
 *
 * @param {string} command
 * @param {string[]} args
 * @param {{ limitMs: number, scratch?: string, cwd?: string, env?: NodeJS.ProcessEnv }} options
 * @returns {import('./group.d.mts').Group}
 */
export function startGroup(command, args, { limitMs, scratch = '', cwd, env }) {
  const child = spawn(process.execPath, [leash, String(limitMs), scratch, command, ...args], {
    cwd,
    env,
    detached: true,
    stdio: ['pipe', 'pipe', 'pipe'],
  });
  let output = '';
  const keep = (chunk) => {
    output = (output + chunk).slice(-KEPT_CHARACTERS);
  };
  child.stdout.setEncoding('utf8').on('data', keep);
  child.stderr.setEncoding('utf8').on('data', keep);
  child.stdin.on('error', () => undefined); // the leash may be gone before us
  const ended = new Promise((resolve) => {
    child.on('error', (error) => resolve({ status: 127, output: `${output}${error.message}\n` }));
    child.on('close', (code) => resolve({ status: code ?? 125, output }));
  });
  return {
    ended,
    output: () => output,
    end: async () => {
      child.stdin.end();
      await ended;
    },
  };
}

/**
 * Runs `command` to its end.
 *
 * @param {string} command
 * @param {string[]} args
 * @param {{ limitMs: number, scratch?: string, cwd?: string, env?: NodeJS.ProcessEnv }} options
 * @returns {Promise<import('./group.d.mts').Ended>}
 */
export function runGroup(command, args, options) {
  return startGroup(command, args, options).ended;
}
