import type { Mass } from '../../quantity/index.js';

/**
 * What to take off each piece so that all weigh what the lightest does [kg]: mi − least m. Source: common practice.
 *
 * Example: 583.9, 585.1, 584.2 g: 0, 1.2, 0.3 g.
 */
export const removals = (masses: readonly Mass[], to: Mass): readonly Mass[] =>
  masses.map((one) => Math.max(0, one - to) as Mass);
