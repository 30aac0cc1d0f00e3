import { configDefaults, defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const source = {
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'], externalConditions: ['source'] } },
};

/** The real server as a process of its own, killed again and again. */
const PLUG_PULLED = ['tests/unit/crash.test.ts', 'tests/unit/interrupted-build.test.ts'];

/** Files that take minutes: begun last, each would be waited for alone. */
const LONG = [
  'browser/whole-build-touch',
  'unit/interrupted-build',
  'browser/whole-build-keys',
  'browser/whole-engine',
  'browser/combination',
  'browser/valves',
];

class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification) => {
      const at = LONG.findIndex((name) => moduleId.includes(name));
      return at < 0 ? LONG.length : at;
    };
    return (await super.sort(files)).sort((one, other) => place(one) - place(other));
  }
}

export default defineConfig({
  test: {
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        ...source,
        test: {
          name: 'unit',
          include: ['packages/*/src/**/*.test.ts', 'packages/*/src/**/*.test.tsx', 'tests/unit/**/*.test.ts'],
          exclude: [...configDefaults.exclude, ...PLUG_PULLED],
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
          name: 'plug',
          include: PLUG_PULLED,
          // Starts servers and waits for them: beside the browser tests, which wait as well.
          maxWorkers: 3,
          sequence: { groupOrder: 1 },
          hookTimeout: 120_000,
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
