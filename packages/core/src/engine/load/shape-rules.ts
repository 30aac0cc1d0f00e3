/**
 * How makers form out-of-round, taper and cylindricity from a grid of diameters: the names that a limit's `rule` may have. Said here
 * again, because the engine's room may not use `calc` (the arrows); a test holds them against `calc/metrology/bore-shape`.
 */
export const RULES_OF_SHAPE = {
  'out-of-round': ['same-height', 'same-height-radial', 'across-heights', 'worst-of-all'],
  taper: ['ends', 'ends-signed-mean', 'spread', 'top-pair-less-bottom-pair', 'spread-of-means'],
  cylindricity: ['spread-by-direction', 'spread-of-all', 'spread-of-all-radial'],
} as const;
export type Shape = keyof typeof RULES_OF_SHAPE;
export const SHAPES = Object.keys(RULES_OF_SHAPE) as readonly Shape[];
export const SHAPE_RULES = Object.values(RULES_OF_SHAPE).flat();

/** The shape that a property or the words of a limit name, if any. */
export function shapeNamed(words: string): Shape | undefined {
  if (/out[- ]of[- ]round|ovality|roundness/i.test(words)) return 'out-of-round';
  if (/taper/i.test(words)) return 'taper';
  return /cylindric/i.test(words) ? 'cylindricity' : undefined;
}
