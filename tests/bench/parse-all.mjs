// The floor for a whole workspace: reads every YAML file below a folder and parses it once, and does nothing else.
import { createRequire } from 'node:module';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const { parseDocument } = createRequire(import.meta.url)('yaml');
const folder = process.argv[2];
for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
  if (name.endsWith('.yaml')) parseDocument(readFileSync(join(folder, name), 'utf8'));
}
