/**
 * What a new finding makes open again: roots, from which everything built on them follows. Common practice, no source; the last wash
 * after any cut and the fits of a changed part are rules that every trade text repeats.
 */
import { CHANGES } from './changes.js';
import { CUTS } from './cuts.js';
import { DOUBTS } from './doubts.js';
import { REMOVALS } from './removals.js';
import type { ReopeningRule } from './rule.js';

export type { ReopeningRule, Root } from './rule.js';
export const REOPENING_RULES: readonly ReopeningRule[] = [...CUTS, ...CHANGES, ...REMOVALS, ...DOUBTS];
/** An act that a person wants to do again, named by its id instead of a place. */
export const DONE_AGAIN = 'done-again';
