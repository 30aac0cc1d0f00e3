import { defineConfig } from 'vitest/config';

/**
 * The mutation tester wants one flat project: the unit tests of `quantity` and `calc` only. Two walks over the whole catalogue and the fuzzers are left out:
 * they take seconds for each change, and what only they would notice counts as not noticed.
 */
export default defineConfig({
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'], externalConditions: ['source'] } },
  test: {
    include: [`packages/core/src/${process.env.GUDGEON_MUTATION_TESTS ?? '{quantity,calc}'}/**/*.test.ts`],
    exclude: ['**/uncertainty-walk.test.ts', '**/fuzz.test.ts', '**/node_modules/**'],
    testTimeout: 30_000,
  },
});
