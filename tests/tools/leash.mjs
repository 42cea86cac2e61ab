// Runs one command in a process group of its own and ends all of it when its caller goes away, however that happens.
// Usage: node leash.mjs LIMIT_MS SCRATCH COMMAND [ARGUMENT…]. Standard input is the leash: when it closes, everything
// ends.
// SCRATCH is a folder to remove once nothing runs that could write into it again, or empty.
// Status: the command's own; 124 past the limit; 125 when the leash was let go; 127 when it could not start.
import { spawn } from 'node:child_process';
import { readFileSync, readdirSync, rmSync } from 'node:fs';
import { constants } from 'node:os';

const GRACE_MS = 1_500;
const [limitMs, scratch, command, ...args] = process.argv.slice(2);
const mark = `FETTLE_LEASH=${process.pid}`;

/**
 * Processes that inherited our mark. Editors start language servers in sessions of their own, which a signal
 * to the group does not reach. Without /proc the list is empty and the group is all there is to go by.
 */
function marked() {
  try {
    return readdirSync('/proc')
      .filter((name) => /^\d+$/.test(name) && carriesMark(name))
      .map(Number);
  } catch {
    return [];
  }
}

function carriesMark(pid) {
  try {
    return readFileSync(`/proc/${pid}/environ`, 'utf8').split('\0').includes(mark);
  } catch {
    return false; // another user's, or gone already
  }
}

function signal(pid, name) {
  try {
    process.kill(pid, name);
  } catch {
    // gone already
  }
}

const pause = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

let ending = false;

/** Asks everything to end, waits a moment, then makes it end, and leaves with `status`. */
async function end(status) {
  if (ending) return;
  ending = true;
  signal(-process.pid, 'SIGTERM');
  for (const pid of marked()) signal(pid, 'SIGTERM');
  for (let waitedMs = 0; waitedMs < GRACE_MS && marked().length > 0; waitedMs += 25) await pause(25);
  for (const pid of marked()) signal(pid, 'SIGKILL');
  if (scratch) rmSync(scratch, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  process.exit(status);
}

for (const name of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(name, () => void end(125));
process.stdin
  .on('end', () => void end(125))
  .on('error', () => void end(125))
  .resume();
setTimeout(() => void end(124), Number(limitMs));

const child = spawn(command, args, {
  stdio: ['ignore', 'inherit', 'inherit'],
  env: { ...process.env, FETTLE_LEASH: String(process.pid) },
});
child.on('error', (error) => {
  process.stderr.write(`${command}: ${error.message}\n`);
  void end(127);
});
child.on('exit', (code, name) => void end(code ?? 128 + constants.signals[name]));
