import type { Angle, Compliance, Length, Pressure, Stiffness } from '../../quantity/index.js';

export interface Layer {
  readonly thickness: Length;
  readonly modulus: Pressure;
}

/**
 * Stiffness of clamped layers by pressure cones that spread from both ends and meet in the middle of the grip [N/m].
 *
 *   each frustum: k = π·E·d·tan α/ln[(2t·tan α + D − d)(D + d)/((2t·tan α + D + d)(D − d))], 1/k summed
 *
 * | symbol | argument     | unit  | meaning                                                                  |
 * |--------|--------------|-------|--------------------------------------------------------------------------|
 * | t, E   | `layers`     | [m], [Pa] | from the head to the nut or to where the thread holds                 |
 * | d      | `hole`       | [m]   | bolt (or hole) diameter                                                  |
 * | D      | `washerFace` | [m]   | diameter under head and nut, above d; grows by 2t·tan α through a layer  |
 * | α      | `halfAngle`  | [rad] | of the cone, usually 30°                                                 |
 *
 * Holds with room to spread: a thin boss or a bore's edge makes a sleeve. A layer through the middle is split there.
 * Example: 1/2 in, 1.095 in of steel 30e6 psi, face 0.75 in, 30°: 15.97e6 lbf/in.
 * Source: Shigley, Mechanical Engineering Design, chapter 8 (from memory).
 */
export function coneStiffness(layers: readonly Layer[], hole: Length, washerFace: Length, halfAngle: Angle): Stiffness {
  const grip = layers.reduce((sum, { thickness }) => sum + thickness, 0);
  const fromHead = frusta(layers, grip / 2);
  const fromNut = frusta(layers.toReversed(), grip / 2);
  const slope = Math.tan(halfAngle);
  const giving = [...fromHead, ...fromNut].reduce(
    (sum, frustum) => sum + 1 / frustumStiffness(frustum, hole, washerFace, slope),
    0,
  );
  return (1 / giving) as Stiffness;
}

/** A layer, or the part of one, and how deep under the face it begins. */
interface Frustum extends Layer {
  readonly depth: number;
}

/** The layers from one face down to a depth, the last cut off there. */
function frusta(layers: readonly Layer[], end: number): readonly Frustum[] {
  let depth = 0;
  return layers.flatMap(({ thickness, modulus }) => {
    const start = depth;
    depth += thickness;
    const cut = Math.min(depth, end) - start;
    return cut > 0 ? [{ thickness: cut as Length, modulus, depth: start }] : [];
  });
}

function frustumStiffness({ thickness, modulus, depth }: Frustum, hole: number, face: number, slope: number): number {
  const wide = face + 2 * depth * slope;
  const spread = 2 * thickness * slope;
  const inside = ((spread + wide - hole) * (wide + hole)) / ((spread + wide + hole) * (wide - hole));
  return (Math.PI * modulus * hole * slope) / Math.log(inside);
}

/** Constants A, B of the fitted member stiffness by material. Source: as `fittedStiffness`. */
export const MEMBER_FIT = {
  steel: [0.78715, 0.62873],
  aluminium: [0.7967, 0.63816],
  copper: [0.79568, 0.63553],
  'grey iron': [0.77871, 0.61616],
  any: [0.78952, 0.62914],
} as const;
export type MemberMaterial = keyof typeof MEMBER_FIT;

/**
 * Member stiffness by an exponential fitted to finite elements: k = E·d·A·exp(B·d/l) [N/m].
 *
 * E [Pa], d `diameter` and l `grip` [m], standard washer faces, one material throughout.
 * Example: steel 30e6 psi, 1/2 in, 1.095 in: 15.7e6 lbf/in. Source: Wileman and others, 1991, as printed in Shigley
 * (from memory).
 */
export function fittedStiffness(
  material: MemberMaterial,
  modulus: Pressure,
  diameter: Length,
  grip: Length,
): Stiffness {
  const [a, b] = MEMBER_FIT[material];
  return (modulus * diameter * a * Math.exp((b * diameter) / grip)) as Stiffness;
}

/** A through bolt with a nut, or a screw in a tapped part. */
export type JointKind = 'through' | 'tapped';

/** What is clamped, in the deformation-cone model. */
export interface ConeJoint {
  readonly kind: JointKind;
  /** Outside of the bearing face, and the hole. */
  readonly bearingOutside: Length;
  readonly hole: Length;
  readonly grip: Length;
  /** Outside diameter of the clamped parts, or that of the largest circle that fits. */
  readonly outside: Length;
  readonly modulus: Pressure;
}

/**
 * Compliance of clamped parts by a deformation cone, and a sleeve where the part is too slim for it [m/N].
 *
 *   w = 1 through, 2 tapped; tan φ = 0.362 + 0.032·ln(β/2) + 0.153·ln y through, 0.348 + 0.013·ln β + 0.193·ln y tapped
 *   β = lK/dw, y = DA/dw; DA at least dw + w·lK·tan φ: δ = 2·ln[(dw+dh)(dw+w·lK·tan φ−dh)/((dw−dh)(dw+w·lK·tan φ+dh))]
 *   /(w·E·π·dh·tan φ); between dw and that: cone up to DA and a sleeve; DA up to dw: a sleeve
 *
 * Symbols: dw `bearingOutside`, dh `hole`, lK `grip`, DA `outside` [m], E [Pa]. Holds for dh < dw, dh < DA.
 * Source: VDI 2230 part 1, 2003 edition (from memory).
 */
export function coneCompliance(joint: ConeJoint): Compliance {
  const { bearingOutside: dw, hole: dh, grip, outside, modulus } = joint;
  if (outside <= dw) return (grip / (modulus * (Math.PI / 4) * (outside ** 2 - dh ** 2))) as Compliance;
  const sides = joint.kind === 'through' ? 1 : 2;
  const slope = coneSlope(joint);
  const spread = dw + sides * grip * slope;
  const edge = Math.min(spread, outside);
  const cone = Math.log(((dw + dh) * (edge - dh)) / ((dw - dh) * (edge + dh)));
  const conePart = (2 * cone) / (sides * dh * slope);
  const rest = Math.max(0, grip - (outside - dw) / (sides * slope));
  return ((conePart + (4 * rest) / (outside ** 2 - dh ** 2)) / (modulus * Math.PI)) as Compliance;
}

/** tan φ of the deformation cone; the formula of `coneCompliance` needs it above 0. Source: as there. */
export function coneSlope({ kind, bearingOutside, grip, outside }: ConeJoint): number {
  const length = grip / bearingOutside;
  const width = outside / bearingOutside;
  return kind === 'through'
    ? 0.362 + 0.032 * Math.log(length / 2) + 0.153 * Math.log(width)
    : 0.348 + 0.013 * Math.log(length) + 0.193 * Math.log(width);
}

/** Compliance of a stiffness and back: 1/k. Above 0. */
export const complianceOf = (stiffness: Stiffness): Compliance => (1 / stiffness) as Compliance;
