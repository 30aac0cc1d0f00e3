import { type Angle, done, type Length, type Outcome, refused } from '../../quantity/index.js';
import { signChange, splineAt, splineThrough } from '../numeric/index.js';
import type { LiftTable } from './lift-table.js';

/** How lift runs between two readings. */
export type Between = 'spline' | 'straight';

/** Lift by angle between the first and the last reading of a table. */
export type LiftCurve = (angle: number) => number;

/** Curve through every reading of a table: straight pieces, or a cubic spline with natural ends. Source: definition. */
export function curveThrough({ angles, lifts }: LiftTable, between: Between): LiftCurve {
  if (between === 'straight') return (angle) => straightAt(angles, lifts, angle);
  const spline = splineThrough(angles, lifts, { kind: 'natural' });
  return (angle) => splineAt(spline, angle).value;
}

function straightAt(x: readonly number[], y: readonly number[], at: number): number {
  const next = Math.max(
    1,
    x.findIndex((one) => one >= at),
  );
  const share = (at - x[next - 1]!) / (x[next]! - x[next - 1]!);
  return y[next - 1]! + share * (y[next]! - y[next - 1]!);
}

/** Where a lobe passes a checking lift. */
export interface Crossing {
  readonly opens: Angle;
  readonly closes: Angle;
}
export interface NotReached {
  readonly code: 'not-reached';
  readonly lift: Length;
  /** `peak`: the lobe is never so high; a flank: its readings do not go down so far. */
  readonly where: 'peak' | 'opening' | 'closing';
}

/**
 * Angles at which a lobe passes a checking lift going up and coming down.
 *
 * `table` readings of one lobe by rising angle [rad], [m]; `lift` [m]; the passes nearest to the highest reading count.
 * Refuses with `not-reached` a lift above the highest reading, or one below the readings of a flank: nothing is guessed
 * beyond the readings. Source: definition.
 */
export function crossingAt(table: LiftTable, curve: LiftCurve, lift: Length): Outcome<Crossing, NotReached> {
  const { angles, lifts } = table;
  const top = lifts.indexOf(Math.max(...lifts) as Length);
  if (!(lifts[top]! > lift)) return refused({ code: 'not-reached', lift, where: 'peak' });
  const before = lifts.findLastIndex((one, at) => at < top && one <= lift);
  if (before < 0) return refused({ code: 'not-reached', lift, where: 'opening' });
  const after = lifts.findIndex((one, at) => at > top && one <= lift);
  if (after < 0) return refused({ code: 'not-reached', lift, where: 'closing' });
  const above = (angle: number) => (curve(angle) > lift ? 1 : -1);
  return done({
    opens: signChange(above, angles[before]!, angles[before + 1]!) as Angle,
    closes: signChange(above, angles[after]!, angles[after - 1]!) as Angle,
  });
}
