/**
 * How makers form out-of-round, taper and cylindricity from a grid of diameters, and which figure of the hole makes a clearance: the names
 * that a limit's `rule` may have. Those of shapes are said here again, because the engine's room may not use `calc` (the arrows); a test
 * holds them against `calc/metrology/bore-shape`.
 */
export const RULES_OF_SHAPE = {
  'out-of-round': ['same-height', 'same-height-radial', 'across-heights', 'worst-of-all'],
  taper: ['ends', 'ends-signed-mean', 'spread', 'top-pair-less-bottom-pair', 'spread-of-means'],
  cylindricity: ['spread-by-direction', 'spread-of-all', 'spread-of-all-radial'],
  clearance: ['smallest', 'mean', 'largest'],
} as const;
export type Shape = keyof typeof RULES_OF_SHAPE;
export const SHAPES = Object.keys(RULES_OF_SHAPE) as readonly Shape[];
export const SHAPE_RULES = Object.values(RULES_OF_SHAPE).flat();

/** The shape, or the clearance, that a property or the words of a limit name, if any. */
export function shapeNamed(words: string): Shape | undefined {
  if (/out[- ]of[- ]round|ovality|roundness/i.test(words)) return 'out-of-round';
  if (/taper/i.test(words)) return 'taper';
  if (/cylindric/i.test(words)) return 'cylindricity';
  return /clearance/i.test(words) ? 'clearance' : undefined;
}
