import type { Calculation } from '../../catalogue/index.js';
import { assemblyPreload } from './assembly-preload.js';
import { nutFactorTorque } from './nut-factor-torque.js';
import { otherNutFactor } from './other-nut-factor.js';
import { preloadBand } from './preload-band.js';
import { preloadFromTorque } from './preload-from-torque.js';
import { proofLoad } from './proof-load.js';
import { surfaceTorque } from './surface-torque.js';
import { threadGeometry } from './thread-geometry.js';
import { tighteningFactor } from './tightening-factor.js';
import { tighteningStress } from './tightening-stress.js';
import { torqueColumns } from './torque-columns.js';
import { torqueFromPreload } from './torque-from-preload.js';
import { torqueUnits } from './torque-units.js';

/** One file an entry, one line here. */
export const fastenerCalculations: readonly Calculation[] = [
  threadGeometry,
  proofLoad,
  nutFactorTorque,
  surfaceTorque,
  otherNutFactor,
  torqueFromPreload,
  preloadFromTorque,
  assemblyPreload,
  tighteningStress,
  preloadBand,
  tighteningFactor,
  torqueUnits,
  torqueColumns,
];
