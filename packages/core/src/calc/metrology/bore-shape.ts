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

/**
 * Out-of-round at each height, in the unit of the grid: the difference of the directions there, or half of it (radial).
 * Source: service manuals (read, see cases/metrology.json); ISO 12181 counts radii (recalled).
 */
export const roundByHeight = (grid: DiameterGrid): readonly number[] => heightsOf(grid).map(spread);

/**
 * Out-of-round by the maker's rule, two directions or more.
 *
 *   same-height: largest difference of directions at one height; -radial: half of it; across-heights: largest of one direction
 *   less smallest of another, at whatever heights; worst-of-all: largest less smallest of the whole grid
 */
export function outOfRound(grid: DiameterGrid, rule: RoundRule): number {
  switch (rule) {
    case 'same-height':
      return Math.max(...roundByHeight(grid));
    case 'same-height-radial':
      return Math.max(...roundByHeight(grid)) / 2;
    case 'across-heights':
      return Math.max(
        ...grid.flatMap((one, i) =>
          grid.flatMap((other, j) => (i === j ? [] : [Math.max(...one) - Math.min(...other)])),
        ),
      );
    case 'worst-of-all':
      return spread(grid.flat());
  }
}

/**
 * Taper by the maker's rule, two heights or more; never negative but for the signed one.
 *
 *   ends: largest |top − bottom| of a direction; ends-signed-mean: mean top − mean bottom (positive: wider at the top);
 *   spread: largest max − min of the heights of a direction; top-pair-less-bottom-pair: largest of the top height − largest of
 *   the bottom height, size only; spread-of-means: max − min of the mean diameters of the heights
 */
export function taper(grid: DiameterGrid, rule: TaperRule): number {
  const heights = heightsOf(grid);
  const [top, bottom] = [heights[0]!, heights[heights.length - 1]!];
  switch (rule) {
    case 'ends':
      return Math.max(...top.map((one, direction) => Math.abs(one - bottom[direction]!)));
    case 'ends-signed-mean':
      return mean(top) - mean(bottom);
    case 'spread':
      return Math.max(...grid.map(spread));
    case 'top-pair-less-bottom-pair':
      return Math.abs(Math.max(...top) - Math.max(...bottom));
    case 'spread-of-means':
      return spread(heights.map(mean));
  }
}

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
