import type { Angle, Area, Length, Volume } from '../../quantity/index.js';

/**
 * Area of the circle with a given perimeter [m²]: A = P²/(4·π), P `perimeter` [m].
 *
 * A circle encloses the most of all shapes with its perimeter, so this is too large for a kidney-shaped chamber and a
 * cut reckoned with it takes too little. Example: 12.0 in: 11.459 in². Source: `milling-perimeter`.
 */
export const circleOfPerimeter = (perimeter: Length): Area => (perimeter ** 2 / (4 * Math.PI)) as Area;

/**
 * Area that a trial cut speaks for [m²]: A = ΔV/c, ΔV `reduction` [m³] measured after a `cut` [m]. Walls that slope make
 * it change with depth. Source: definition.
 */
export const areaOfTrial = (reduction: Volume, cut: Length): Area => (reduction / cut) as Area;

/** Cut that takes a volume away [m]: c = ΔV/A with straight walls. Example: 1 cm³ from 11.459 in²: 0.00533 in. */
export const cutForVolume = (reduction: Volume, area: Area): Length => (reduction / area) as Length;

export interface IntakeFace {
  /** To take off the intake face of the head (or off the manifold's side). */
  readonly faceCut: Length;
  /** How far the manifold comes down: to take off the end rails of the block or the manifold. */
  readonly drop: Length;
}

/**
 * Cut of the intake face that lets the manifold of a vee engine fit again after the heads came closer.
 *
 *   x = m·sin α/cos φ + g,  drop = m·cos(α − φ)/cos φ
 *
 * | symbol | argument     | unit  | meaning                                                                      |
 * |--------|--------------|-------|------------------------------------------------------------------------------|
 * | m      | `moved`      | [m]   | head toward the crank along the bank: head cut + block cut − thicker gasket  |
 * | α      | `bankAngle`  | [rad] | bank from vertical, half of the vee angle                                    |
 * | φ      | `faceAngle`  | [rad] | intake face from vertical, below 90°                                         |
 * | g      | `intakeGasket` | [m] | intake gasket new less old, thicker positive                                 |
 *
 * The head comes m·sin α inward and m·cos α down; a face cut moves the face by its cosine outward and its sine down;
 * the manifold can only move straight down, both banks alike. Negative m opens the joint: x and drop come out negative.
 * Example: 45° and 55°: x = 1.233·m, drop = 1.717·m. Source: derived; reproduces `intake-face-table`.
 */
export function intakeFace(moved: Length, bankAngle: Angle, faceAngle: Angle, intakeGasket: Length): IntakeFace {
  const cosine = Math.cos(faceAngle);
  return {
    faceCut: ((moved * Math.sin(bankAngle)) / cosine + intakeGasket) as Length,
    drop: ((moved * Math.cos(bankAngle - faceAngle)) / cosine) as Length,
  };
}

/**
 * Cut of an angle-milled head at a distance from the edge that is not cut [m]: c = W·tan β.
 *
 * W `distance` [m], β `angle` [rad] by which the face turns. Example: 8.0 in and 2°: 0.279 in (the shop rule
 * 0.0175·W·β gives 0.280). Source: `angle-milling`; exact form derived.
 */
export const angleCut = (distance: Length, angle: Angle): Length => (distance * Math.tan(angle)) as Length;
