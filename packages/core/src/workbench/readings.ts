/** The log as judging reads it. */
import type { Readings } from '../assess/index.js';
import { foldMeasuring } from '../record/index.js';
import type { Bench } from './bench.js';

/**
 * Readings that stand, of the newest occasion of each place, with earlier ones beside; gauges, their checks, and the newest
 * choice of each decision. One pass over the log.
 */
export const readingsOf = (bench: Bench): Readings => foldMeasuring(bench.state);
