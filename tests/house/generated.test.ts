// What is generated is up to date; the failure prints the command that repairs it.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { expect, it } from 'vitest';

it('is what the generators make', () => {
  const root = join(__dirname, '../..');
  const run = spawnSync(
    process.execPath,
    [join(root, 'node_modules/tsx/dist/cli.mjs'), 'server/tools/generate.ts', '--check'],
    { cwd: root, encoding: 'utf8' },
  );
  expect(run.stdout + run.stderr).toBe('');
  expect(run.status).toBe(0);
}, 60_000);
