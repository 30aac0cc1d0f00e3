import type { Calculation } from '../../catalogue/index.js';
import { parallelism, runout, squareness } from './alignment.js';
import { boreShape } from './bore-shape.js';
import { budget, budgetOfNumbers } from './budget.js';
import { calibrationError } from './calibration-error.js';
import { circleFit, roundTrace } from './circle-fit.js';
import { clearanceAtReference } from './clearance-at-reference.js';
import { clearanceUncertainty } from './clearance-uncertainty.js';
import { comparisonWithStandard } from './comparison-with-standard.js';
import { conformanceLength, conformanceNumber } from './conformance.js';
import { conicity } from './conicity.js';
import { cosineError } from './cosine-error.js';
import { coverageFactorEntry } from './coverage-factor.js';
import { criticalValue } from './critical-value.js';
import { compressionSpread, leakDown } from './cylinder-tests.js';
import { flatness, flatnessOfGrid, straightedge } from './flatness.js';
import { gasketGrade } from './gasket-grade.js';
import { gaugeStudy, gaugeStudyOfNumbers } from './gauge-study.js';
import { instrumentCorrection, twoStandards } from './instrument-correction.js';
import { lineFit, lineFitOfNumbers } from './line-fit.js';
import { linerProtrusion } from './liners.js';
import { lobedShaft } from './lobes.js';
import { outlierCalculations } from './outliers.js';
import { plateChange } from './plate-change.js';
import { printedPair } from './printed-pair.js';
import { rectangleCoverage } from './rectangle-coverage.js';
import { repeats, repeatsOfNumbers } from './repeats.js';
import { sisterReadings } from './sister-readings.js';
import { readingAtTemperatureEntry, sizeAtReferenceEntry } from './size-at-reference.js';
import { typeBLength, typeBNumber } from './type-b.js';
import { betweenGroups, betweenGroupsOfNumbers } from './variance-between.js';
import { verdictLength, verdictNumber } from './verdict.js';
import { wearLimit } from './wear-limit.js';

/** One file an entry, one line here. */
export const metrologyCalculations: readonly Calculation[] = [
  sizeAtReferenceEntry,
  readingAtTemperatureEntry,
  clearanceAtReference,
  instrumentCorrection,
  twoStandards,
  repeats,
  repeatsOfNumbers,
  typeBLength,
  typeBNumber,
  coverageFactorEntry,
  rectangleCoverage,
  calibrationError,
  budget,
  budgetOfNumbers,
  comparisonWithStandard,
  clearanceUncertainty,
  conformanceLength,
  conformanceNumber,
  verdictLength,
  verdictNumber,
  gaugeStudy,
  gaugeStudyOfNumbers,
  betweenGroups,
  betweenGroupsOfNumbers,
  ...outlierCalculations,
  lobedShaft,
  circleFit,
  roundTrace,
  lineFit,
  lineFitOfNumbers,
  flatness,
  flatnessOfGrid,
  straightedge,
  squareness,
  parallelism,
  runout,
  boreShape,
  conicity,
  wearLimit,
  linerProtrusion,
  gasketGrade,
  plateChange,
  compressionSpread,
  leakDown,
  cosineError,
  sisterReadings,
  printedPair,
  criticalValue,
];
