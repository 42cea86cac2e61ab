// Source files stay small: lines of at most 120 columns, files of at most 300 lines; what is generated is exempt.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const root = join(__dirname, '../..');
const generated = [
  'server/src/core/checks/all.ts',
  'server/src/language/shapes-valid.js',
  'server/src/language/shapes-valid.d.ts',
];
const longest = 120;
const most = 300;

const sources = ['client/src', 'server/src', 'server/tools'].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.(ts|js|mjs|cjs)$/.test(file))
    .map((file) => `${folder}/${file.replaceAll('\\', '/')}`)
    .filter((file) => !generated.includes(file)),
);

const linesOf = (file: string): string[] => readFileSync(join(root, file), 'utf8').trimEnd().split('\n');

it('has no source line beyond 120 columns', () => {
  const long = sources.flatMap((file) =>
    linesOf(file).flatMap((line, i) => ([...line].length > longest ? [`${file}:${i + 1}`] : [])),
  );
  expect(sources.length).toBeGreaterThan(300);
  expect(long).toEqual([]);
});

it('has no source file beyond 300 lines', () => {
  expect(sources.filter((file) => linesOf(file).length > most)).toEqual([]);
});
