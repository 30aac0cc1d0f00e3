import { mm } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { COARSEST_GRADE, FINEST_GRADE, toleranceUnit as find, standardTolerance } from '../iso-grades.js';
import { microns, micronsOut, nominal } from './inputs.js';

export const toleranceUnit = defineCalculation({
  id: 'fits.tolerance-grade',
  subject: 'fits',
  title: 'Standard tolerance of a size and grade',
  summary: 'Width of a grade IT1 to IT18 from the table, with the range, its mean, the tolerance unit and the formula.',
  inputs: {
    size: nominal,
    grade: {
      kind: 'count',
      symbol: 'IT',
      meaning: 'number of the grade: 7 for IT7',
      range: { from: FINEST_GRADE, to: COARSEST_GRADE },
    },
  },
  outputs: {
    tolerance: { ...micronsOut, symbol: 'IT', meaning: 'standard tolerance from the table: this one counts' },
    rangeOver: { kind: 'length', symbol: 'over', meaning: 'range: over this size', unit: 'mm', places: 0 },
    rangeUpTo: { kind: 'length', symbol: 'up to', meaning: 'range: up to and with this size', unit: 'mm', places: 0 },
    mean: { kind: 'length', symbol: 'Dm', meaning: 'geometric mean of the range', unit: 'mm', places: 3 },
    unit: { ...micronsOut, symbol: 'i', meaning: 'standard tolerance unit', places: 4 },
    byFormula: {
      ...micronsOut,
      symbol: 'k·i',
      meaning: 'the grade by the formula, from IT5: a check of the table',
      places: 2,
      optional: true,
    },
  },
  formula: 'Dm = √(over·up to); i = 0.45·∛Dm + 0.001·Dm (mm in, µm out); IT5 … IT18 = 7, 10, 16, 25, 40, 64, 100 …·i',
  assumptions: ['A size at the upper end of a range belongs to it. The table rounds: up to 1 µm beside the formula.'],
  sources: ['iso-286-1', 'iso-286-2'],
  example: {
    inputs: { size: '25 mm', grade: 7 },
    outputs: { tolerance: '21 µm', mean: '23.238 mm', unit: '1.3074 µm', byFormula: '20.92 µm' },
    from: 'reference row O-33; 16·i by hand arithmetic',
  },
  compute: (v) => {
    // The ranges of the inputs are those of the table.
    const found = find(v.size, v.grade)!;
    const tolerance = standardTolerance(v.size, v.grade)!;
    return answer({
      tolerance: microns(tolerance),
      rangeOver: mm(found.over),
      rangeUpTo: mm(found.upTo),
      mean: mm(found.mean),
      unit: microns(found.unit),
      byFormula: found.grade === undefined ? undefined : microns(found.grade),
    });
  },
});
