// A program of ours bundled as it is shipped, aside from the folder `dist`.
import { join } from 'node:path';
import { buildSync } from 'esbuild';

/** Bundles the entry `server/src/NAME.ts` into a file. */
export function bundle(name: string, outfile: string): void {
  buildSync({
    entryPoints: [join(__dirname, `../../server/src/${name}.ts`)],
    bundle: true,
    minify: true,
    platform: 'node',
    target: 'node20',
    format: 'cjs',
    outfile,
    logLevel: 'error',
  });
}
