// Bundles the measuring as the product is bundled, and runs it: a loader that compiles file by file names every
// function
// anew, which takes longer than what is measured. Run: npm run bench [quick]
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const here = fileURLToPath(new URL('.', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'fettle-bench-'));
const outfile = join(folder, 'run.cjs');
try {
  await build({
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'cjs',
    logLevel: 'warning',
    entryPoints: [join(here, 'run.ts')],
    outfile,
    define: { __dirname: JSON.stringify(here.replace(/[\\/]$/, '')) },
  });
  process.exitCode = spawnSync(process.execPath, [outfile, ...process.argv.slice(2)], { stdio: 'inherit' }).status ?? 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
