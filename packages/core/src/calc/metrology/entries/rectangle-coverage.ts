import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { rectanglePairCoverage } from '../coverage.js';
import { asLength, lengths } from './flavour.js';
import { asRatio, level } from './inputs.js';

export const rectangleCoverage = defineCalculation({
  id: 'metrology.rectangle-coverage',
  subject: 'metrology',
  title: 'Expanded uncertainty where two rectangular contributions rule',
  summary: 'Two rectangles together make a trapezoid; k = 2 would overstate it.',
  inputs: {
    halfWidths: {
      ...lengths.size,
      symbol: 'a',
      meaning: 'half widths of the two rectangular contributions that outweigh the rest',
      list: true,
    },
    others: {
      ...lengths.size,
      symbol: 'u₀',
      meaning: 'standard uncertainties of the other contributions',
      list: true,
      optional: true,
    },
    level,
  },
  outputs: {
    combined: { ...lengths.output, symbol: 'u', meaning: 'combined standard uncertainty' },
    edgeRatio: { kind: 'ratio', symbol: 'β', meaning: 'top over base of the trapezoid', unit: '', places: 3 },
    coverage: { kind: 'ratio', symbol: 'k', meaning: 'coverage factor', unit: '', places: 3 },
    expanded: { ...lengths.output, symbol: 'U', meaning: 'expanded uncertainty' },
  },
  formula: 'β = |a1 − a2|/(a1 + a2); k = (1 − √((1 − p)(1 − β²)))/√((1 + β²)/6); U = k·√(Σa²/3 + Σu₀²)',
  assumptions: [
    'The other contributions are small against the two.',
    'p on the slope of the trapezoid; on its flat k = p(1 + β)/2/√((1 + β²)/6).',
  ],
  sources: ['ea-caliper', 'derived-here'],
  example: {
    inputs: { halfWidths: ['50 µm', '25 µm'], others: ['0.46 µm', '2.0 µm'] },
    outputs: { coverage: '1.83', edgeRatio: '0.33', expanded: '0.06 mm' },
    from: 'EA-4/02, supplement 2, S10 (recalled); reference row O-28',
  },
  compute: (v) => {
    const [one, other] = v.halfWidths;
    if (one === undefined || other === undefined || v.halfWidths.length > 2 || one + other === 0)
      return conflict(['halfWidths'], 'two half widths are needed, not both 0');
    const combined = Math.hypot(...v.halfWidths.map((a) => a / Math.sqrt(3)), ...(v.others ?? []));
    const { edgeRatio, coverage } = rectanglePairCoverage(one, other, v.level);
    return answer({
      combined: asLength(combined),
      edgeRatio: asRatio(edgeRatio),
      coverage: asRatio(coverage),
      expanded: asLength(coverage * combined),
    });
  },
});
