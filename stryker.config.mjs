/** Mutation tests of the core: `npm run mutation` (scripts/mutation.mjs). The last figures are in docs/mutation.md. */
export default {
  testRunner: 'vitest',
  vitest: { configFile: 'vitest.mutation.config.ts' },
  mutate: ['packages/core/src/**/*.ts', '!packages/core/src/**/*.{test,suite}.ts', '!packages/core/src/**/index.ts'],
  reporters: ['progress-append-only', 'clear-text', 'json'],
  jsonReporter: { fileName: 'reports/mutation.json' },
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false, reportMutants: false },
  concurrency: 2,
  coverageAnalysis: 'perTest',
  ignoreStatic: true,
  // A busy machine must not make a slow test look like an endless loop.
  timeoutMS: 10_000,
};
