import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/editors/**', 'node_modules/**'],
    // A hang is to be told from a machine that is busy with other work.
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
