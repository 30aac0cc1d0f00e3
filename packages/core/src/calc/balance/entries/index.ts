import type { Calculation } from '../../catalogue/index.js';
import { allowedUnbalance } from './allowed-unbalance.js';
import { balanceShafts } from './balance-shafts.js';
import { bobweight } from './bobweight.js';
import { bobweightUnequal } from './bobweight-unequal.js';
import { rodEndsByCentre } from './rod-ends-by-centre.js';
import { rodEndsByScale } from './rod-ends-by-scale.js';
import { shakingAt } from './shaking-at.js';
import { shakingForces } from './shaking-forces.js';
import { singlePlane } from './single-plane.js';
import { twoPlane } from './two-plane.js';
import { weightMatch } from './weight-match.js';

/** One file an entry, one line here. */
export const balanceCalculations: readonly Calculation[] = [
  bobweight,
  bobweightUnequal,
  rodEndsByScale,
  rodEndsByCentre,
  weightMatch,
  shakingForces,
  shakingAt,
  balanceShafts,
  singlePlane,
  twoPlane,
  allowedUnbalance,
];
