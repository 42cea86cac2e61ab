// The list of all checks, from the folders they stand in.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Generator } from './index';

const folder = 'server/src/core/checks';

/** Check files are named by their id; files that several checks share are named by one word, or end in `-kit`. */
export function checkFiles(root: string): { area: string; id: string }[] {
  const areas = readdirSync(join(root, folder), { withFileTypes: true }).filter((entry) => entry.isDirectory()).map((entry) => entry.name).sort();
  return areas.flatMap((area) => readdirSync(join(root, folder, area)).sort()
    .filter((file) => file.endsWith('.ts') && file.includes('-') && !file.endsWith('-kit.ts'))
    .map((file) => ({ area, id: file.slice(0, -3) })));
}

export const allChecks: Generator = {
  make() {
    const files = checkFiles(join(__dirname, '../../..'));
    const name = (id: string): string => id.replace(/[-.](\w)/g, (_, letter: string) => letter.toUpperCase());
    const lines = [
      '// All checks. Generated from the folders beside this file by `npm run generate`; do not edit.',
      "import type { Check } from './check';",
      ...files.map(({ area, id }) => `import ${name(id)} from './${area}/${id}';`),
      '', 'export const checks: readonly Check[] = [', ...files.map(({ id }) => `  ${name(id)},`), '];', '',
    ];
    return new Map([[`${folder}/all.ts`, lines.join('\n')]]);
  },
};
