import type { Calculation } from '../../catalogue/index.js';
import { damperMarks } from './damper.js';
import { deadCentres } from './dead-centres.js';
import { fireIntervals } from './fire-intervals.js';
import { firingTops } from './firing-tops.js';
import { meanSpeed } from './mean-speed.js';
import { motion } from './motion.js';
import { peakSpeed } from './peak-speed.js';
import { sharedPins } from './shared-pins.js';
import { stopMethod } from './stop-method.js';
import { throwCheck } from './throw-check.js';

/** One file an entry, one line here. */
export const crankCalculations: readonly Calculation[] = [
  motion,
  deadCentres,
  peakSpeed,
  meanSpeed,
  firingTops,
  sharedPins,
  throwCheck,
  fireIntervals,
  stopMethod,
  damperMarks,
];
