import { defineConfig } from 'vitest/config';

const source = {
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'], externalConditions: ['source'] } },
};

export default defineConfig({
  test: {
    projects: [
      {
        ...source,
        test: {
          name: 'unit',
          include: ['packages/*/src/**/*.test.ts', 'packages/*/src/**/*.test.tsx', 'tests/unit/**/*.test.ts'],
          // Every test makes what it changes, so a worker need not load each module anew for each file: half of the work was that.
          pool: 'threads',
          isolate: false,
          maxWorkers: '100%',
          testTimeout: 30_000,
        },
      },
      {
        ...source,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          // A browser test waits more than it works; after the unit tests three run beside each other on two cores.
          maxWorkers: 3,
          sequence: { groupOrder: 1 },
          testTimeout: 180_000,
          hookTimeout: 120_000,
        },
      },
    ],
    coverage: {
      provider: 'v8',
      include: ['packages/core/src/**/*.ts'],
      exclude: ['**/*.test.ts', '**/*.suite.ts'],
      reporter: ['text-summary', 'json-summary'],
    },
  },
});
