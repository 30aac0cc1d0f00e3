/** Balance of the engine: bobweights, what still shakes it, and how alike its parts weigh. */
import { together } from './answering.js';
import { bobweightPart, type PinStack } from './bobweights.js';
import type { Answered, Makeup } from './model.js';
import { shakingPart } from './shaking.js';
import { weightMatchParts } from './weight-match.js';

export interface BalanceAnswer extends Answered {
  /** For the drawn stack of each crankpin. */
  readonly pins: readonly PinStack[];
}
const SOURCES = ['balance.bobweight-unequal', 'balance.shaking-forces', 'balance.weight-match'];

/** Bobweight with each part's share, largest forces and couples at the highest speed, and spreads of the masses that were weighed. */
export function balanceOf(makeup: Makeup): BalanceAnswer {
  const { part, pins } = bobweightPart(makeup);
  return { ...together([part, shakingPart(makeup), ...weightMatchParts(makeup)], SOURCES), pins };
}
