/** How far a fastener reaches into its hole: whether it meets the bottom, and whether enough thread is engaged. */
import type { Length } from '../quantity/index.js';
import type { FastenerKind, Hole, Stated } from './model.js';
import { threadDiameter } from './thread-diameter.js';

export interface Reach {
  /** From the face in which the hole begins to the end of the fastener; the longest where the sheet gives windows. */
  readonly into: Length;
  /** It meets the bottom of the hole before it clamps. Absent where nothing tells: no depth, or the hole has no bottom. */
  readonly bottoms?: boolean;
  /** One diameter of the thread; absent where the sheet does not print it. */
  readonly leastThread?: Length;
  /** Less thread engaged than that. */
  readonly shallow?: boolean;
}

/** A nanometre covers the rounding of sizes that a person typed as exactly equal. */
const ROUNDING = 1e-9;

/**
 * Reach of a fastener into a hole.
 *
 *   into = length − clamped;  bottoms when into > depth;  engaged = the lesser of into and depth
 *
 * | symbol  | argument       | unit | meaning                                                              |
 * |---------|----------------|------|----------------------------------------------------------------------|
 * | length  | `length`       | [m]  | under the head; the longest that is meant, above 0                    |
 * |         | `shortest`     | [m]  | the shortest that is meant; the same as `length` where left out       |
 * | clamped | `hole.clamped` | [m]  | head or cap, gasket and washer together                               |
 * | depth   | `hole.depth`   | [m]  | from the face in which the hole begins to where the thread ends       |
 *
 * Doubt counts against the fastener: of printed windows the end is taken that bottoms first, or engages least. A hole that
 * opens into water, oil or air has no bottom to meet. Undefined where the sheet does not say what is clamped.
 * Assumes a thread that runs to the end of the fastener. At least one diameter of thread is common practice, no source;
 * 1.25 diameters in iron and 2 in aluminium are printed in note 3 of a generator-set manual (reference fasteners-open.md
 * O-32, read). A sheet does not say the metal, so less than one diameter is what is wrong in any.
 */
export function fastenerReach(
  hole: Hole,
  kind: FastenerKind,
  length: Length,
  shortest: Length = length,
): Reach | undefined {
  if (hole.clamped === undefined) return undefined;
  const into = (length - lowOf(hole.clamped)) as Length;
  const bottoms = bottomsIn(hole, into);
  const leastThread = threadDiameter(kind.thread);
  const engaged = Math.min(shortest - highOf(hole.clamped), hole.depth === undefined ? Infinity : lowOf(hole.depth));
  return {
    into,
    ...(bottoms !== undefined && { bottoms }),
    ...(leastThread !== undefined && { leastThread, shallow: engaged < leastThread - ROUNDING }),
  };
}

/** Reach of the fastener that the sheet itself asks for; undefined where its length or what is clamped is not stated. */
export function ownReach(hole: Hole, kind: FastenerKind): Reach | undefined {
  return kind.length && fastenerReach(hole, kind, highOf(kind.length), lowOf(kind.length));
}

function bottomsIn({ depth, opensInto }: Hole, into: Length): boolean | undefined {
  if (depth === undefined || (opensInto !== 'blind' && opensInto !== 'not-stated')) return undefined;
  return into > lowOf(depth) + ROUNDING;
}

const lowOf = (size: Stated<Length>): Length => size.window?.low ?? size.value;
const highOf = (size: Stated<Length>): Length => size.window?.high ?? size.value;
