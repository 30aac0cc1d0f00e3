/** A pin, a stem or a shaft in its hole: as measured, and at temperature. */
import { celsius, type Length, mm, type Ratio, type TemperatureDifference } from '../../../quantity/index.js';
import { answer, defineCalculation, reversedEnds, verdictOf } from '../../catalogue/index.js';
import { grown } from '../thermal-fit.js';
import { expansion, size, temperature } from './inputs.js';

const limit = {
  kind: 'length',
  unit: 'mm',
  range: { from: mm(-10), to: mm(10) },
  optional: true,
} as const;
const window = {
  lowest: { ...limit, symbol: 'C min', meaning: 'lowest clearance accepted; negative: interference' },
  highest: { ...limit, symbol: 'C max', meaning: 'highest clearance accepted' },
} as const;
const hole = { ...size, symbol: 'B', meaning: 'hole: pin bore, guide or bushing, its smallest diameter' } as const;
const shaft = { ...size, symbol: 'S', meaning: 'pin, stem or shaft, its largest diameter' } as const;
const clearance = { kind: 'length', unit: 'mm', places: 4 } as const;
const verdict = {
  kind: 'text',
  symbol: 'verdict',
  meaning: 'in, below or above the window; no data where no limit is given',
} as const;

export const runningFit = defineCalculation({
  id: 'fits.clearance',
  subject: 'fits',
  title: 'Fit of a pin, a stem or a shaft in its hole',
  summary: 'Clearance on the diameter, negative for a press, and for each unit of diameter, against a window.',
  inputs: { hole, shaft, ...window },
  outputs: {
    clearance: { ...clearance, symbol: 'C', meaning: 'clearance on the diameter; negative: interference' },
    share: { kind: 'ratio', symbol: 'C/S', meaning: 'clearance for each unit of diameter', unit: '', places: 5 },
    verdict,
  },
  formula: 'C = B − S',
  assumptions: ['Both at one temperature; a guide or bushing is measured after it was pressed in.'],
  sources: ['derived-here'],
  example: {
    inputs: { hole: '0.3435 in', shaft: '0.3415 in', lowest: '0.0010 in', highest: '0.0027 in' },
    outputs: { clearance: '0.0020 in', verdict: 'in' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const reversed = reversedEnds(v, ['lowest', 'highest']);
    if (reversed) return reversed;
    const found = (v.hole - v.shaft) as Length;
    return answer({
      clearance: found,
      share: (found / v.shaft) as Ratio,
      verdict: verdictOf(found, v.lowest, v.highest),
    });
  },
});

export const warmFit = defineCalculation({
  id: 'fits.clearance-at-temperature',
  subject: 'fits',
  title: 'Fit of a pin, a stem or a shaft hot or cold',
  summary: 'Clearance with hole and shaft of different materials, each at its own temperature.',
  inputs: {
    hole,
    shaft,
    holeExpansion: { ...expansion, symbol: 'αB', meaning: 'thermal expansion of the part with the hole' },
    shaftExpansion: { ...expansion, symbol: 'αS', meaning: 'thermal expansion of the pin or shaft' },
    holeTemperature: { ...temperature, symbol: 'TB', meaning: 'temperature of the part with the hole' },
    shaftTemperature: {
      ...temperature,
      symbol: 'TS',
      meaning: 'temperature of the pin or shaft; left out: as the hole',
      optional: true,
    },
    measuredAt: { ...temperature, symbol: 'T0', meaning: 'temperature at which the sizes hold', default: celsius(20) },
    ...window,
  },
  outputs: {
    cold: { ...clearance, symbol: 'C0', meaning: 'clearance at the measuring temperature' },
    clearance: { ...clearance, symbol: 'C', meaning: 'clearance at the given temperatures; negative: interference' },
    change: { ...clearance, symbol: 'ΔC', meaning: 'change; positive: it opens' },
    verdict,
  },
  formula: 'C = B·(1 + αB·(TB − T0)) − S·(1 + αS·(TS − T0))',
  assumptions: ['Free parts, each at one temperature; a steel pin in an alloy piston opens as it warms.'],
  sources: ['derived-here'],
  example: {
    inputs: {
      hole: '22.005 mm',
      shaft: '22.000 mm',
      holeExpansion: '20 ppm/K',
      shaftExpansion: '11.7 ppm/K',
      holeTemperature: '120 °C',
    },
    outputs: { cold: '0.0050 mm', clearance: '0.0233 mm', change: '0.0183 mm' },
    from: 'hand arithmetic: 22 mm × 8.3 ppm/K × 100 K = 0.0183 mm',
  },
  compute: (v) => {
    const reversed = reversedEnds(v, ['lowest', 'highest']);
    if (reversed) return reversed;
    const holeRise = (v.holeTemperature - v.measuredAt) as TemperatureDifference;
    const shaftRise = ((v.shaftTemperature ?? v.holeTemperature) - v.measuredAt) as TemperatureDifference;
    const cold = (v.hole - v.shaft) as Length;
    const found = (grown(v.hole, v.holeExpansion, holeRise) - grown(v.shaft, v.shaftExpansion, shaftRise)) as Length;
    return answer({
      cold,
      clearance: found,
      change: (found - cold) as Length,
      verdict: verdictOf(found, v.lowest, v.highest),
    });
  },
});
