/** Bounds that are as tight as they can be: how many options the searches look at. Counted, so no clock is asked. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { every, problems } from './brute.suite.js';
import { type CombineProblem, LoosenSearch, RankSearch, ReachSearch } from './index.js';
import type { Walk } from './walk.js';

const MOST = 1e9;
function stepsOf({ walk }: { readonly walk: Walk }): number {
  return MOST - walk.go(MOST);
}
/** The same ones each time; windows of that width. */
const some = (loose: number): readonly CombineProblem[] => fc.sample(problems(loose), { seed: 1, numRuns: 150 });
const together = (list: readonly CombineProblem[], steps: (problem: CombineProblem) => number): number =>
  list.reduce((sum, problem) => sum + steps(problem), 0);

/** Four cuts of 40 steps that add up, and a window that a hundredth of all sums keep: 2,560,000 combinations. */
const row = Array.from({ length: 40 }, (_, at) => at);
const cuts: CombineProblem = {
  dimensions: ['left deck', 'right deck', 'left head', 'right head'].map((name) => ({ name, size: row.length })),
  requirements: [
    {
      name: 'left',
      base: 0,
      terms: [0, 2].map((at) => ({ of: [at], table: row })),
      low: 60,
      high: 64,
      scale: 2,
      group: 'g',
    },
    {
      name: 'right',
      base: 0,
      terms: [1, 3].map((at) => ({ of: [at], table: row })),
      low: 60,
      high: 64,
      scale: 2,
      group: 'g',
    },
    {
      name: 'alike',
      base: 0,
      terms: [
        { of: [0], table: row },
        { of: [1], table: row.map((n) => -n) },
      ],
      low: -1,
      high: 1,
      scale: 1,
    },
  ],
  goals: [{ name: 'metal', values: [row, row, row, row] }],
  rankings: [
    { name: 'least', by: ['metal', 'worst-margin'] },
    { name: 'margin', by: ['worst-margin', 'all-margins'] },
  ],
  keep: 3,
};
const shut = (problem: CombineProblem): CombineProblem => ({
  ...problem,
  requirements: problem.requirements.map((one) => (one.name === 'alike' ? { ...one, low: 50, high: 60 } : one)),
});

// Figures of our own count, no source: more steps than these mean that a bound has become weaker than it was.
describe('options that a search looks at', () => {
  it('are some thousands for 2,560,000 combinations of four cuts', () => {
    expect(stepsOf(new RankSearch(cuts))).toBeLessThanOrEqual(12_960);
    expect(stepsOf(new LoosenSearch(shut(cuts)))).toBeLessThanOrEqual(7_320);
    expect(stepsOf(new ReachSearch(cuts, 3))).toBeLessThanOrEqual(8_440);
  });

  it('are none where a window alone can never be kept', () => {
    expect(stepsOf(new RankSearch(shut(cuts)))).toBe(0);
    expect(stepsOf(new ReachSearch(shut(cuts), 0))).toBe(0);
  });

  it.each([
    { loose: 0, rank: 682, loosen: 3387, reach: 491 },
    { loose: 1, rank: 769, loosen: 3323, reach: 408 },
    { loose: 3, rank: 1033, loosen: 3275, reach: 568 },
    { loose: 9, rank: 1548, loosen: 3464, reach: 867 },
  ])('are no more than before for 150 problems with windows up to $loose wide', ({ loose, rank, loosen, reach }) => {
    const list = some(loose);
    expect(together(list, (problem) => every(problem).length)).toBe(4982);
    expect(together(list, (problem) => stepsOf(new RankSearch(problem)))).toBeLessThanOrEqual(rank);
    expect(together(list, (problem) => stepsOf(new LoosenSearch(problem)))).toBeLessThanOrEqual(loosen);
    expect(together(list, (problem) => stepsOf(new ReachSearch(problem, 0)))).toBeLessThanOrEqual(reach);
  });
});
