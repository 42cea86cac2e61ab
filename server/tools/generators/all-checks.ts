// The list of all checks, from the folders they stand in.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Generator } from './index';

const folder = 'server/src/core/checks';

/**
 * Check files are named by their id, which is of several words; what several checks share ends in `-kit`.
 * @throws Error on a file that is neither, since a check must never be left out in silence.
 */
export function checkFiles(root: string): { area: string; id: string }[] {
  const areas = readdirSync(join(root, folder), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort();
  return areas.flatMap((area) =>
    readdirSync(join(root, folder, area))
      .sort()
      .filter((file) => file.endsWith('.ts') && !file.endsWith('-kit.ts'))
      .map((file) => ({ area, id: idOf(`${area}/${file}`) })),
  );
}

/** @throws Error where the name is no id of several words. */
export function idOf(path: string): string {
  const id = path.slice(path.indexOf('/') + 1, -'.ts'.length);
  if (/^[a-z0-9.]+(-[a-z0-9.]+)+$/.test(id)) return id;
  throw new Error(
    `${folder}/${path}: a check’s id is words joined by hyphens, thing then fault; what checks share is ` +
      'named …-kit.ts.',
  );
}

export const allChecks: Generator = {
  make() {
    const files = checkFiles(join(__dirname, '../../..'));
    const name = (id: string): string => id.replace(/[-.](\w)/g, (_, letter: string) => letter.toUpperCase());
    const lines = [
      '// All checks. Generated from the folders beside this file by `npm run generate`; do not edit.',
      "import type { Check } from './check';",
      ...files.map(({ area, id }) => `import ${name(id)} from './${area}/${id}';`),
      '',
      'export const checks: readonly Check[] = [',
      ...files.map(({ id }) => `  ${name(id)},`),
      '];',
      '',
    ];
    return new Map([[`${folder}/all.ts`, lines.join('\n')]]);
  },
};
