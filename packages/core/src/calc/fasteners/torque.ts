import type { Force, Length, Ratio, Torque } from '../../quantity/index.js';
import { type Thread, threadSizes } from './thread.js';

/** Half of the 60° thread angle. */
const FLANK = Math.PI / 6;

/**
 * Torque of a preload by the short form: T = K·D·F [N·m].
 *
 * K `nutFactor` (belongs to a lubricant, a finish and both faces), D `diameter` nominal [m], F `preload` [N].
 * Example: 3/8-16, F = 4941 lbf, K = 0.20: 30.9 lbf·ft. Source: definition of the nut factor.
 */
export function torqueByNutFactor(nutFactor: Ratio, diameter: Length, preload: Force): Torque {
  return (nutFactor * diameter * preload) as Torque;
}

/** Preload of a torque by the short form: F = T/(K·D) [N]. K and D above 0. Source: as `torqueByNutFactor`. */
export function preloadByNutFactor(nutFactor: Ratio, diameter: Length, torque: Torque): Force {
  return (torque / (nutFactor * diameter)) as Force;
}

/**
 * Torque at another nut factor and equal preload: T2 = T1·K2/K1 [N·m]. K1 above 0.
 *
 * Never to be used on a torque that its maker already gave for a named lubricant.
 * Example: 130 lbf·ft dry at K 0.17, lubricated K 0.09: 68.8 lbf·ft. Source: follows from the short form.
 */
export function torqueAtOtherNutFactor(torque: Torque, from: Ratio, to: Ratio): Torque {
  return ((torque * to) / from) as Torque;
}

/** What the nut or head rubs on: mean diameter of a ring is (outside + hole)/2. */
export interface Friction {
  readonly thread: Ratio;
  readonly head: Ratio;
}
export interface BearingRing {
  /** Outside of the bearing face (washer face, not across corners). */
  readonly outside: Length;
  /** Clearance hole or its chamfer. */
  readonly hole: Length;
}

/** Torque per unit of preload [m] in its three parts; their sum times the preload is the tightening torque. */
export interface TorqueArms {
  readonly pitch: Length;
  readonly thread: Length;
  readonly head: Length;
}

/**
 * The three shares of a tightening torque, each as an arm [m] to multiply with the preload.
 *
 *   pitch P/2π, thread d2·μG/(2·cos 30°), head (dw + dh)/4·μK
 *
 * | symbol | argument         | unit | meaning                                                    |
 * |--------|------------------|------|------------------------------------------------------------|
 * | P, d2  | `thread`         | [m]  | pitch and pitch diameter                                   |
 * | μG     | `friction.thread`|      | friction in the thread, 0 to 1                             |
 * | μK     | `friction.head`  |      | friction under the head or nut                             |
 * | dw, dh | `ring`           | [m]  | bearing outside and hole                                   |
 *
 * Linear form with exact constants. The rounded ones in print (0.16, 0.58) give up to 0.3 % more, the full form with
 * tan(φ + ρ) about 0.4 %: see `threadTorqueArm`.
 * Example: M12 x 1.75, μ 0.12, ring 16.6/13.5 mm: 0.279, 0.752, 0.903 mm.
 * Source: VDI 2230 part 1 (from memory).
 */
export function torqueArms(thread: Thread, friction: Friction, ring: BearingRing): TorqueArms {
  const { pitchDiameter } = threadSizes(thread);
  return {
    pitch: (thread.pitch / (2 * Math.PI)) as Length,
    thread: ((pitchDiameter * friction.thread) / (2 * Math.cos(FLANK))) as Length,
    head: (((ring.outside + ring.hole) / 4) * friction.head) as Length,
  };
}

/** The printed form of `torqueArms` with its rounded constants 0.16 and 0.58 [m]. Source: VDI 2230 (from memory). */
export function printedTorqueArms(thread: Thread, friction: Friction, ring: BearingRing): TorqueArms {
  const { pitchDiameter } = threadSizes(thread);
  return {
    pitch: (0.16 * thread.pitch) as Length,
    thread: (0.58 * pitchDiameter * friction.thread) as Length,
    head: (((ring.outside + ring.hole) / 4) * friction.head) as Length,
  };
}

/**
 * Thread torque per unit of preload, full form: d2/2·tan(φ + ρ) [m], tan φ = P/(π·d2), tan ρ = μG/cos 30°.
 *
 * Symbols as in `torqueArms`. Holds while φ + ρ < 90°. Source: VDI 2230 part 1 (from memory); screw theory.
 */
export function threadTorqueArm(thread: Thread, friction: Ratio): Length {
  const { pitchDiameter } = threadSizes(thread);
  const lead = Math.atan(thread.pitch / (Math.PI * pitchDiameter));
  const rubbing = Math.atan(friction / Math.cos(FLANK));
  return ((pitchDiameter / 2) * Math.tan(lead + rubbing)) as Length;
}

/** The three parts by the printed form where it is asked for, else by the linear one: exact screw theory has no split. */
export const armsOf = (form: LongForm, thread: Thread, friction: Friction, ring: BearingRing): TorqueArms =>
  form === 'printed' ? printedTorqueArms(thread, friction, ring) : torqueArms(thread, friction, ring);

/** Sum of the arms [m]. */
export const wholeArm = (arms: TorqueArms): Length => (arms.pitch + arms.thread + arms.head) as Length;

/** The three forms of the long equation that are in use; they differ by up to 0.4 %. */
export type LongForm = 'exact' | 'printed' | 'linear';

/**
 * Thread part of the arm [m] by a named form: what twists the shank. `exact` screw theory, `printed` with 0.16 and
 * 0.58, `linear` with exact constants. Symbols as in `torqueArms`. Source: VDI 2230 part 1 (from memory).
 */
export function threadPartArm(thread: Thread, friction: Ratio, form: LongForm): Length {
  if (form === 'exact') return threadTorqueArm(thread, friction);
  const arms = armsOf(form, thread, { thread: friction, head: friction }, NO_RING);
  return (arms.pitch + arms.thread) as Length;
}
const NO_RING: BearingRing = { outside: 0 as Length, hole: 0 as Length };

/** Whole torque per unit of preload [m]: thread part by the named form and head part. Symbols as in `torqueArms`. */
export function tighteningArm(thread: Thread, friction: Friction, ring: BearingRing, form: LongForm): Length {
  return (threadPartArm(thread, friction.thread, form) + torqueArms(thread, friction, ring).head) as Length;
}
