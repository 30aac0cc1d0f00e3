import type { Angle } from '../../quantity/index.js';
import { CYCLE, TURN } from './angle.js';

export interface FireIntervals {
  /** Even interval, 720°/N. */
  readonly even: Angle;
  /** Splay of the pair's pins that would make the firing even; positive opens the vee angle. */
  readonly splayForEven: Angle;
  /** The two intervals that alternate, shorter first; they sum to twice the even one. */
  readonly shorter: Angle;
  readonly longer: Angle;
}

/**
 * Firing intervals of a vee engine whose cylinders fire in pairs from neighbouring pins.
 *
 *   pair apart = V + s (modulo 360°),  even = 720°/N,  splay for even firing = even − V,  a + b = 2·even
 *
 * | symbol | argument    | unit  | meaning                                                          |
 * |--------|-------------|-------|------------------------------------------------------------------|
 * | N      | `cylinders` |       | number of cylinders, even, at least 2                            |
 * | V      | `veeAngle`  | [rad] | angle between the banks                                          |
 * | s      | `splay`     | [rad] | angle between the pair's two pins, 0 for a common pin, + opens V |
 *
 * Of the intervals that fit the pins, the one nearest to even firing is taken: the two cylinders of a pair may fire
 * on the same turn or on the next. Example: N = 6, V = 90°, s = 0 gives 90° and 150°; a 45° twin gives 315° and 405°.
 * Source: derived; the intervals of one cycle sum to 720°.
 */
export function fireIntervals(cylinders: number, veeAngle: Angle, splay: Angle): FireIntervals {
  const even = CYCLE / cylinders;
  const apart = veeAngle + splay;
  const candidates = [apart - TURN, apart, apart + TURN, TURN - apart, 2 * TURN - apart].filter((one) => one >= 0);
  const nearest = candidates.reduce((best, one) => (Math.abs(one - even) < Math.abs(best - even) ? one : best), apart);
  const other = 2 * even - nearest;
  return {
    even: even as Angle,
    splayForEven: (even - veeAngle) as Angle,
    shorter: Math.min(nearest, other) as Angle,
    longer: Math.max(nearest, other) as Angle,
  };
}
