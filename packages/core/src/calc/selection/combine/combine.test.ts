import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestByHand, every, leastBroken, problems, summary } from './brute.suite.js';
import {
  type CombineProblem,
  describeCombineFault,
  faultOf,
  groupsOf,
  keepsAll,
  LoosenSearch,
  RankSearch,
  ReachSearch,
  SAME,
} from './index.js';

const RUNS = 1000;
const ranked = (problem: CombineProblem, budget = 1e9) => {
  const search = new RankSearch(problem);
  while (search.walk.go(budget) <= 0) expect(search.walk.progress).toBeLessThanOrEqual(1);
  expect(search.walk.progress).toBe(1);
  return { count: search.count, best: search.best.map((list) => list.map(({ index }) => index)) };
};
const loosened = (problem: CombineProblem) => {
  const search = new LoosenSearch(problem);
  search.walk.go(1e9);
  return search;
};

describe('combinations that keep every requirement', () => {
  it.each([1, 3, 9])('are counted and ranked as by trying every one (windows up to %d wide)', (loose) => {
    fc.assert(
      fc.property(problems(loose), (problem) => {
        expect(faultOf(problem)).toBeUndefined();
        const found = ranked(problem);
        expect(found.count).toBe(every(problem).filter(keepsAll).length);
        expect(found.best).toEqual(problem.rankings.map((_, at) => bestByHand(problem, at)));
      }),
      { numRuns: RUNS },
    );
  });

  it('are the same however often the search is interrupted', () => {
    fc.assert(
      fc.property(problems(3), fc.integer({ min: 1, max: 7 }), (problem, budget) => {
        expect(ranked(problem, budget)).toEqual(ranked(problem));
      }),
      { numRuns: 300 },
    );
  });

  it('are not fewer, and the best is no worse, with one option more', () => {
    fc.assert(
      fc.property(problems(4), (problem) => {
        const [size = 0] = problem.dimensions.map(({ size: own }) => own);
        if (size < 2) return;
        const fewer = withoutLast(problem);
        const [all, some] = [new RankSearch(problem), new RankSearch(fewer)];
        all.walk.go(1e9);
        some.walk.go(1e9);
        expect(all.count).toBeGreaterThanOrEqual(some.count);
        const goal = (search: RankSearch) => search.best[0]![0]?.goals[0] ?? Number.POSITIVE_INFINITY;
        expect(goal(all)).toBeLessThanOrEqual(goal(some));
      }),
      { numRuns: 500 },
    );
  });
});

/** The same problem without the last option of its first dimension. */
function withoutLast(problem: CombineProblem): CombineProblem {
  const size = problem.dimensions[0]!.size;
  const cut = (of: readonly number[], table: ArrayLike<number>) => {
    const at = of.indexOf(0);
    if (at < 0) return Array.from(table);
    const after = of.slice(at + 1).reduce((product, one) => product * problem.dimensions[one]!.size, 1);
    return Array.from(table).filter((_, place) => Math.floor(place / after) % size !== size - 1);
  };
  return {
    ...problem,
    dimensions: problem.dimensions.map((one, at) => (at === 0 ? { ...one, size: size - 1 } : one)),
    requirements: problem.requirements.map((one) => ({
      ...one,
      terms: one.terms.map(({ of, table }) => ({ of, table: cut(of, table) })),
    })),
    goals: problem.goals.map(({ name, values }) => ({
      name,
      values: values.map((own, at) => (at === 0 ? own.slice(0, -1) : own)),
    })),
  };
}

