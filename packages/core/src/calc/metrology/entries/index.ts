import type { Calculation } from '../../catalogue/index.js';
import { budget, budgetOfNumbers } from './budget.js';
import { coverageFactorEntry } from './coverage-factor.js';
import { rectangleCoverage } from './rectangle-coverage.js';
import { repeats, repeatsOfNumbers } from './repeats.js';
import { typeBLength, typeBNumber } from './type-b.js';

/** One file an entry, one line here. */
export const metrologyCalculations: readonly Calculation[] = [
  repeats,
  repeatsOfNumbers,
  typeBLength,
  typeBNumber,
  coverageFactorEntry,
  rectangleCoverage,
  budget,
  budgetOfNumbers,
];
