import type { Assessment, Decision } from '../model.js';
import { bolts } from './bolts.js';
import { boreOversize } from './bore-oversize.js';
import { crankUndersize } from './crank-undersize.js';
import type { Decider } from './decision.js';
import { deckCut } from './deck-cut.js';
import { gasketGrade } from './gasket-grade.js';
import { guides } from './guides.js';
import { headCut } from './head-cut.js';
import { type LengthUnit, lengthWords, unitOfSheet } from './length-words.js';
import { linerShims } from './liner-shims.js';
import { masses } from './masses.js';
import { pins } from './pins.js';
import { pistonsToBores } from './pistons-to-bores.js';
import { reuse } from './reuse.js';
import { ringAllocation } from './ring-allocation.js';
import { ringClocks } from './ring-clock.js';
import { ringGaps } from './ring-gaps.js';
import { seats } from './seats.js';
import { shells } from './shells.js';
import { springShims } from './spring-shims.js';
import { thrust } from './thrust.js';

/** In the order in which they are taken: what is cut first, then what is chosen to go with it. */
const DECIDERS: readonly Decider[] = [
  boreOversize,
  deckCut,
  crankUndersize,
  shells,
  thrust,
  pistonsToBores,
  pins,
  ringAllocation,
  ringGaps,
  ringClocks,
  masses,
  linerShims,
  gasketGrade,
  headCut,
  guides,
  seats,
  springShims,
  bolts,
  reuse,
];

/**
 * All decisions that this engine asks for, computed from what has been measured so far. Lengths in their words are written in
 * `unit`; left out, in the unit of the sheet.
 */
export function decisionsOf(
  assessment: Assessment,
  unit: LengthUnit = unitOfSheet(assessment.engine),
): readonly Decision[] {
  const words = lengthWords(unit);
  return DECIDERS.flatMap((decide) => decide(assessment, words));
}

export { type DecidedOversize, decidedOversize } from './decided-oversize.js';
export type { Decider } from './decision.js';
export { type LengthUnit, type LengthWords, lengthWords } from './length-words.js';
export {
  CLOCK_PATTERNS,
  type ClockPattern,
  fromThrust,
  type RingAngle,
  type RingClock,
  type RodFacing,
  ringClock,
} from './ring-clock.js';
