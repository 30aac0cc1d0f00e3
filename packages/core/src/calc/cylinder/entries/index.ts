import type { Calculation } from '../../catalogue/index.js';
import { compressionRatio } from './compression-ratio.js';
import { displacement } from './displacement.js';

/** One file an entry, one line here. */
export const cylinderCalculations: readonly Calculation[] = [displacement, compressionRatio];
