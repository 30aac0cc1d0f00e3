import { type Length, printedAlike } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { height, verdictOut } from './inputs.js';

const inchOut = (symbol: string, meaning: string) =>
  ({ kind: 'length', symbol, meaning, unit: 'in', places: 5 }) as const;
const places = { kind: 'count', range: { from: 0, to: 6 } } as const;

export const printedLimits = defineCalculation({
  id: 'cylinder.printed-limits',
  subject: 'cylinder',
  title: 'Do the millimetres and inches printed beside one another agree?',
  summary: 'Finds misprints in a table of sizes: units that disagree, and a lower limit above the upper.',
  inputs: {
    upperMetric: height('U', 'upper or only limit as printed in mm'),
    upperInch: height('U″', 'the same limit as printed in inches'),
    lowerMetric: { ...height('L', 'lower limit as printed in mm'), optional: true },
    lowerInch: { ...height('L″', 'the same as printed in inches'), optional: true },
    metricPlaces: { ...places, symbol: 'p', meaning: 'decimal places printed in mm', default: 3 },
    inchPlaces: { ...places, symbol: 'p″', meaning: 'decimal places printed in inches', default: 4 },
  },
  outputs: {
    upperComputed: inchOut('U/25.4', 'upper limit in mm turned into inches'),
    lowerComputed: { ...inchOut('L/25.4', 'lower limit in mm turned into inches'), optional: true },
    upperDifference: inchOut('ΔU', 'computed less printed'),
    lowerDifference: { ...inchOut('ΔL', 'computed less printed'), optional: true },
    verdict: verdictOut('whether the prints agree'),
  },
  formula: '|mm/25.4 − in| ≤ 0.6 of the last printed digit of the coarser; lower ≤ upper in both units',
  assumptions: ['A disagreement is a misprint to be shown: which of the two is right only another source can tell.'],
  sources: ['oversize-table', 'si-units'],
  example: {
    inputs: { lowerMetric: '81.006 mm', upperMetric: '81.019 mm', lowerInch: '3.1892 in', upperInch: '3.1897 in' },
    outputs: { lowerComputed: '3.18921 in', upperComputed: '3.18972 in', verdict: 'agree' },
    from: 'printed table (reference row O-05)',
  },
  compute: (v) => {
    const { lowerMetric, lowerInch, upperMetric, upperInch } = v;
    if ((lowerMetric === undefined) !== (lowerInch === undefined)) {
      return conflict(['lowerMetric', 'lowerInch'], 'the lower limit is needed in both units or in neither');
    }
    const alike = (metric: Length, inches: Length) =>
      printedAlike(
        'length',
        { value: metric, unit: 'mm', places: v.metricPlaces },
        { value: inches, unit: 'in', places: v.inchPlaces },
      );
    const both = lowerMetric !== undefined && lowerInch !== undefined;
    const faults = [
      both && !alike(lowerMetric, lowerInch) && 'the lower limits disagree',
      !alike(upperMetric, upperInch) && 'the upper limits disagree',
      both && lowerMetric > upperMetric && 'the lower limit in mm is above the upper',
      both && lowerInch > upperInch && 'the lower limit in inches is above the upper',
    ].filter((one) => one !== false);
    return answer({
      upperComputed: upperMetric,
      lowerComputed: lowerMetric,
      upperDifference: (upperMetric - upperInch) as Length,
      lowerDifference: both ? ((lowerMetric - lowerInch) as Length) : undefined,
      verdict: faults.length === 0 ? 'agree' : faults.join('; '),
    });
  },
});
