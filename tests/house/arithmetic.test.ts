// Sums live in `trade`: what checks still multiply and divide themselves is counted, and may only become less.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const folder = join(__dirname, '../../server/src/core/checks');
/** Scaling of a figure for a sentence or a fix, and a few sums that are not worth a formula of their own. */
const most = 44;

/** Source without comments, strings and templates' words: what is left of operators is arithmetic. */
function bare(source: string): string {
  return source
    .replace(/\/\*[^]*?\*\//g, '')
    .replace(/\/\/.*$/gm, '')
    .replace(/'(?:[^'\\\n]|\\.)*'/g, "''")
    .replace(/"(?:[^"\\\n]|\\.)*"/g, '""')
    .replace(/`(?:[^`\\]|\\.)*`/g, '``');
}

it('finds few products and quotients in checks, and no functions of higher sums', () => {
  const sources = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts') && file.includes('/'))
    .map((file) => bare(readFileSync(join(folder, file), 'utf8')));
  expect(sources.length).toBeGreaterThan(200);
  const found = sources.flatMap((source) => source.match(/[\w)\]] [*/] [\w(]/g) ?? []).length;
  expect(found).toBeGreaterThan(0);
  expect(found).toBeLessThanOrEqual(most);
  expect(sources.flatMap((source) => source.match(/Math\.(?:sqrt|log\w*|pow|exp|hypot|cbrt)\b|\*\*/g) ?? [])).toEqual(
    [],
  );
});
