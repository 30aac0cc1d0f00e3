import type { Calculation } from '../../catalogue/index.js';
import { adapterSetting, adapterTorque } from './adapter.js';
import { assemblyPreload } from './assembly-preload.js';
import { boltDepth } from './bolt-depth.js';
import { boltResilience } from './bolt-resilience.js';
import { coneCompliance } from './cone-compliance.js';
import { embeddingLoss } from './embedding-loss.js';
import { permanentSet, preloadFromStretch } from './measured-stretch.js';
import { memberFit, memberStiffness } from './member-stiffness.js';
import { nutFactorTorque } from './nut-factor-torque.js';
import { centreOutward, crossPattern } from './orders.js';
import { otherNutFactor } from './other-nut-factor.js';
import { preloadBand } from './preload-band.js';
import { preloadFromTorque } from './preload-from-torque.js';
import { preloadTemperature } from './preload-temperature.js';
import { proofLoad } from './proof-load.js';
import { remainingAngle } from './remaining-angle.js';
import { retorqueDwell } from './retorque-dwell.js';
import { scatterOfMethod } from './scatter-of-method.js';
import { sleeveCompliance } from './sleeve-compliance.js';
import { stages } from './stages.js';
import { stretch } from './stretch.js';
import { surfaceTorque } from './surface-torque.js';
import { threadEngagement } from './thread-engagement.js';
import { threadGeometry } from './thread-geometry.js';
import { tighteningFactor } from './tightening-factor.js';
import { tighteningStress } from './tightening-stress.js';
import { torqueColumns } from './torque-columns.js';
import { torqueFromPreload } from './torque-from-preload.js';
import { torqueUnits } from './torque-units.js';
import { angleFromPreload, preloadFromAngle } from './turn.js';

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
  scatterOfMethod,
  stretch,
  boltResilience,
  sleeveCompliance,
  memberStiffness,
  memberFit,
  coneCompliance,
  angleFromPreload,
  preloadFromAngle,
  remainingAngle,
  preloadFromStretch,
  permanentSet,
  preloadTemperature,
  embeddingLoss,
  retorqueDwell,
  adapterSetting,
  adapterTorque,
  stages,
  crossPattern,
  centreOutward,
  threadEngagement,
  boltDepth,
];
