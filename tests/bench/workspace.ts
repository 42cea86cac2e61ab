// Makes a large workspace from the samples: each build and part a little different, all of them plausible.
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const samples = join(__dirname, '../../samples');

/** How many builds stand in one folder. */
const inFolder = 250;

/**
 * A folder with so many builds and parts; every part is used by some build, and `shared` of them use one and the same
 * case.
 */
export function makeWorkspace(builds: number, parts: number, shared = 0): string {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-bench-'));
  const known = readdirSync(join(samples, 'parts'), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.part.yaml'))
    .map((name) => name.replaceAll('\\', '/').replace('.part.yaml', ''))
    .sort();
  const texts = new Map(known.map((name) => [name, readFileSync(join(samples, 'parts', `${name}.part.yaml`), 'utf8')]));
  const copies = Math.max(1, Math.ceil(parts / known.length));
  let made = 0;
  for (let copy = 0; copy < copies && made < parts; copy++) {
    for (const name of known) {
      if (made++ >= parts) break;
      const [maker, model] = name.split('/') as [string, string];
      mkdirSync(join(folder, `parts/${maker}-${copy}`), { recursive: true });
      writeFileSync(join(folder, `parts/${maker}-${copy}/${model}.part.yaml`), `# copy ${copy}\n${texts.get(name)!}`);
    }
  }
  const desks = readdirSync(samples)
    .filter((name) => name.endsWith('.pcbuild.yaml'))
    .sort()
    .map((name) => readFileSync(join(samples, name), 'utf8'));
  for (let i = 0; i < builds; i++) {
    const at = join(folder, `builds/${Math.floor(i / inFolder)}`);
    mkdirSync(at, { recursive: true });
    const copy = Math.floor(i / desks.length) % copies;
    const renamed = desks[i % desks.length]!.replace(
      /(use: |cables: )([a-z]+)\//g,
      (_, key: string, maker: string) => `${key}${maker}-${copy}/`,
    ).replace(/^build: (.*)$/m, `build: $1 ${i}`);
    const text = i < shared ? renamed.replace(/^ {2}case:.*$/m, '  case: { use: tarn-0/mid-3 }') : renamed;
    writeFileSync(join(at, `b${i}.pcbuild.yaml`), text);
  }
  writeFileSync(join(folder, 'fettle.yaml'), readFileSync(join(samples, 'fettle.yaml')));
  return folder;
}
