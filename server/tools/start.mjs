// Shows the command at work on the samples. Findings there are meant to be: only a failed run counts as failure.
import { spawnSync } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const words = process.argv.length > 2 ? process.argv.slice(2) : ['check', 'samples'];
const { status } = spawnSync(process.execPath, [join(root, 'dist/fettle.js'), ...words], {
  cwd: root,
  stdio: 'inherit',
});
process.exitCode = status === 0 || status === 1 ? 0 : (status ?? 2);
