// The tests that mutation runs use: those of the trade's sums and of quantities, without outside programs and without
// properties over drawn texts, which are slow and would not give a mutant the same fate twice.
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/core/trade/**/*.test.ts', 'tests/core/quantity/**/*.test.ts'],
    exclude: ['tests/core/quantity/properties.test.ts'],
  },
});
