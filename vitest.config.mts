import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/editors/**', 'node_modules/**'],
    testTimeout: 20_000,
  },
});
