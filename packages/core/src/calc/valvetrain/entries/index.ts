import type { Calculation } from '../../catalogue/index.js';
import { pushrodBuckling } from './buckling.js';
import { camWindow } from './cam-window.js';
import { collapsedLifter } from './collapsed-lifter.js';
import { followForce } from './follow-force.js';
import { gapCorrection } from './gap-correction.js';
import { hotLash } from './hot-lash.js';
import { hotMargin } from './hot-margin.js';
import { lashPerTurn } from './lash-per-turn.js';
import { movingMass } from './moving-mass.js';
import { nestedSprings } from './nested-springs.js';
import { parkAngle } from './park-angle.js';
import { preloadFromTurns } from './preload-from-turns.js';
import { pushrodHalfLift } from './pushrod-half-lift.js';
import { pushrodLength } from './pushrod-length.js';
import { pushrodStep } from './pushrod-step.js';
import { pushrodTrials } from './pushrod-trials.js';
import { rockerMotion } from './rocker-motion.js';
import { rockerSweep } from './rocker-sweep.js';
import { separationSpeedEntry } from './separation-speed.js';
import { springLoads } from './spring-loads.js';
import { springRate } from './spring-rate.js';
import { springRateFromLoads } from './spring-rate-from-loads.js';
import { springSurge } from './spring-surge.js';
import { turnsFromPreload } from './turns-from-preload.js';
import { valveArea } from './valve-area.js';
import { valveLift } from './valve-lift.js';
import { valveToPiston } from './valve-to-piston.js';
import { valveToPistonFromCard } from './valve-to-piston-from-card.js';

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
  rockerMotion,
  pushrodLength,
  pushrodHalfLift,
  pushrodTrials,
  springRate,
  springRateFromLoads,
  nestedSprings,
  springLoads,
  springSurge,
  movingMass,
  followForce,
  separationSpeedEntry,
  valveToPiston,
  valveToPistonFromCard,
  camWindow,
  gapCorrection,
  hotMargin,
  parkAngle,
  valveArea,
];
