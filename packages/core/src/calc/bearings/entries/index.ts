import type { Calculation } from '../../catalogue/index.js';
import { clearanceRule } from './clearance-rule.js';
import { crush } from './crush.js';
import { endFloat, endFloatFromSizes } from './end-float.js';
import { filmThickness } from './film-thickness.js';
import { finiteBearing } from './finite-bearing.js';
import { flatAnvil } from './flat-anvil.js';
import { housingFormCheck, journalFormCheck } from './form.js';
import { gradeChart } from './grade-chart.js';
import { gradeSelection } from './grade-selection.js';
import { grindTarget } from './grind-target.js';
import { installedClearance } from './installed-clearance.js';
import { mixedHalves } from './mixed-halves.js';
import { oilClearance } from './oil-clearance.js';
import { petroff } from './petroff.js';
import { shellSelection } from './shell-selection.js';
import { shortBearing, shortBearingFilm } from './short-bearing.js';
import { sommerfeld } from './sommerfeld.js';
import { spread } from './spread.js';
import { threadGauge } from './thread-gauge.js';
import { thrustWashers } from './thrust-washers.js';
import { undersizeChoice } from './undersize-choice.js';
import { undersizeWall } from './undersize-wall.js';
import { viscosityNeeded } from './viscosity.js';
import { warmClearance } from './warm-clearance.js';
import { worstCase } from './worst-case.js';

/** One file an entry, one line here. */
export const bearingCalculations: readonly Calculation[] = [
  oilClearance,
  installedClearance,
  worstCase,
  clearanceRule,
  flatAnvil,
  gradeChart,
  gradeSelection,
  shellSelection,
  undersizeWall,
  undersizeChoice,
  grindTarget,
  mixedHalves,
  crush,
  spread,
  journalFormCheck,
  housingFormCheck,
  threadGauge,
  endFloat,
  endFloatFromSizes,
  thrustWashers,
  warmClearance,
  sommerfeld,
  viscosityNeeded,
  finiteBearing,
  filmThickness,
  shortBearing,
  shortBearingFilm,
  petroff,
];
