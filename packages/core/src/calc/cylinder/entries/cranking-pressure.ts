import { kilopascals, type Pressure } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { crankingPressure as find } from '../trapped.js';
import { ratioWanted } from './inputs.js';

export const ambient = {
  kind: 'pressure',
  symbol: 'p0',
  meaning: 'air pressure, absolute',
  unit: 'kPa',
  range: { above: 0, to: kilopascals(1000) },
  default: kilopascals(101.325),
} as const;
export const exponent = {
  kind: 'ratio',
  symbol: 'k',
  meaning: 'exponent: 1.2 to 1.3 fits a cranked engine, 1.4 is air without losses',
  unit: '',
  range: { from: 1, to: 1.7 },
  default: 1.3,
} as const;
export const estimate = { code: 'advisory', text: 'an estimate: the exponent is a fit, not physics' } as const;

export const crankingPressure = defineCalculation({
  id: 'cylinder.cranking-pressure',
  subject: 'cylinder',
  title: 'Cranking pressure from the trapped ratio',
  summary: 'Estimate of what a compression gauge shows.',
  inputs: {
    effective: { ...ratioWanted, symbol: 'CRe', meaning: 'effective (trapped) ratio, see cylinder.effective-ratio' },
    exponent,
    ambient,
  },
  outputs: {
    absolute: { kind: 'pressure', symbol: 'p', meaning: 'absolute pressure', unit: 'kPa', places: 0 },
    gauge: {
      kind: 'pressure',
      symbol: 'pg',
      meaning: 'pressure above the air, as a gauge shows it',
      unit: 'kPa',
      places: 0,
    },
  },
  formula: 'p = p0·CRe^k; pg = p − p0',
  assumptions: ['Warm engine, throttle open, healthy rings and valves. An estimate: makers’ limits decide.'],
  sources: ['cranking-pressure'],
  example: {
    inputs: { effective: '7.5', exponent: '1.3', ambient: '14.7 psi' },
    outputs: { absolute: '201.8 psi', gauge: '187.1 psi' },
    from: 'encyclopedia text (reference row MO-15)',
  },
  compute: (v) => {
    const absolute = find(v.effective, v.exponent, v.ambient);
    return answer({ absolute, gauge: (absolute - v.ambient) as Pressure }, [estimate]);
  },
});
