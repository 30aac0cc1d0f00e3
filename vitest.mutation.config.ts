import { defineConfig } from 'vitest/config';

/** The mutation tester wants one flat project: the core's unit tests only. */
export default defineConfig({
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'], externalConditions: ['source'] } },
  test: { include: ['packages/core/src/**/*.test.ts'], testTimeout: 30_000 },
});
