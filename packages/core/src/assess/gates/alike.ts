/** How far a reading may be from its sisters before it is asked about. */
import { median, medianDistance } from '../../calc/metrology/index.js';
import type { InstrumentKind } from '../model.js';

const MICRON = 1e-6;
const DEGREE = Math.PI / 180;
/**
 * Standard deviation of like parts about their middle [SI], before any of them is read: parts as made, worn evenly, and the
 * scatter of the gauge. Common practice, no source; only questions to a person rest on it, no verdict.
 */
const BEFORE_READING: Readonly<Record<InstrumentKind, number>> = {
  'outside-micrometer': 8 * MICRON,
  'bore-gauge': 12 * MICRON,
  'small-bore-gauge': 12 * MICRON,
  'depth-micrometer': 30 * MICRON,
  'dial-indicator': 25 * MICRON,
  'height-gauge': 40 * MICRON,
  'straightedge-and-feeler': 25 * MICRON,
  'feeler-gauge': 30 * MICRON,
  caliper: 80 * MICRON,
  burette: 0.4e-6,
  scale: 1e-3,
  'spring-tester': 15,
  'gauging-strip': 12 * MICRON,
  protractor: DEGREE / 2,
  'radius-gauge': 100 * MICRON,
  'ultrasonic-gauge': 150 * MICRON,
  'torque-wrench': 2,
};
/** How many readings the figure above weighs as much as. */
const WEIGHT = 4;
/** Normal scatter: standard deviation over median distance. */
const NORMAL = 1.4826;
/** Of the scatter of one more reading about a median: a question where there was no slip is rare beyond it. */
const REACH = 3.5;
/** Variance of a median over that of a mean, normal scatter. */
const MEDIAN_COST = Math.PI / 2;

export interface Alike {
  readonly middle: number;
  readonly within: number;
}
/**
 * Middle of sister readings and how far from it another may be. Median and median distance, so that one odd sister does not
 * hide the next; the distance is blended with what such parts usually differ by, as two or three readings know little.
 *
 * | symbol | meaning | unit |
 * | s | blended standard deviation: √((4 s₀² + n (1.4826 MAD)²) / (4 + n)) | SI |
 * | within | 3.5 s √(1 + π / 2n), and the step of the gauge | SI |
 *
 * Two sisters or more. Own rule, tuned on honest readings of fresh and worn engines (slips.test.ts).
 */
export function alikeTo(sisters: readonly number[], kind: InstrumentKind, step: number): Alike {
  const count = sisters.length;
  const before = Math.max(BEFORE_READING[kind], step);
  const seen = NORMAL * medianDistance(sisters);
  const deviation = Math.sqrt((WEIGHT * before ** 2 + count * seen ** 2) / (WEIGHT + count));
  return { middle: median(sisters), within: REACH * deviation * Math.sqrt(1 + MEDIAN_COST / count) + step };
}
