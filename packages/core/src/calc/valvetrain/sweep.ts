import { type Angle, done, type Length, type Outcome, refused } from '../../quantity/index.js';

/** Where in the lift the rocker tip stands square to the valve stem. */
export type SquareAt = 'half-lift' | 'closed';

export interface RockerSweep {
  /** Angle through which the arm swings. */
  readonly swing: Angle;
  /** How far the contact moves across the stem. */
  readonly sweep: Length;
}
export interface ArmTooShort {
  readonly code: 'arm-too-short';
  readonly arm: Length;
  /** The arm must be at least this long. */
  readonly needed: Length;
}

/**
 * Swing of a rocker arm and sweep of its tip across the valve stem.
 *
 *   square at half lift: swing = 2·asin(L/2R), sweep = R·(1 − cos(swing/2))
 *   square when closed:  swing = asin(L/R),    sweep = R·(1 − cos swing)
 *
 * R = `arm` [m], pivot to tip contact; L = `lift` [m], net, at least 0. The mark on the stem is the sweep plus the
 * contact patch. Refuses with `arm-too-short` when the arm cannot reach the lift.
 * Example: arm 1.470 in, lift 0.500 in: 0.0214 in square at half lift, 0.0876 in square when closed.
 * Source: derived (arc of a circle); half-lift set-up is common practice.
 */
export function rockerSweep(arm: Length, lift: Length, squareAt: SquareAt): Outcome<RockerSweep, ArmTooShort> {
  const needed = (squareAt === 'half-lift' ? lift / 2 : lift) as Length;
  if (!(arm > needed)) return refused({ code: 'arm-too-short', arm, needed });
  const half = Math.asin(lift / (2 * arm));
  const swing = squareAt === 'half-lift' ? 2 * half : Math.asin(lift / arm);
  const fromSquare = squareAt === 'half-lift' ? half : swing;
  return done({ swing: swing as Angle, sweep: (arm * (1 - Math.cos(fromSquare))) as Length });
}