describe('what must give way when nothing fits', () => {
  it.each([0, 1, 3])('is the least that any combination asks for (windows up to %d wide)', (loose) => {
    fc.assert(
      fc.property(problems(loose), (problem) => {
        const search = loosened(problem);
        const feasible = every(problem).some(keepsAll);
        if (feasible) return;
        expect(summary(problem, search.together)).toEqual(leastBroken(problem, () => true));
        expect(search.alone.map((one) => summary(problem, one))).toEqual(
          [...new Set(groupsOf(problem))].map((group) =>
            leastBroken(problem, (broken) => broken.length === 1 && broken[0] === group),
          ),
        );
      }),
      { numRuns: RUNS },
    );
  });

  it('lets the combination through once it is given, and not before', () => {
    fc.assert(
      fc.property(problems(1), (problem) => {
        const relaxed = loosened(problem).together;
        if (relaxed === undefined || relaxed.loosened.length === 0) return;
        const { figures, margins } = relaxed.combined;
        const eased = (share: number): CombineProblem => ({
          ...problem,
          requirements: problem.requirements.map((one, at) => {
            if (margins[at]! >= -SAME) return one;
            const end = one.low !== undefined && figures[at]! < one.low ? 'low' : 'high';
            return { ...one, [end]: figures[at]! + (1 - share) * (one[end]! - figures[at]!) };
          }),
        });
        expect(ranked(eased(1)).count).toBeGreaterThan(0);
        expect(ranked(eased(0.99)).count).toBe(0);
      }),
      { numRuns: 500 },
    );
  });
});

describe('options that lead to a combination', () => {
  it('are all found, and no others', () => {
    fc.assert(
      fc.property(problems(3), fc.nat(), (problem, pick) => {
        const dimension = pick % problem.dimensions.length;
        const search = new ReachSearch(problem, dimension);
        search.walk.go(1e9);
        const kept = every(problem).filter(keepsAll);
        expect(Array.from(search.serves)).toEqual(
          Array.from(search.serves, (_, option) => Number(kept.some(({ options }) => options[dimension] === option))),
        );
      }),
      { numRuns: RUNS },
    );
  });
});

describe('a problem that cannot be searched', () => {
  const good: CombineProblem = {
    dimensions: [{ name: 'gasket', size: 2 }],
    requirements: [{ name: 'quench', base: 0, terms: [{ of: [0], table: [1, 2] }], low: 0, high: 1, scale: 1 }],
    goals: [{ name: 'cost', values: [[0, 1]] }],
    rankings: [{ name: 'cheap', by: ['cost'] }],
    keep: 1,
  };
  const [quench] = good.requirements;
  it.each<[string, Partial<CombineProblem>, string]>([
    ['nothing to choose', { dimensions: [] }, 'there is nothing to choose: name at least one thing'],
    ['an empty list', { dimensions: [{ name: 'gasket', size: 0 }] }, 'gasket: there is nothing to choose from'],
    ['no number', { requirements: [{ ...quench!, base: Number.NaN }] }, 'quench: a value is not a number'],
    [
      'no number in a list',
      { requirements: [{ ...quench!, terms: [{ of: [0], table: [1, Number.NaN] }] }] },
      'quench: gasket: a value is not a number',
    ],
    [
      'a list too short',
      { requirements: [{ ...quench!, terms: [{ of: [0], table: [1] }] }] },
      'quench: gasket: 1 values; 2 are needed',
    ],
    [
      'a window upside down',
      { requirements: [{ ...quench!, low: 2 }] },
      'quench: the lower end 2 is above the upper end 1',
    ],
    ['no scale', { requirements: [{ ...quench!, scale: 0 }] }, 'quench: what counts as one share of margin'],
    ['part of a goal', { goals: [{ name: 'cost', values: [[0, 0.5]] }] }, 'cost: gasket: goals are counted in whole'],
    ['a short goal', { goals: [{ name: 'cost', values: [[0]] }] }, 'cost: gasket: 1 values; 2 are needed'],
    ['an unknown goal', { rankings: [{ name: 'cheap', by: ['weight'] }] }, 'cheap: weight is no goal'],
    ['half a combination kept', { keep: 0.5 }, 'combinations kept: 0.5'],
    [
      'more than can be counted',
      { dimensions: Array.from({ length: 16 }, (_, at) => ({ name: `${at}`, size: 10 })) },
      'are more than can be counted exactly',
    ],
  ])('is refused by name: %s', (_, change, words) => {
    expect(faultOf(good)).toBeUndefined();
    const fault = faultOf({ ...good, ...change });
    expect(fault && describeCombineFault(fault)).toContain(words);
  });
});
