import { kilopascals, type Pressure } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { ratioFromPressure as find } from '../trapped.js';
import { ambient, estimate, exponent } from './cranking-pressure.js';
import { ratioOut } from './inputs.js';

export const ratioFromPressure = defineCalculation({
  id: 'cylinder.ratio-from-pressure',
  subject: 'cylinder',
  title: 'Trapped ratio that a cranking pressure speaks for',
  summary: 'Turns a compression gauge reading back into a trapped ratio; an estimate.',
  inputs: {
    gauge: {
      kind: 'pressure',
      symbol: 'pg',
      meaning: 'gauge reading, above the air',
      unit: 'kPa',
      range: { above: 0, to: kilopascals(20_000) },
    },
    exponent,
    ambient,
  },
  outputs: { effective: ratioOut('CRe', 'effective (trapped) ratio') },
  formula: 'CRe = ((pg + p0)/p0)^(1/k)',
  assumptions: ['As in cylinder.cranking-pressure.'],
  sources: ['cranking-pressure'],
  example: {
    inputs: { gauge: '187.09 psi', exponent: '1.3', ambient: '14.7 psi' },
    outputs: { effective: '7.50' },
    from: 'reference row MO-15 turned round',
  },
  compute: (v) => answer({ effective: find((v.gauge + v.ambient) as Pressure, v.exponent, v.ambient) }, [estimate]),
});
