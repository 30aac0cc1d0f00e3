/** Out-of-round, taper and cylindricity of a bore or journal from a grid of diameters. The definition is part of the limit. */
import { mean, spread } from './repeats.js';

/** Diameters by direction, each from one end of the bore to the other; all directions at the same heights. */
export type DiameterGrid = readonly (readonly number[])[];

export const ROUND_RULES = ['same-height', 'same-height-radial', 'across-heights', 'worst-of-all'] as const;
export type RoundRule = (typeof ROUND_RULES)[number];

export const TAPER_RULES = [
  'ends',
  'ends-signed-mean',
  'spread',
  'top-pair-less-bottom-pair',
  'spread-of-means',
] as const;
export type TaperRule = (typeof TAPER_RULES)[number];

export const CYLINDER_RULES = ['spread-by-direction', 'spread-of-all', 'spread-of-all-radial'] as const;
export type CylinderRule = (typeof CYLINDER_RULES)[number];

const heightsOf = (grid: DiameterGrid): readonly (readonly number[])[] =>
  grid[0]!.map((_, height) => grid.map((direction) => direction[height]!));

/** A diameter of a grid that decides a shape, and its change for one unit of it. */
export interface Share {
  readonly direction: number;
  readonly height: number;
  readonly share: number;
}
const share = (direction: number, height: number, by: number): Share => ({ direction, height, share: by });
const totalOf = (grid: DiameterGrid, shares: readonly Share[]): number =>
  shares.reduce((sum, one) => sum + one.share * grid[one.direction]![one.height]!, 0);

/** Place of the first largest, and of the last smallest: of values all alike two decide, not one. */
function ends(values: readonly number[]): { readonly high: number; readonly low: number; readonly apart: number } {
  let [high, low] = [0, 0];
  for (let at = 1; at < values.length; at += 1) {
    if (values[at]! > values[high]!) high = at;
    if (values[at]! <= values[low]!) low = at;
  }
  return { high, low, apart: values[high]! - values[low]! };
}
/** Place of the largest, the first of equal ones. */
const largestOf = (values: readonly number[]): number => values.indexOf(Math.max(...values));

/**
 * Out-of-round at each height, in the unit of the grid: the difference of the directions there, or half of it (radial).
 * Source: service manuals (read, see cases/metrology.json); ISO 12181 counts radii (recalled).
 */
export const roundByHeight = (grid: DiameterGrid): readonly number[] => heightsOf(grid).map(spread);

/** Diameters that decide an out-of-round by the maker's rule; the shape is the sum of their shares. */
export function roundShares(grid: DiameterGrid, rule: RoundRule): readonly Share[] {
  switch (rule) {
    case 'same-height':
      return oneHeight(grid, 1);
    case 'same-height-radial':
      return oneHeight(grid, 1 / 2);
    case 'across-heights':
      return acrossHeights(grid);
    case 'worst-of-all': {
      const count = grid[0]!.length;
      const { high, low } = ends(grid.flat());
      return [share(Math.floor(high / count), high % count, 1), share(Math.floor(low / count), low % count, -1)];
    }
  }
}

/** The height whose directions differ most. */
function oneHeight(grid: DiameterGrid, by: number): readonly Share[] {
  let worst: readonly Share[] = [];
  let most = -1;
  for (let height = 0; height < grid[0]!.length; height += 1) {
    const { high, low, apart } = ends(grid.map((direction) => direction[height]!));
    if (apart <= most) continue;
    most = apart;
    worst = [share(high, height, by), share(low, height, -by)];
  }
  return worst;
}

function acrossHeights(grid: DiameterGrid): readonly Share[] {
  const each = grid.map(ends);
  let worst: readonly Share[] = [];
  let most = Number.NEGATIVE_INFINITY;
  each.forEach(({ high }, one) => {
    each.forEach(({ low }, other) => {
      const apart = grid[one]![high]! - grid[other]![low]!;
      if (one === other || apart <= most) return;
      most = apart;
      worst = [share(one, high, 1), share(other, low, -1)];
    });
  });
  return worst;
}

