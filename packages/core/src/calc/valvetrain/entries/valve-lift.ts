import type { Length } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { valveLift as find } from '../lift.js';
import { ratio, smallLength } from './inputs.js';

export const valveLift = defineCalculation({
  id: 'valvetrain.valve-lift',
  subject: 'valvetrain',
  title: 'Valve lift from lobe lift, ratio and lash',
  summary: 'Lift at the valve, without and with lash.',
  inputs: {
    lobeLift: { ...smallLength, symbol: 'y', meaning: 'lift at the lobe' },
    ratio,
    lash: { ...smallLength, symbol: 'g', meaning: 'lash at the valve', default: 0 },
  },
  outputs: {
    gross: { kind: 'length', symbol: 'L₀', meaning: 'lift without lash', unit: 'mm', places: 3 },
    net: { kind: 'length', symbol: 'L', meaning: 'lift with lash taken off', unit: 'mm', places: 3 },
  },
  formula: 'L = y·R − g',
  assumptions: [
    'The ratio is taken as constant through the swing; a real arm only nears that.',
    'Lash also shortens the duration, which is not counted here. A lobe too low to take up the lash gives no lift.',
  ],
  sources: ['shop-practice'],
  example: {
    inputs: { lobeLift: '0.310 in', ratio: '1.5', lash: '0.020 in' },
    outputs: { gross: '0.465 in', net: '0.445 in' },
    from: 'reference row MO-25',
  },
  compute: (v) => answer({ gross: find(v.lobeLift, v.ratio, 0 as Length), net: find(v.lobeLift, v.ratio, v.lash) }),
});
