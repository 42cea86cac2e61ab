// Nothing that a test starts may outlive it: not past its limit, not after `end`, not when the test itself is killed.
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { runGroup, startGroup } from './group.mjs';

const groupModule = new URL('./group.mjs', import.meta.url).href;

/** Starts a grandchild in a session of its own, deaf to polite requests, and writes down its process id. */
const stubborn = `
  const { spawn } = require('node:child_process');
  const child = spawn(process.execPath, ['-e', "process.on('SIGTERM', () => {}); setInterval(() => {}, 1000)"], { detached: true, stdio: 'ignore' });
  require('node:fs').writeFileSync(process.argv[1], String(child.pid));
  setInterval(() => {}, 1000);
`;

let folder: string;
let note: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-group-'));
  note = join(folder, 'pid');
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** What a wait on a busy machine may come to, and a limit so far past it that it is not what ended the group. */
const waitMs = 30_000;
const farLimitMs = 90_000;

async function until(what: string, look: () => boolean): Promise<void> {
  for (const start = Date.now(); Date.now() - start < waitMs; ) {
    if (look()) return;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  throw new Error(`Waited in vain: ${what}`);
}

async function notedPid(): Promise<number> {
  await until('the grandchild starts', () => existsSync(note) && readFileSync(note, 'utf8') !== '');
  return Number(readFileSync(note, 'utf8'));
}

/** A killed process may stay as a zombie until it is reaped; it runs no more. */
function runs(pid: number): boolean {
  try {
    return !/^State:\s+Z/m.test(readFileSync(`/proc/${pid}/status`, 'utf8'));
  } catch {
    return false;
  }
}

describe.skipIf(!existsSync('/proc/self/environ'))('a process group', () => {
  test('hands back status and both outputs', async () => {
    const ended = await runGroup(
      process.execPath,
      ['-e', 'console.log("out"); console.error("err"); process.exit(3)'],
      { limitMs: 30_000 },
    );
    expect(ended.status).toBe(3);
    expect(ended.output).toContain('out\n');
    expect(ended.output).toContain('err\n');
  });

  test('says so when the command is not there', async () => {
    const ended = await runGroup('no-such-program-anywhere', [], { limitMs: 30_000 });
    expect(ended).toEqual({ status: 127, output: expect.stringContaining('no-such-program-anywhere') });
  });

  test('ends whole when asked', async () => {
    const group = startGroup(process.execPath, ['-e', stubborn, note], { limitMs: farLimitMs });
    const pid = await notedPid();
    expect(runs(pid)).toBe(true);
    await group.end();
    await until('the grandchild ends', () => !runs(pid));
  });

  test('removes the scratch folder after a stubborn command has ended', async () => {
    await runGroup(process.execPath, ['-e', stubborn, note], { limitMs: 500, scratch: folder });
    expect(existsSync(folder)).toBe(false);
  });

  test('ends whole at its limit', async () => {
    const running = runGroup(process.execPath, ['-e', stubborn, note], { limitMs: 5_000 });
    const pid = await notedPid();
    expect((await running).status).toBe(124);
    expect(runs(pid)).toBe(false);
  });

  test.each(['SIGINT', 'SIGKILL'] as const)('ends whole when its caller gets %s', async (signal) => {
    const call =
      `import(${JSON.stringify(groupModule)}).then(({ startGroup }) => startGroup(process.execPath, ['-e', ` +
      `${JSON.stringify(stubborn)}, ${JSON.stringify(note)}], { limitMs: ${farLimitMs} }))`;
    const caller = spawn(process.execPath, ['-e', call], { stdio: 'ignore' });
    const pid = await notedPid();
    caller.kill(signal);
    await until('the grandchild ends', () => !runs(pid));
  });
});
