import type { Ratio, Torque } from '../../quantity/index.js';

/**
 * Torques of the stages of a joint: share·target each [N·m], rounded to what the wrench can show.
 *
 * `target` and `step` [N·m] above 0, `shares` above 0 to 1. Stages go to the nearest step, the last one never above its
 * share. Without a step nothing is rounded.
 * Example: 65 lbf·ft at 30, 60 and 100 %: 19.5, 39.0 and 65. Source: arithmetic; rounding rule common practice.
 */
export function stageTorques(target: Torque, shares: readonly Ratio[], step?: Torque): readonly Torque[] {
  return shares.map((share, at) => {
    const exact = share * target;
    if (step === undefined) return exact as Torque;
    const steps = exact / step;
    const last = at === shares.length - 1;
    return ((last ? Math.floor(steps + NOISE) : Math.round(steps)) * step) as Torque;
  });
}
/** 65 over 0.5 must be 130 steps, whatever the rounding of the units. */
const NOISE = 1e-9;
