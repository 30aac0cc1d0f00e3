/** Every combination of a small problem, one after the other: what the search must agree with. */
import fc from 'fast-check';
import { everyChoice } from '../every-way.suite.js';
import { type Combined, type CombineProblem, combinedOf, groupsOf, keepsAll, type Relaxation, SAME } from './index.js';

export const every = (problem: CombineProblem): readonly Combined[] =>
  [...everyChoice(problem.dimensions.map(({ size }) => size))].map((options) => combinedOf(problem, options));

const millionths = (share: number) => Math.round(share * 1e6);
const firstUnlike = (one: readonly number[], other: readonly number[]): number =>
  one.map((value, at) => value - other[at]!).find((difference) => difference !== 0) ?? 0;

/** Best of a ranking by sorting all that keep. */
export function bestByHand(problem: CombineProblem, ranking: number): readonly number[] {
  const { by } = problem.rankings[ranking]!;
  const moved = problem.requirements.map(({ terms }) => terms.some(({ table }) => new Set(Array.from(table)).size > 1));
  const keysOf = ({ margins, goals, index }: Combined) => [
    ...by.map((key) => {
      const counted = margins.filter((_, at) => moved[at]).map((one) => Math.min(1, one));
      if (key === 'worst-margin') return -millionths(Math.min(1, ...counted));
      if (key === 'all-margins') return -millionths(counted.reduce((sum, one) => sum + one, 0));
      return goals[problem.goals.findIndex(({ name }) => name === key)]!;
    }),
    index,
  ];
  return every(problem)
    .filter(keepsAll)
    .toSorted((a, b) => firstUnlike(keysOf(a), keysOf(b)))
    .slice(0, problem.keep)
    .map(({ index }) => index);
}

/** Fewest groups broken, then the least sum of shares, then the first; among combinations that `may` be taken. */
export function leastBroken(problem: CombineProblem, may: (broken: readonly number[]) => boolean) {
  const groupOf = groupsOf(problem);
  const found = every(problem).flatMap(({ margins, index }) => {
    const by = new Map<number, number>();
    for (const [at, margin] of margins.entries())
      if (margin < -SAME) by.set(groupOf[at]!, Math.max(by.get(groupOf[at]!) ?? 0, -margin));
    const broken = [...by.keys()].toSorted((x, y) => x - y);
    if (!may(broken) || margins.some((margin) => margin <= -1000)) return [];
    return [{ broken, share: millionths(broken.reduce((sum, group) => sum + by.get(group)!, 0)), index }];
  });
  return found.toSorted((a, b) => a.broken.length - b.broken.length || a.share - b.share || a.index - b.index)[0];
}
export const summary = (problem: CombineProblem, relaxation: Relaxation | undefined) =>
  relaxation && {
    broken: [...new Set(relaxation.loosened.map(({ requirement }) => groupsOf(problem)[requirement]!))].toSorted(
      (a, b) => a - b,
    ),
    share: millionths(relaxation.share),
    index: relaxation.combined.index,
  };

const tenths = (most: number) => fc.integer({ min: -10 * most, max: 10 * most }).map((n) => n / 10);

/** Small random problems in tenths, so that figures often lie on their limits; `loose` makes most of them solvable. */
export const problems = (loose: number): fc.Arbitrary<CombineProblem> =>
  fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 1, maxLength: 5 }).chain((sizes) => {
    const table = (of: readonly number[]) => {
      const length = of.reduce((product, at) => product * sizes[at]!, 1);
      return fc.array(tenths(2), { minLength: length, maxLength: length }).map((values) => ({ of, table: values }));
    };
    const scope = fc.uniqueArray(fc.nat({ max: sizes.length - 1 }), { minLength: 1, maxLength: 2 });
    const requirement = fc
      .record({
        base: tenths(1),
        terms: fc.array(scope.chain(table), { maxLength: 4 }),
        low: fc.option(tenths(2), { nil: undefined }),
        width: fc.option(
          fc.nat({ max: 10 * loose }).map((n) => n / 10),
          { nil: undefined },
        ),
        kind: fc.constantFrom('plain', 'falling', 'rising'),
        scale: fc.constantFrom(0.5, 1, 0.1),
        group: fc.constantFrom(undefined, undefined, 'some', 'others'),
      })
      .map(({ base, terms, low, width, kind, scale, group }) => ({
        name: 'figure',
        base: kind === 'plain' ? base : base + 2,
        terms,
        ...(kind === 'falling' && {
          shown: { of: (x: number) => (x > 0 ? 1 + 2 / x : Number.POSITIVE_INFINITY), falling: true },
        }),
        ...(kind === 'rising' && { shown: { of: (x: number) => x ** 3, falling: false } }),
        ...(low !== undefined && { low }),
        ...(width !== undefined && { high: (low ?? 0) + width }),
        scale,
        ...(group !== undefined && { group }),
      }));
    return fc
      .record({
        requirements: fc.array(requirement, { minLength: 1, maxLength: 5 }),
        goals: fc.array(
          fc.tuple(...sizes.map((size) => fc.array(fc.nat({ max: 4 }), { minLength: size, maxLength: size }))),
          { minLength: 2, maxLength: 2 },
        ),
        keep: fc.integer({ min: 1, max: 4 }),
      })
      .map(({ requirements, goals, keep }) => ({
        dimensions: sizes.map((size, at) => ({ name: `choice ${at}`, size })),
        requirements,
        goals: goals.map((values, at) => ({ name: `goal ${at}`, values })),
        rankings: [
          { name: 'first', by: ['goal 0', 'goal 1', 'worst-margin'] },
          { name: 'second', by: ['goal 1', 'all-margins'] },
          { name: 'margin', by: ['worst-margin', 'all-margins', 'goal 0'] },
          { name: 'any', by: [] },
        ],
        keep,
      }));
  });
