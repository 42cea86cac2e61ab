// Writes what is generated from the sources; with --check compares instead, and says how to repair.
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { first, others, type Generator } from './generators';

const root = join(__dirname, '../..');
const checking = process.argv.includes('--check');
const stale: string[] = [];

function read(path: string): string | undefined {
  try {
    return readFileSync(join(root, path), 'utf8');
  } catch {
    return undefined;
  }
}

/** Files of an owned folder that no generator makes any more. */
function leftOver(folder: string, made: ReadonlySet<string>): string[] {
  try {
    return readdirSync(join(root, folder))
      .map((file) => `${folder}/${file}`)
      .filter((path) => !made.has(path));
  } catch {
    return [];
  }
}

async function run(generators: readonly Generator[]): Promise<void> {
  for (const generator of generators) {
    const files = await generator.make(read);
    for (const [path, text] of files) {
      if (read(path) === text) continue;
      stale.push(path);
      if (checking) continue;
      mkdirSync(dirname(join(root, path)), { recursive: true });
      writeFileSync(join(root, path), text);
    }
    for (const path of generator.owns ? leftOver(generator.owns, new Set(files.keys())) : []) {
      stale.push(path);
      if (!checking) rmSync(join(root, path));
    }
  }
}

async function main(): Promise<void> {
  await run(first);
  await run(await others());
  if (stale.length === 0) return;
  console.log(`${checking ? 'Not up to date' : 'Written'}:\n  ${stale.join('\n  ')}`);
  if (checking) {
    console.log('Run: npm run generate');
    process.exitCode = 1;
  }
}

void main();
