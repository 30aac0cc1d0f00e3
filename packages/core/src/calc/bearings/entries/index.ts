import type { Calculation } from '../../catalogue/index.js';
import { clearanceRule } from './clearance-rule.js';
import { flatAnvil } from './flat-anvil.js';
import { installedClearance } from './installed-clearance.js';
import { oilClearance } from './oil-clearance.js';
import { worstCase } from './worst-case.js';

/** One file an entry, one line here. */
export const bearingCalculations: readonly Calculation[] = [
  oilClearance,
  installedClearance,
  worstCase,
  clearanceRule,
  flatAnvil,
];
