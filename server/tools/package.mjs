// Packs the VS Code extension: builds everything, draws the icon, writes dist/fettle.vsix. Run: npm run package
import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { buildAll, root } from './build.mjs';

const mostBytes = 1_500_000;
const vsix = join(root, 'dist/fettle.vsix');
const vsce = join(dirname(createRequire(import.meta.url).resolve('@vscode/vsce/package.json')), 'vsce');

await buildAll();
const { status } = spawnSync(
  process.execPath,
  [
    vsce,
    'package',
    '--no-dependencies',
    '--allow-missing-repository',
    '--skip-license',
    '--no-rewrite-relative-links',
    '--out',
    vsix,
  ],
  { cwd: root, stdio: 'inherit' },
);
if (status !== 0) process.exit(status ?? 1);
const { size } = statSync(vsix);
if (size > mostBytes) {
  process.stderr.write(`${vsix} holds ${size} bytes; more than ${mostBytes} are too many.\n`);
  process.exitCode = 1;
}
