import { type Angle, type AngularSpeed, type Length, type Mass, type Ratio, wrapped } from '../../quantity/index.js';
import { angleOf, type Complex, length, plus, polar, sum, turned } from './complex.js';

/** One cylinder on its crank; angles in the running sense, positions along the crank from any common point. */
export interface Throw {
  /** Crankpin ahead of the crank's reference. */
  readonly throwAngle: Angle;
  /** Bank from upright. */
  readonly bankAngle: Angle;
  readonly position: Length;
  readonly reciprocating: Mass;
  /** Mass at the crankpin that is not balanced already, after the counterweights: may be negative. */
  readonly rotating: Mass;
}

/** Sizes and speed that all cylinders share. */
export interface CrankSizes {
  readonly crankRadius: Length;
  readonly rodLength: Length;
  readonly crankSpeed: AngularSpeed;
}

/**
 * A force (or couple) that turns as two vectors: F(θ) = ahead·e^(i·k·θ) + back·e^(−i·k·θ), k the order. One runs with
 * the crank, the other against it; together they draw an ellipse.
 */
export interface Harmonic {
  readonly order: 1 | 2;
  readonly ahead: Complex;
  readonly back: Complex;
}

/** Forces on the engine [N] and couples [N·m] of first and second order. */
export interface Shaking {
  readonly primaryForce: Harmonic;
  readonly secondaryForce: Harmonic;
  readonly primaryCouple: Harmonic;
  readonly secondaryCouple: Harmonic;
}

/**
 * Shaking forces and couples of any crank layout, first and second order.
 *
 *   F1 = Σ m·r·ω²·cos φ·e^(iβ),  F2 = Σ m·r·ω²·(r/l)·cos 2φ·e^(iβ),  φ = τ + θ − β,  couple = Σ (z0 − z)·F
 *
 * | symbol | argument        | unit    | meaning                                                        |
 * |--------|-----------------|---------|----------------------------------------------------------------|
 * | m      | `reciprocating` | [kg]    | per cylinder; the rotating mass adds r·ω²·mr·e^(i(τ+θ)) to F1  |
 * | r, l   | `crankRadius`, `rodLength` | [m] | throw and rod                                            |
 * | τ, β   | `throwAngle`, `bankAngle`  | [rad] | in the running sense                                   |
 * | z, z0  | `position`, `about` | [m] | along the crank, and the plane about which couples are taken   |
 *
 * A couple is written as the force it makes on the side of smaller z times the arm. Vectors: real part up, imaginary part toward the running sense; a force is positive toward the cylinder heads, as the
 * piston's inertia pulls the engine at top dead centre. Two terms of the exact series: without pin offset, r/l small.
 * With cos x = (e^ix + e^−ix)/2 each cylinder gives half of its force to a vector that runs with the crank at τ and half
 * to one that runs against it at 2β − τ (second order: 2τ − β and 3β − 2τ). Only the part that runs with the crank can
 * be balanced on the crank: half of the reciprocating mass, whatever the layout.
 * Example: two cylinders of a 90° vee on one pin: primary m·r·ω² turning with the crank, back 0; secondary √2 across.
 * Source: `khurmi-balance` (from memory); derived.
 */
export function shakingOf(throws: readonly Throw[], sizes: CrankSizes, about: Length): Shaking {
  const pull = sizes.crankRadius * sizes.crankSpeed ** 2;
  const second = (pull * sizes.crankRadius) / sizes.rodLength;
  const of = (order: 1 | 2, arm: (one: Throw) => number): Harmonic => {
    const scale = order === 1 ? pull : second;
    const ahead = throws.map((one) => aheadOf(one, order, scale * arm(one)));
    const back = throws.map((one) => polar((scale * arm(one) * one.reciprocating) / 2, backAngle(one, order)));
    return { order, ahead: sum(ahead), back: sum(back) };
  };
  const arm = (one: Throw) => about - one.position;
  return {
    primaryForce: of(1, () => 1),
    secondaryForce: of(2, () => 1),
    primaryCouple: of(1, arm),
    secondaryCouple: of(2, arm),
  };
}

function aheadOf(one: Throw, order: 1 | 2, scale: number): Complex {
  const half = (scale * one.reciprocating) / 2;
  return order === 1
    ? polar(half + scale * one.rotating, one.throwAngle)
    : polar(half, 2 * one.throwAngle - one.bankAngle);
}

const backAngle = (one: Throw, order: 1 | 2): number =>
  order === 1 ? 2 * one.bankAngle - one.throwAngle : 3 * one.bankAngle - 2 * one.throwAngle;

/** The vector of a harmonic at a crank angle [rad]. */
export const harmonicAt = ({ order, ahead, back }: Harmonic, crankAngle: number): Complex =>
  plus(turned(ahead, order * crankAngle), turned(back, -order * crankAngle));

/** What a harmonic does over a turn. */
export interface Ellipse {
  readonly most: number;
  readonly least: number;
  /** First crank angle at which it is largest, from 0; undefined when there is nothing. */
  readonly crankAngle: number | undefined;
  /** Where it points at that crank angle. */
  readonly direction: number | undefined;
}

/** A vector this small against the largest single part is rounding: the layout balances it. */
const BALANCED = 1e-12;

/**
 * Largest and least length of a harmonic and where it is largest: most = |ahead| + |back|, least = ||ahead| − |back||;
 * largest at θ = (arg back − arg ahead)/(2·k) and every π/k after it. One that never changes in length is largest from
 * θ = 0 on.
 *
 * `scale` is the largest that a single cylinder gives: what is below 1e-12 of it counts as nothing. Source: derived.
 */
export function ellipseOf(harmonic: Harmonic, scale: number): Ellipse {
  const { order, ahead, back } = harmonic;
  const floor = BALANCED * scale;
  const a = length(ahead) > floor ? length(ahead) : 0;
  const b = length(back) > floor ? length(back) : 0;
  const shape = { most: a + b, least: Math.abs(a - b) };
  if (shape.most === 0) return { ...shape, crankAngle: undefined, direction: undefined };
  const half = Math.PI / order;
  const raw = a === 0 || b === 0 ? 0 : (angleOf(back) - angleOf(ahead)) / (2 * order);
  const crankAngle = wrapped(raw, half);
  return { ...shape, crankAngle, direction: angleOf(harmonicAt(harmonic, crankAngle)) };
}

/** A throw whose counterweights carry a share of the reciprocating mass: −f·m at the crankpin. */
export const counterweighted = (one: Throw, factor: Ratio): Throw => ({
  ...one,
  rotating: (one.rotating - factor * one.reciprocating) as Mass,
});

/** Largest that one cylinder gives [N], and with its arm [N·m]: what a sum of all is measured against. */
export function scalesOf(throws: readonly Throw[], { crankRadius, crankSpeed }: CrankSizes, about: Length) {
  const pulls = throws.map((one) => (one.reciprocating + Math.abs(one.rotating)) * crankRadius * crankSpeed ** 2);
  const couples = throws.map((one, place) => Math.abs(one.position - about) * (pulls[place] as number));
  return { force: Math.max(...pulls), couple: Math.max(...couples) };
}
