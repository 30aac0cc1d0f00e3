export { flatFaceError } from './anvil.js';
export {
  type Agreement,
  agreement,
  clearanceByRule,
  journalForClearance,
  oilClearance,
  type ShellPair,
  type Sizes,
  worstCaseClearance,
} from './clearance.js';
export { crushInterference, freeSpread } from './crush.js';
export { chooseWashers, endFloat, type FloatVerdict, judgeFloat, type WasherChoice } from './end-float.js';
export {
  type BearingFriction,
  frictionOf,
  type LoadedBearing,
  oilFlow,
  petroffVariable,
  projectedPressure,
  sommerfeldNumber,
  thinnestFilm,
  viscosityForNumber,
} from './film.js';
export { type FilmState, filmAtEccentricity, filmAtNumber, type OutsideTable } from './finite-bearing.js';
export {
  type ChartPair,
  checkChart,
  type GradeChart,
  type GradeClearance,
  gradeClearances,
  nearestGrade,
  type ShellGrade,
} from './grades.js';
export { bestHalves, type HalvesChoice, type HalvesSearch } from './halves.js';
export { type JournalForm, journalForm, type PlaneReading, type TaperRule } from './journal-form.js';
export { shortBearingAttitude, shortBearingEccentricity, shortBearingNumber } from './short-bearing.js';
export { type Warmth, warmClearance, warmed } from './thermal.js';
export { clearanceWithHalves, smallestUndersize, type UndersizeChoice, undersizeWall } from './undersize.js';
