import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { everyAssignment, sum } from './every-way.suite.js';
import {
  type Allowed,
  type CostTable,
  largestMatching,
  leastTotal,
  provesShort,
  smallestSpread,
  smallestWorst,
} from './index.js';

const tableOf = (cost: fc.Arbitrary<number>) =>
  fc
    .integer({ min: 1, max: 5 })
    .chain((rows) =>
      fc
        .integer({ min: rows, max: 6 })
        .chain((columns) =>
          fc.array(fc.array(cost, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }),
        ),
    );
const holes = tableOf(
  fc.oneof({ weight: 3, arbitrary: fc.integer({ min: -9, max: 20 }) }, { weight: 1, arbitrary: fc.constant(Infinity) }),
);

/** Costs of every assignment of allowed pairs. */
const allWays = (costs: CostTable): readonly (readonly number[])[] =>
  [...everyAssignment(costs.length, costs[0]!.length)]
    .map((columns) => columns.map((column, row) => costs[row]![column]!))
    .filter((paid) => paid.every(Number.isFinite));

const widthOf = (paid: readonly number[]) => Math.max(...paid) - Math.min(...paid);
const allowedIn = (costs: CostTable): Allowed =>
  costs.map((row) => [...row.keys()].filter((column) => Number.isFinite(row[column])));

describe('a table of costs', () => {
  // Printed examples, figures from memory: the first is the docstring of a numerical library's assignment routine, the
  // second a three-task example of an encyclopedia, the others tests and worked examples of public assignment packages.
  it.each<[string, CostTable, number]>([
    [
      'three by three',
      [
        [4, 1, 3],
        [2, 0, 5],
        [3, 2, 2],
      ],
      5,
    ],
    [
      'three workers and three tasks',
      [
        [8, 4, 7],
        [5, 2, 3],
        [9, 4, 8],
      ],
      15,
    ],
    [
      'a cheap column for every row',
      [
        [400, 150, 400],
        [400, 450, 600],
        [300, 225, 300],
      ],
      850,
    ],
    [
      'small numbers',
      [
        [10, 10, 8],
        [9, 8, 1],
        [9, 7, 4],
      ],
      18,
    ],
    [
      'one column more than rows',
      [
        [400, 150, 400, 1],
        [400, 450, 600, 2],
        [300, 225, 300, 3],
      ],
      452,
    ],
    [
      'one column more, again',
      [
        [10, 10, 8, 11],
        [9, 8, 1, 1],
        [9, 7, 4, 10],
      ],
      15,
    ],
    [
      'four by four',
      [
        [90, 75, 75, 80],
        [35, 85, 55, 65],
        [125, 95, 90, 105],
        [45, 110, 95, 115],
      ],
      275,
    ],
    [
      'four by four, again',
      [
        [82, 83, 69, 92],
        [77, 37, 49, 92],
        [11, 69, 5, 86],
        [8, 9, 98, 23],
      ],
      140,
    ],
  ])('has the least total that is printed for it: %s', (_, costs, total) => {
    const found = leastTotal(costs);
    expect(found.ok && [found.value.total, found.value.bound]).toEqual([total, total]);
  });

  it('has as its least total the least of all assignments, and prices that add up to it', () => {
    fc.assert(
      fc.property(holes, (costs) => {
        const ways = allWays(costs);
        const found = leastTotal(costs);
        expect(found.ok).toBe(ways.length > 0);
        if (!found.ok) return;
        const least = Math.min(...ways.map(sum));
        expect([found.value.total, found.value.bound]).toEqual([least, least]);
      }),
    );
  });

  it('has as its smallest worst cost the smallest of all assignments, then the least total, and a set of rows that proves it', () => {
    fc.assert(
      fc.property(holes, (costs) => {
        const ways = allWays(costs);
        const found = smallestWorst(costs);
        expect(found.ok).toBe(ways.length > 0);
        if (!found.ok) return;
        const worst = Math.min(...ways.map((paid) => Math.max(...paid)));
        const total = Math.min(...ways.filter((paid) => Math.max(...paid) === worst).map(sum));
        expect([found.value.greatest, found.value.bound, found.value.total]).toEqual([worst, worst, total]);
        const cheaper = costs.map((row) => [...row.keys()].filter((column) => row[column]! < worst));
        expect(provesShort(cheaper, found.value.short)).toBe(true);
      }),
    );
  });

  it('has as its least spread the least of all assignments', () => {
    fc.assert(
      fc.property(holes, (costs) => {
        const ways = allWays(costs);
        const found = smallestSpread(costs);
        expect(found.ok).toBe(ways.length > 0);
        if (!found.ok) return;
        const least = Math.min(...ways.map(widthOf));
        expect([found.value.greatest - found.value.least, found.value.bound]).toEqual([least, least]);
      }),
    );
  });

  it('has rows that are short of columns when there is no assignment, and names them', () => {
    fc.assert(
      fc.property(holes, (costs) => {
        for (const found of [leastTotal(costs), smallestWorst(costs), smallestSpread(costs)]) {
          if (!found.ok) expect(provesShort(allowedIn(costs), found.fault)).toBe(true);
        }
      }),
    );
  });

  it('with one good pair on each diagonal place of a hundred rows is solved by these pairs', () => {
    const costs = Array.from({ length: 100 }, (_, i) => Array.from({ length: 100 }, (_x, j) => Math.abs(i - j)));
    for (const found of [leastTotal(costs), smallestWorst(costs), smallestSpread(costs)]) {
      expect(found.ok && found.value.total).toBe(0);
    }
  });
});

describe('the largest matching', () => {
  it('serves every row where any rows together may take at least as many columns (P. Hall, 1935)', () => {
    expect(largestMatching([[0, 1], [0], [1, 2]], 3)).toEqual({ columnOf: [1, 0, 2], size: 3 });
  });

  it('names three rows that may take two columns only', () => {
    const found = largestMatching(
      [
        [0, 1],
        [0, 1],
        [0, 1],
        [2, 3],
      ],
      4,
    );
    expect(found.size).toBe(3);
    expect(found.short).toEqual({ rows: [0, 1, 2], columns: [0, 1] });
  });

  it('names a row that may take nothing', () => {
    expect(largestMatching([[], [0]], 1).short).toEqual({ rows: [0], columns: [] });
  });

  it('is as large as any, and its reason holds', () => {
    const allowed = fc.array(fc.uniqueArray(fc.nat({ max: 5 })), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(allowed, (rows) => {
        const found = largestMatching(rows, 6);
        // Covering one row more or not at all: by rows in turn, the most that can be served.
        const most = (row: number, taken: readonly number[]): number =>
          row === rows.length
            ? 0
            : Math.max(
                most(row + 1, taken),
                ...rows[row]!.filter((one) => !taken.includes(one)).map((one) => 1 + most(row + 1, [...taken, one])),
              );
        expect(found.size).toBe(most(0, []));
        expect(found.columnOf.every((one, row) => one < 0 || rows[row]!.includes(one))).toBe(true);
        const held = found.columnOf.filter((one) => one >= 0);
        expect(new Set(held).size).toBe(held.length);
        expect(found.short === undefined || provesShort(rows, found.short)).toBe(true);
        expect(found.short === undefined).toBe(found.size === rows.length);
      }),
    );
  });

  it('has a reason that fails when a row may take another column, or when there are enough', () => {
    expect(provesShort([[0, 1], [0]], { rows: [0, 1], columns: [0] })).toBe(false);
    expect(provesShort([[0], [1]], { rows: [0, 1], columns: [0, 1] })).toBe(false);
  });
});
