import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { rectanglePairCoverage } from '../coverage.js';
import { EXPANSION } from '../materials.js';
import { asLength, asLengths, lengths } from './flavour.js';
import { asRatio, expansion, level } from './inputs.js';

export const calibrationError = defineCalculation({
  id: 'metrology.calibration-error',
  subject: 'metrology',
  title: 'Error of a caliper or micrometer against a gauge block',
  summary: 'Error of indication and its expanded uncertainty, where bounds (not repeats) are what is known.',
  inputs: {
    indication: { ...lengths.size, symbol: 'E', meaning: 'indication of the instrument' },
    standard: { ...lengths.size, symbol: 'S', meaning: 'length of the gauge block' },
    standardHalfWidth: { ...lengths.size, symbol: 'aS', meaning: 'half width ± of the gauge block', default: 0 },
    temperatureHalfWidth: {
      kind: 'temperature-difference',
      symbol: 'aT',
      meaning: 'half width ± of the temperature difference between instrument and block',
      unit: 'K',
      range: { from: 0, to: 100 },
      default: 0,
    },
    expansion: { ...expansion, symbol: 'α', meaning: 'mean thermal expansion of both', default: EXPANSION.steel },
    resolution: { ...lengths.size, symbol: 'r', meaning: 'smallest step of the scale or display' },
    mechanicalHalfWidth: {
      ...lengths.size,
      symbol: 'aM',
      meaning: 'half width ± of mechanical effects: measuring force, flatness of the jaws, Abbe error',
      default: 0,
    },
    level,
  },
  outputs: {
    error: { ...lengths.output, symbol: 'e', meaning: 'indication less true length' },
    contributions: {
      ...lengths.output,
      symbol: 'u',
      meaning: 'standard uncertainties: block, temperature, resolution, mechanical effects',
      list: true,
    },
    combined: { ...lengths.output, symbol: 'u', meaning: 'combined standard uncertainty' },
    edgeRatio: {
      kind: 'ratio',
      symbol: 'β',
      meaning: 'top over base of the trapezoid of the two largest',
      unit: '',
      places: 3,
    },
    coverage: { kind: 'ratio', symbol: 'k', meaning: 'coverage factor of that trapezoid', unit: '', places: 3 },
    expanded: { ...lengths.output, symbol: 'U', meaning: 'expanded uncertainty' },
  },
  formula: 'u² = (aS² + (S·α·aT)² + (r/2)² + aM²)/3; k from the trapezoid of the two largest; U = k·u',
  assumptions: ['All contributions are rectangular; the two largest outweigh the rest.'],
  sources: ['ea-caliper'],
  example: {
    inputs: {
      indication: '150.10 mm',
      standard: '150.00 mm',
      standardHalfWidth: '0.8 µm',
      temperatureHalfWidth: '2 K',
      expansion: '11.5 ppm/K',
      resolution: '0.05 mm',
      mechanicalHalfWidth: '50 µm',
    },
    outputs: { error: '0.10 mm', combined: '0.0323 mm', edgeRatio: '0.33', coverage: '1.83', expanded: '0.06 mm' },
    from: 'EA-4/02, supplement 2, S10 (recalled); reference row O-28',
  },
  compute: (v) => {
    const thermal = v.standard * v.expansion * v.temperatureHalfWidth;
    const halfWidths = [v.standardHalfWidth, thermal, v.resolution / 2, v.mechanicalHalfWidth];
    const [first, second] = [...halfWidths].sort((a, b) => b - a) as [number, number];
    if (first === 0) return conflict(['resolution'], 'no contribution is given: nothing is without uncertainty');
    const contributions = halfWidths.map((a) => a / Math.sqrt(3));
    const combined = Math.hypot(...contributions);
    const { edgeRatio, coverage } = rectanglePairCoverage(first, second, v.level);
    return answer({
      error: asLength(v.indication - v.standard),
      contributions: asLengths(contributions),
      combined: asLength(combined),
      edgeRatio: asRatio(edgeRatio),
      coverage: asRatio(coverage),
      expanded: asLength(coverage * combined),
    });
  },
});
