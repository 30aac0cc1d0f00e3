import type { Length, Ratio } from '../../quantity/index.js';

/**
 * Lift at the valve from lift at the lobe: net = lobe·R − lash [m].
 *
 * `lobeLift`, `lash` [m] at least 0, R rocker ratio above 0. The lash is measured at the valve. The ratio is taken as
 * constant through the swing, which a real arm only nears. A lobe too low to take up the lash gives 0.
 * Example: 0.310 in, R = 1.5, lash 0.020 in: 0.445 in. Source: common practice, no source.
 */
export function valveLift(lobeLift: Length, ratio: Ratio, lash: Length): Length {
  return Math.max(0, lobeLift * ratio - lash) as Length;
}
