import type { Calculation } from '../../catalogue/index.js';
import { shimChoice } from './shim-choice.js';
import { shimPool } from './shim-pool.js';

/** One file an entry, one line here. */
export const selectionCalculations: readonly Calculation[] = [shimChoice, shimPool];
