/** Is this the fastener that the hole asks for? Judged before anything is tightened. */
import {
  type FastenerKind,
  fastenerOfHole,
  fastenerReach,
  type Hole,
  holeById,
  type Joint,
  ownReach,
  type Reach,
  type Stated,
  type ThreadTreatment,
} from '../../engine/index.js';
import type { Length } from '../../quantity/quantity.js';
import type { FactData } from '../facts.js';

/** What the person states or measures; whatever is absent is not judged. */
export interface StatedFastener {
  /** Id of a fastener kind of the joint. */
  readonly fastener?: string;
  readonly length?: Length;
  readonly onThread?: string;
  readonly underHead?: string;
}
export type FastenerVerdict =
  | 'right'
  | 'wrong-kind'
  | 'too-long'
  | 'too-short'
  /** Re-usable up to a length, and longer than that. */
  | 'past-limit'
  | 'wrong-on-thread'
  | 'wrong-under-head'
  /** Neither a kind nor a length to compare was stated: unknown is not right. */
  | 'cannot-tell'
  | 'unknown-hole';
export interface FastenerJudgement {
  readonly verdict: FastenerVerdict;
  readonly hole: string;
  readonly expected?: FastenerKind;
  readonly stated: StatedFastener;
  /** Where a length was compared: how far it is off, signed, and how far it may be. */
  readonly off?: Length;
  readonly tolerance?: Length;
  /** How it reaches into the hole; absent where the sheet does not say what is clamped. */
  readonly reach?: Reach;
}

const WIDEST_TOLERANCE = 0.001;

/**
 * Tolerance on a measured length [m]: 1 mm, or half the difference to the nearest other length of the joint where that
 * is less, so that no length fits two kinds. Source: common practice, no source.
 */
export function lengthTolerance(joint: Joint, expected: Length): Length {
  const lengths = joint.fasteners.flatMap((kind) => kind.length?.value ?? []);
  const gaps = lengths.map((length) => Math.abs(length - expected)).filter((gap) => gap > 0);
  return Math.min(WIDEST_TOLERANCE, ...gaps.map((gap) => gap / 2)) as Length;
}

/**
 * Judges a fastener for a hole by what was stated: kind, measured length under the head, and what is on it.
 *
 * A measured length counts before the length of a stated kind. Too long means that it bottoms in the hole, or is longer
 * than the tolerance allows and may; too short means too little thread engaged. A length of exactly the tolerance passes
 * unless its reach says otherwise.
 */
export function judgeFastener(joint: Joint, holeId: string, stated: StatedFastener): FastenerJudgement {
  const hole = holeById(joint, holeId);
  const expected = fastenerOfHole(joint, holeId);
  if (hole === undefined || expected === undefined) return { verdict: 'unknown-hole', hole: holeId, stated };
  const base = { hole: holeId, expected, stated };
  const length = stated.length ?? joint.fasteners.find((kind) => kind.id === stated.fastener)?.length?.value;
  const sized = length === undefined ? undefined : judgeLength(joint, hole, expected, length);
  if (sized !== undefined && sized.verdict !== 'right') return { ...base, ...sized };
  if (sized?.off === undefined && stated.fastener === undefined) return { ...base, ...sized, verdict: 'cannot-tell' };
  return { ...base, ...sized, verdict: judgeRest(hole, expected, stated) };
}

type Sized = Pick<FastenerJudgement, 'verdict' | 'off' | 'tolerance' | 'reach'>;

/** A nanometre covers the rounding of sizes that a person typed as exactly the tolerance apart. */
const ROUNDING = 1e-9;

function judgeLength(joint: Joint, hole: Hole, expected: FastenerKind, length: Length): Sized {
  if (expected.length === undefined) return { verdict: 'right' };
  const tolerance = lengthTolerance(joint, expected.length.value);
  const off = outside(length, expected.length);
  const reach = reachIn(hole, expected, length);
  const measured = { off, tolerance, ...(reach && { reach }) };
  if (off > tolerance + ROUNDING || reach?.bottoms) return { verdict: 'too-long', ...measured };
  if (off < -tolerance - ROUNDING || reach?.shallow) return { verdict: 'too-short', ...measured };
  const limit = expected.use === 'reuse-to-length' ? expected.lengthLimit?.value : undefined;
  return { verdict: limit !== undefined && length > limit + ROUNDING ? 'past-limit' : 'right', ...measured };
}

/**
 * Reach of a fastener of this length. Where the sheet's own fastener already bottoms or engages too little by the sheet's
 * figures, one of them is misprinted: the sheet carries a caution, and nobody is stopped by them here.
 */
function reachIn(hole: Hole, expected: FastenerKind, length: Length): Reach | undefined {
  const own = ownReach(hole, expected);
  return own?.bottoms || own?.shallow ? undefined : fastenerReach(hole, expected, length);
}

/** How far a length lies outside the printed window, or from the printed single size; signed. */
function outside(length: Length, printed: Stated<Length>): Length {
  const { low = printed.value, high = printed.value } = printed.window ?? {};
  return (length > high ? length - high : Math.min(0, length - low)) as Length;
}

function judgeRest(hole: Hole, expected: FastenerKind, stated: StatedFastener): FastenerVerdict {
  if (stated.fastener !== undefined && stated.fastener !== expected.id) return 'wrong-kind';
  if (!sameDressing(hole.onThread, stated.onThread)) return 'wrong-on-thread';
  return sameDressing(hole.underHead, stated.underHead) ? 'right' : 'wrong-under-head';
}

/** Where the sheet does not say what goes on, whatever the person looked up is accepted. */
const sameDressing = (asked: ThreadTreatment, stated: string | undefined): boolean =>
  stated === undefined || asked === 'not-stated' || stated === asked;

/** Judges a fastener as it was recorded. */
export function judgePlaced(joint: Joint, placed: FactData['fastener-placed']): FastenerJudgement {
  const { hole, fastener, length, onThread, underHead } = placed;
  const measured = length === undefined ? {} : { length: length.value as Length };
  return judgeFastener(joint, hole, { fastener, onThread, underHead, ...measured });
}
