import type { Assessment, Decision } from '../model.js';
import { boreOversize } from './bore-oversize.js';
import { crankUndersize } from './crank-undersize.js';
import type { Decider } from './decision.js';
import { type LengthUnit, lengthWords, unitOfSheet } from './length-words.js';
import { pins } from './pins.js';
import { pistonsToBores } from './pistons-to-bores.js';
import { shells } from './shells.js';

/** In the order in which they are taken: what is cut first, then what is chosen to go with it. */
const DECIDERS: readonly Decider[] = [boreOversize, crankUndersize, shells, pistonsToBores, pins];

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

export type { Decider } from './decision.js';
export { type LengthUnit, type LengthWords, lengthWords } from './length-words.js';
