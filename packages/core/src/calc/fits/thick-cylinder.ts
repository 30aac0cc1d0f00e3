import type { Force, Length, Pressure, Ratio, Torque } from '../../quantity/index.js';

export interface Elastic {
  /** Young's modulus. */
  readonly modulus: Pressure;
  readonly poisson: Ratio;
}

/** Two rings pressed into each other. */
export interface PressedPair {
  /** Where they meet. */
  readonly diameter: Length;
  readonly hubOutside: Length;
  /** 0 for a solid shaft. */
  readonly shaftBore: Length;
  readonly hub: Elastic;
  readonly shaft: Elastic;
}

/** (Do² + d²)/(Do² − d²) of a ring, larger and smaller diameter. */
const ringFactor = (large: number, small: number): number => (large ** 2 + small ** 2) / (large ** 2 - small ** 2);

/** Interference over diameter that each unit of pressure takes up [1/Pa]. */
function giving({ diameter, hubOutside, shaftBore, hub, shaft }: PressedPair): number {
  const hubGives = (ringFactor(hubOutside, diameter) + hub.poisson) / hub.modulus;
  return hubGives + (ringFactor(diameter, shaftBore) - shaft.poisson) / shaft.modulus;
}

/**
 * Pressure between two pressed rings: p = (δ/d)/[(Ch + νh)/Eh + (Cs − νs)/Es] [Pa].
 *
 *   Ch = (Do² + d²)/(Do² − d²),  Cs = (d² + Di²)/(d² − Di²)
 *
 * | symbol | argument       | unit | meaning                                                    |
 * |--------|----------------|------|------------------------------------------------------------|
 * | δ      | `interference` | [m]  | on the diameter, shaft less hole                           |
 * | d      | `diameter`     | [m]  | where they meet                                            |
 * | Do, Di | `hubOutside`, `shaftBore` | [m] | outside of the hub, bore of the shaft (0: solid)    |
 * | E, ν   | `hub`, `shaft` | [Pa] | of each; ν of the hub counts plus, that of the shaft minus |
 *
 * Holds for Di < d < Do, elastic, long rings, no axial load. A gap (δ below 0) has no pressure: 0.
 * Example: d 100, Do 150 mm, solid, δ 0.10 mm, E 210 GPa: 58.3 MPa. Source: bibliography key `thick-cylinders`.
 */
export function fitPressure(pair: PressedPair, interference: Length): Pressure {
  return (Math.max(0, interference) / pair.diameter / giving(pair)) as Pressure;
}

/** Interference that makes a pressure [m]: `fitPressure` solved for δ. */
export function interferenceForPressure(pair: PressedPair, pressure: Pressure): Length {
  return (pressure * giving(pair) * pair.diameter) as Length;
}

export interface FitStresses {
  /** Hoop stress in the hub, at its bore and outside. */
  readonly hubBore: Pressure;
  readonly hubOutside: Pressure;
  /** Hoop stress in the shaft where they meet, and at its own bore. */
  readonly shaftFit: Pressure;
  readonly shaftBore: Pressure;
  /** Equivalent stress (von Mises, plane stress) at the hub bore, the most loaded place of the hub. */
  readonly hubEquivalent: Pressure;
}

/**
 * Stresses that a pressure p makes [Pa], tension positive: hub bore p·Ch, outside 2p·d²/(Do² − d²), shaft at the fit
 * −p·Cs, at its bore −2p·d²/(d² − Di²) (solid: −p everywhere).
 *
 * Symbols as in `fitPressure`. Source: bibliography key `thick-cylinders`.
 */
export function fitStresses(pair: PressedPair, pressure: Pressure): FitStresses {
  const { diameter: d, hubOutside: out, shaftBore: bore } = pair;
  const hoop = pressure * ringFactor(out, d);
  return {
    hubBore: hoop as Pressure,
    hubOutside: ((2 * pressure * d ** 2) / (out ** 2 - d ** 2)) as Pressure,
    shaftFit: (-pressure * ringFactor(d, bore)) as Pressure,
    shaftBore: (bore > 0 ? (-2 * pressure * d ** 2) / (d ** 2 - bore ** 2) : -pressure) as Pressure,
    hubEquivalent: Math.sqrt(hoop ** 2 + hoop * pressure + pressure ** 2) as Pressure,
  };
}

export interface FitSizes {
  /** By how much the bore of a hollow shaft closes, and the outside of the hub grows, on the diameter. */
  readonly boreClosure: Length;
  readonly hubGrowth: Length;
}

/**
 * Change of the free diameters under a fit pressure p [m]: bore of the shaft −2p·Di·d²/(E·(d² − Di²)), outside of the
 * hub +2p·Do·d²/(E·(Do² − d²)). Symbols as in `fitPressure`. Source: bibliography key `thick-cylinders`.
 */
export function fitSizes(pair: PressedPair, pressure: Pressure): FitSizes {
  const { diameter: d, hubOutside: out, shaftBore: bore, hub, shaft } = pair;
  return {
    boreClosure: ((2 * pressure * bore * d ** 2) / (shaft.modulus * (d ** 2 - bore ** 2))) as Length,
    hubGrowth: ((2 * pressure * out * d ** 2) / (hub.modulus * (out ** 2 - d ** 2))) as Length,
  };
}

/**
 * What a fit holds by friction: axial force π·d·L·p·μ [N], which at full depth is also the press force, and torque, that
 * force at the radius [N·m]. L `length` [m], μ `friction`. Source: friction on the cylinder.
 */
export function fitGrip(
  diameter: Length,
  length: Length,
  pressure: Pressure,
  friction: Ratio,
): { readonly force: Force; readonly torque: Torque } {
  const force = Math.PI * diameter * length * pressure * friction;
  return { force: force as Force, torque: ((force * diameter) / 2) as Torque };
}

/**
 * Interference that pressing or the squeezing of the peaks takes away: 0.8·(Rz hole + Rz shaft) [m].
 * Example: Rz 5 and 5 µm: 8 µm. Source: DIN 7190 (from memory).
 */
export function smoothing(hubRoughness: Length, shaftRoughness: Length): Length {
  return (0.8 * (hubRoughness + shaftRoughness)) as Length;
}
