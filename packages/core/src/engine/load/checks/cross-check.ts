import type { Engine } from '../../model.js';
import type { BuiltLimit } from '../build/limits.js';
import type { SheetReader } from '../reader.js';
import type { Sheet } from '../schema.js';
import { checkCam } from './cam.js';
import { checkFiring } from './firing.js';
import { checkFits } from './fit-cautions.js';
import { checkGradeCharts } from './grade-charts.js';
import { checkHeads } from './heads.js';
import { checkJoints } from './joints.js';
import { checkLobeLift } from './lifts.js';
import { checkLimits } from './limits.js';
import { checkPistonStock } from './piston-stock.js';
import { checkRunning } from './running.js';
import { checkSizeSteps, checkStockSteps } from './size-steps.js';
import { checkSizes } from './sizes.js';
import { checkSprings } from './springs.js';

/** Holds the sheet's figures against each other: faults where no engine can be so, cautions where a print may be wrong. */
export function crossCheck(engine: Engine, sheet: Sheet, limits: readonly BuiltLimit[], reader: SheetReader): void {
  checkFiring(engine.layout, reader);
  checkSizes(engine, reader);
  checkHeads(engine, reader);
  checkJoints(engine.joints, sheet, reader);
  checkLimits(limits, reader);
  checkFits(limits, reader);
  checkSizeSteps(limits, reader);
  checkStockSteps(engine, reader);
  checkPistonStock(engine, reader);
  checkGradeCharts(engine, limits, reader);
  checkSprings(engine, limits, reader);
  checkLobeLift(engine, limits, reader);
  checkCam(engine, reader);
  checkRunning(engine, reader);
}
