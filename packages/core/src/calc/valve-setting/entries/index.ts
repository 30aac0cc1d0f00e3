import type { Calculation } from '../../catalogue/index.js';
import { baseCircleWindows } from './base-circle.js';
import { crankStops } from './crank-stops.js';

/** One file an entry, one line here. */
export const valveSettingCalculations: readonly Calculation[] = [baseCircleWindows, crankStops];
