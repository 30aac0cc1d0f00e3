import type { Force, Ratio, Torque } from '../../quantity/index.js';
import type { Thread } from './thread.js';
import { type BearingRing, type LongForm, tighteningArm } from './torque.js';

/** What one torque may make of the preload. */
export interface PreloadBand {
  readonly atLowFriction: Force;
  readonly atHighFriction: Force;
  /** With the wrench at the end of its own tolerance as well. */
  readonly least: Force;
  readonly most: Force;
  readonly middle: Force;
  /** Half of the band over its middle. */
  readonly halfWidth: Ratio;
}

/**
 * Band of preloads of one torque: the corners of friction and wrench tolerance.
 *
 *   F = T·(1 ± w)/arm(μ)
 *
 * T `torque` [N·m], w `wrench` (0.04 for ±4 %), μ from `lowFriction` to `highFriction`, alike in thread and under the
 * head; `ring` and the long form as in `tighteningArm`. Results [N]. The wrench is the smaller part of the scatter.
 * Example: M10 x 1.25, 60 N·m ±4 %, μ 0.10 to 0.14: 31.3 to 45.5 kN.
 * Source: derived from the long form.
 */
export function preloadBand(
  thread: Thread,
  ring: BearingRing,
  torque: Torque,
  wrench: Ratio,
  friction: { readonly low: Ratio; readonly high: Ratio },
  form: LongForm,
): PreloadBand {
  const at = (mu: Ratio) => torque / tighteningArm(thread, { thread: mu, head: mu }, ring, form);
  const atLowFriction = at(friction.low);
  const atHighFriction = at(friction.high);
  const most = atLowFriction * (1 + wrench);
  const least = atHighFriction * (1 - wrench);
  const middle = (most + least) / 2;
  return {
    atLowFriction: atLowFriction as Force,
    atHighFriction: atHighFriction as Force,
    least: least as Force,
    most: most as Force,
    middle: middle as Force,
    halfWidth: ((most - least) / 2 / middle) as Ratio,
  };
}

/**
 * Tightening factor of a scatter: α = Fmax/Fmin = (1 + s)/(1 − s).
 *
 * s `scatter` of preload about its middle, 0 to below 1 (0.23 for ±23 %). Not 1 + s, not 1/(1 − s).
 * Example: ±28 % gives 1.778. Source: definition, VDI 2230 part 1 (from memory).
 */
export function tighteningFactor(scatter: Ratio): Ratio {
  return ((1 + scatter) / (1 - scatter)) as Ratio;
}
