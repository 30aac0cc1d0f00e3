import { answer, defineCalculation } from '../../catalogue/index.js';
import { coverageFactor } from '../coverage.js';
import { asRatio, degreesOfFreedom, level } from './inputs.js';

export const coverageFactorEntry = defineCalculation({
  id: 'metrology.coverage-factor',
  subject: 'metrology',
  title: 'Coverage factor of a level of confidence',
  summary: 'By how much a standard uncertainty is multiplied to hold the true value with a given confidence.',
  inputs: {
    level: { kind: level.kind, symbol: level.symbol, meaning: level.meaning, unit: level.unit, range: level.range },
    degrees: { ...degreesOfFreedom, optional: true, meaning: 'degrees of freedom; left out: infinite (normal)' },
  },
  outputs: { coverage: { kind: 'ratio', symbol: 'k', meaning: 'coverage factor', unit: '', places: 3 } },
  formula: 'k = t at the share (1 + p)/2 of Student’s distribution with ν degrees of freedom',
  assumptions: ['Two-sided: the true value may lie on either side.'],
  sources: ['gum-welch'],
  example: {
    inputs: { level: '95.45 %', degrees: '10' },
    outputs: { coverage: '2.28' },
    from: 'JCGM 100, table G.2 (recalled); reference row O-27',
  },
  compute: (v) => answer({ coverage: asRatio(coverageFactor(v.level, v.degrees ?? Number.POSITIVE_INFINITY)) }),
});
