/** Everything read on the bare block, in the order of walking round it. */
import { bores } from './bores.js';
import { decks } from './decks.js';
import { liners } from './liners.js';
import { mainBearings } from './main-bearings.js';
import type { FeatureRule } from './rule.js';

export const block: readonly FeatureRule[] = [...decks, ...bores, ...liners, ...mainBearings];
