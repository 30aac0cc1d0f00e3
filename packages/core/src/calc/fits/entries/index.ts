import type { Calculation } from '../../catalogue/index.js';
import { assemblyTemperatures } from './assembly-temperatures.js';
import { guideFinish } from './guide-finish.js';
import { hotGrip } from './hot-grip.js';
import { interferenceNeeded } from './interference-needed.js';
import { limitsOfFit } from './limits-of-fit.js';
import { limitsOfSize } from './limits-of-size.js';
import { material } from './material.js';
import { pickup } from './pickup.js';
import { pressFit } from './press-fit.js';
import { runningFit, warmFit } from './running-fit.js';
import { toleranceUnit } from './tolerance-unit.js';

/** One file an entry, one line here. */
export const fitCalculations: readonly Calculation[] = [
  toleranceUnit,
  limitsOfSize,
  limitsOfFit,
  pressFit,
  interferenceNeeded,
  hotGrip,
  assemblyTemperatures,
  guideFinish,
  runningFit,
  warmFit,
  pickup,
  material,
];