/**
 * Out-of-round by the maker's rule, two directions or more.
 *
 *   same-height: largest difference of directions at one height; -radial: half of it; across-heights: largest of one direction
 *   less smallest of another, at whatever heights; worst-of-all: largest less smallest of the whole grid
 */
export const outOfRound = (grid: DiameterGrid, rule: RoundRule): number => totalOf(grid, roundShares(grid, rule));

/** Diameters that decide a taper by the maker's rule; the taper is the sum of their shares. */
export function taperShares(grid: DiameterGrid, rule: TaperRule): readonly Share[] {
  const last = grid[0]!.length - 1;
  switch (rule) {
    case 'ends': {
      const falls = grid.map((direction) => direction[0]! - direction[last]!);
      const worst = largestOf(falls.map(Math.abs));
      return between(worst, 0, worst, last, falls[worst]!);
    }
    case 'ends-signed-mean':
      return grid.flatMap((_, direction) => meanApart(direction, 0, last, grid.length));
    case 'spread': {
      const each = grid.map(ends);
      const worst = largestOf(each.map(({ apart }) => apart));
      return [share(worst, each[worst]!.high, 1), share(worst, each[worst]!.low, -1)];
    }
    case 'top-pair-less-bottom-pair': {
      const top = largestOf(grid.map((direction) => direction[0]!));
      const bottom = largestOf(grid.map((direction) => direction[last]!));
      return between(top, 0, bottom, last, grid[top]![0]! - grid[bottom]![last]!);
    }
    case 'spread-of-means': {
      const { high, low } = ends(heightsOf(grid).map(mean));
      return grid.flatMap((_, direction) => meanApart(direction, high, low, grid.length));
    }
  }
}

/** The larger of two diameters less the smaller. */
function between(one: number, height: number, other: number, otherHeight: number, apart: number): readonly Share[] {
  const sign = apart < 0 ? -1 : 1;
  return [share(one, height, sign), share(other, otherHeight, -sign)];
}
const meanApart = (direction: number, height: number, other: number, count: number): readonly Share[] => [
  share(direction, height, 1 / count),
  share(direction, other, -1 / count),
];

/**
 * Taper by the maker's rule, two heights or more; never negative but for the signed one.
 *
 *   ends: largest |top − bottom| of a direction; ends-signed-mean: mean top − mean bottom (positive: wider at the top);
 *   spread: largest max − min of the heights of a direction; top-pair-less-bottom-pair: largest of the top height − largest of
 *   the bottom height, size only; spread-of-means: max − min of the mean diameters of the heights
 */
export const taper = (grid: DiameterGrid, rule: TaperRule): number => totalOf(grid, taperShares(grid, rule));

/** Cylindricity by rule: worst direction's spread over the heights, spread of the whole grid, or half of that (radial). */
export function cylindricity(grid: DiameterGrid, rule: CylinderRule): number {
  if (rule === 'spread-by-direction') return Math.max(...grid.map(spread));
  return spread(grid.flat()) / (rule === 'spread-of-all' ? 1 : 2);
}

export type LongShape = 'straight' | 'wider at the first end' | 'wider at the last end' | 'barrel' | 'waist';

/**
 * Shape along the axis from the mean diameters of the heights. A middle beyond both ends by more than `small` is a barrel or a waist,
 * which the rule of the ends cannot see.
 */
export function longShape(grid: DiameterGrid, small: number): LongShape {
  const means = heightsOf(grid).map(mean);
  const [first, last] = [means[0]!, means[means.length - 1]!];
  if (Math.max(...means) - Math.max(first, last) > small) return 'barrel';
  if (Math.min(first, last) - Math.min(...means) > small) return 'waist';
  if (Math.abs(first - last) <= small) return 'straight';
  return first > last ? 'wider at the first end' : 'wider at the last end';
}
