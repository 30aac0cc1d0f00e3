import { done, type Mass, type Outcome, refused } from '../../quantity/index.js';
import { smallestSpread } from './table-assignment.js';

export interface MassGroups {
  /** Parts of each group, counted from 0, lightest first. */
  readonly groups: readonly (readonly number[])[];
  readonly spreads: readonly Mass[];
  /** Largest spread in a group: no way to make the groups has less. */
  readonly worst: Mass;
  readonly unused: readonly number[];
}
export interface TooFewParts {
  readonly code: 'too-few-parts';
  readonly needed: number;
}

/** A nanogram: sums of masses are compared in whole steps of it. */
const toNanograms = (mass: number): number => Math.round(mass * 1e12);

/** Largest spread and, among equals, least sum of spreads of the groups made so far; `ends` are where each group ends. */
interface Made {
  readonly worst: number;
  readonly sum: number;
  readonly ends: readonly number[];
}
const better = (a: Made, b: Made | undefined): boolean =>
  b === undefined || a.worst < b.worst || (a.worst === b.worst && a.sum < b.sum);

/** Best `groups` groups of neighbours among rising masses, by how many masses are used up. */
function bestBlocks(rising: readonly number[], groups: number, size: number): Made {
  let front: readonly (Made | undefined)[] = rising.map(() => ({ worst: 0, sum: 0, ends: [] }));
  front = [{ worst: 0, sum: 0, ends: [] }, ...front];
  for (let group = 1; group <= groups; group += 1) front = oneMore(rising, front, size);
  return front.at(-1)!;
}

function oneMore(
  rising: readonly number[],
  front: readonly (Made | undefined)[],
  size: number,
): readonly (Made | undefined)[] {
  const next: (Made | undefined)[] = [undefined];
  for (let end = 1; end <= rising.length; end += 1) {
    const before = front[end - size];
    const skipped = next[end - 1];
    if (!before) next.push(skipped);
    else {
      const spread = rising[end - 1]! - rising[end - size]!;
      const made = { worst: Math.max(before.worst, spread), sum: before.sum + spread, ends: [...before.ends, end] };
      next.push(better(made, skipped) ? made : skipped);
    }
  }
  return next;
}

/**
 * Groups of parts of nearly equal mass, so that the largest spread in a group is smallest.
 *
 * | symbol | argument | unit | meaning                                   |
 * |--------|----------|------|-------------------------------------------|
 * | m      | `masses` | kg   | mass of each part                         |
 * |        | `groups` | 1    | how many groups: engines, or banks        |
 * |        | `size`   | 1    | parts of a group                          |
 *
 * In some best plan every group is a run of neighbours by mass (parts of two groups that cross can be exchanged without
 * widening either), so the best runs, with parts left out between them, are found exactly by dynamic programming.
 * Refuses with `too-few-parts`. Example: 500, 501, 503, 510, 511, 512 g in two groups of three: 3 and 2 g.
 * Source: derived; dynamic programming after R. Bellman, textbook.
 */
export function massGroups(masses: readonly Mass[], groups: number, size: number): Outcome<MassGroups, TooFewParts> {
  if (masses.length < groups * size) return refused({ code: 'too-few-parts', needed: groups * size });
  const order = [...masses.keys()].toSorted((a, b) => masses[a]! - masses[b]!);
  const { ends } = bestBlocks(
    order.map((part) => masses[part]!),
    groups,
    size,
  );
  const found = ends.map((end) => order.slice(end - size, end));
  const spreads = found.map((group) => (masses[group.at(-1)!]! - masses[group[0]!]!) as Mass);
  const used = new Set(found.flat());
  return done({
    groups: found,
    spreads,
    worst: Math.max(...spreads) as Mass,
    unused: [...masses.keys()].filter((part) => !used.has(part)),
  });
}

export interface MassPairs {
  /** Second part of each first part, counted from 0. */
  readonly partnerOf: readonly number[];
  readonly sums: readonly Mass[];
  /** Heaviest less lightest pair: no other way to pair has less. */
  readonly spread: Mass;
}

/**
 * Pairs of two kinds of parts, such as pistons with pins, whose joint masses differ least.
 *
 * `first` [kg], one a cylinder, and `second` [kg], at least as many; those left over stay out. Exact, see `smallestSpread`.
 * Refuses with `too-few-parts`. Example: 500, 502 g with 101, 100, 99 g: 500 + 101 and 502 + 99, both 601 g.
 */
export function massPairs(first: readonly Mass[], second: readonly Mass[]): Outcome<MassPairs, TooFewParts> {
  const table = first.map((a) => second.map((b) => toNanograms(a + b)));
  const found = smallestSpread(table);
  if (!found.ok) return refused({ code: 'too-few-parts', needed: first.length });
  const partnerOf = found.value.columnOf;
  const sums = partnerOf.map((partner, at) => (first[at]! + second[partner]!) as Mass);
  return done({ partnerOf, sums, spread: (Math.max(...sums) - Math.min(...sums)) as Mass });
}
