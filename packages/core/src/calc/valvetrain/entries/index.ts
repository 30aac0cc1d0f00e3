import type { Calculation } from '../../catalogue/index.js';
import { pushrodBuckling } from './buckling.js';
import { collapsedLifter } from './collapsed-lifter.js';
import { hotLash } from './hot-lash.js';
import { lashPerTurn } from './lash-per-turn.js';
import { preloadFromTurns } from './preload-from-turns.js';
import { pushrodStep } from './pushrod-step.js';
import { rockerSweep } from './rocker-sweep.js';
import { turnsFromPreload } from './turns-from-preload.js';
import { valveLift } from './valve-lift.js';

/** One file an entry, one line here. */
export const valvetrainCalculations: readonly Calculation[] = [
  preloadFromTurns,
  turnsFromPreload,
  lashPerTurn,
  collapsedLifter,
  pushrodStep,
  valveLift,
  rockerSweep,
  hotLash,
  pushrodBuckling,
];
