/** Measured lifts over angle, put in order and checked once for everything that reads them. */
import { type Angle, done, type Length, type Outcome, refused } from '../../quantity/index.js';

/** Readings by rising angle. */
export interface LiftTable {
  readonly angles: readonly Angle[];
  readonly lifts: readonly Length[];
}
export type TableFault =
  | { readonly code: 'unlike-lengths'; readonly angles: number; readonly lifts: number }
  | { readonly code: 'too-few'; readonly points: number; readonly needed: number }
  | { readonly code: 'same-angle'; readonly angle: Angle };

const LEAST = 3;
/** Two readings nearer than this are at one angle: a hundred thousandth of a degree. */
const SAME = 1e-7;

/**
 * Table of lifts in order of their angles. Readings [rad], [m] may come in any order; at least 3 and no angle twice.
 * Refuses with the fault that names what is wrong. Source: definition.
 */
export function liftTable(angles: readonly Angle[], lifts: readonly Length[]): Outcome<LiftTable, TableFault> {
  if (angles.length !== lifts.length) {
    return refused({ code: 'unlike-lengths', angles: angles.length, lifts: lifts.length });
  }
  if (angles.length < LEAST) return refused({ code: 'too-few', points: angles.length, needed: LEAST });
  const table = inOrder(angles, lifts);
  const twice = table.angles.find((angle, at) => angle - (table.angles[at - 1] ?? Number.NEGATIVE_INFINITY) < SAME);
  return twice === undefined ? done(table) : refused({ code: 'same-angle', angle: twice });
}

/** The same readings by rising angle; both lists of one length. */
export function inOrder(angles: readonly Angle[], lifts: readonly Length[]): LiftTable {
  const order = angles.map((_, at) => at).sort((a, b) => angles[a]! - angles[b]!);
  return { angles: order.map((at) => angles[at]!), lifts: order.map((at) => lifts[at]!) };
}
