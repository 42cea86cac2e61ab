import { defineConfig } from 'vitest/config';

const notHere = ['tests/editors/**', 'node_modules/**'];

/** Units that need no disk, process or editor. */
const fast = ['tests/core/{text,quantity,trade,figures}/**/*.test.ts', 'tests/published/**/*.test.ts'];

/** What replaces a module or a global, changes its process, or measures time: each file in a process of its own. */
const apart = [
  'tests/command/{alone,formats}.test.ts',
  'tests/core/guide/fenced.test.ts',
  'tests/core/yaml/parse.test.ts',
  'tests/host/files.test.ts',
  'tests/house/regexes.test.ts',
  'tests/language/{across,grace,numbers,replay}.test.ts',
  'tests/promises/{long-texts,many,nasty,speed}.test.ts',
  'tests/tools/**/*.test.ts',
];

/** No module keeps state: files share a process, which loads the engine once. */
const together = { isolate: false, maxWorkers: '100%' };

export default defineConfig({
  test: {
    // A hang is to be told from a machine that is busy with other work.
    testTimeout: 60_000,
    hookTimeout: 60_000,
    setupFiles: ['tests/support/seed.ts'],
    projects: [
      { extends: true, test: { name: 'fast', include: fast, exclude: notHere, ...together } },
      {
        extends: true,
        test: {
          name: 'together',
          include: ['tests/**/*.test.ts'],
          exclude: [...notHere, ...fast, ...apart],
          ...together,
        },
      },
      {
        extends: true,
        test: { name: 'apart', include: apart, exclude: notHere, maxWorkers: 1, sequence: { groupOrder: 1 } },
      },
    ],
  },
});
