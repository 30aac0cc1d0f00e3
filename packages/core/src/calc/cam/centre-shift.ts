import type { Angle, Length } from '../../quantity/index.js';

export interface ChainShift {
  /** Chain that comes loose in both strands together; negative: it is drawn tight. */
  readonly slack: Length;
  /** Crank angle by which the cam is later. */
  readonly retard: Angle;
}

/**
 * What a crankshaft that moved toward its camshaft does to a timing chain.
 *
 *   sin φ = (r₂ − r₁)/C;  slack = 2·δ·cos φ;  retard = 2·δ·cos φ/r₂ (crank angle)
 *
 * | symbol | argument      | unit | meaning                                                      |
 * |--------|---------------|------|--------------------------------------------------------------|
 * | δ      | `closer`      | [m]  | crank moved toward the cam, as by line boring; negative: away |
 * | C      | `centres`     | [m]  | distance of the centres, above r₂ − r₁                       |
 * | r₁, r₂ | `crankRadius`, `camRadius` | [m] | pitch radii of the sprockets                     |
 *
 * The length of chain on and between the sprockets is stationary against the wrap angles, so the tight strand shortens by
 * δ·cos φ and the cam, which it pulls, follows by that over its radius; doubled as crank angle. Small δ; chain does not stretch.
 * Source: derived (open belt).
 */
export function chainShift(closer: Length, centres: Length, crankRadius: Length, camRadius: Length): ChainShift {
  const along = closer * Math.sqrt(1 - ((camRadius - crankRadius) / centres) ** 2);
  return { slack: (2 * along) as Length, retard: ((2 * along) / camRadius) as Angle };
}

/**
 * Backlash that timing gears lose [m, along the pitch circle] when their centres come closer by δ: 2·δ·tan α.
 *
 * `closer` [m], α `pressureAngle` [rad]. Source: derived from involute gearing, small δ.
 */
export function backlashLost(closer: Length, pressureAngle: Angle): Length {
  return (2 * closer * Math.tan(pressureAngle)) as Length;
}
