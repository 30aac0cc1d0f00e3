import { type Length, mm } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { lashChange } from '../hot-lash.js';
import { ratio } from './inputs.js';

const growth = { kind: 'length', unit: 'mm', range: { from: mm(-10), to: mm(10) } } as const;

export const hotLash = defineCalculation({
  id: 'valvetrain.hot-lash',
  subject: 'valvetrain',
  title: 'Valve lash hot from lash cold',
  summary: 'How the lash of a pushrod engine changes as its parts grow; for setting cold what is specified hot.',
  inputs: {
    coldLash: {
      kind: 'length',
      symbol: 'gc',
      meaning: 'lash at the valve, cold',
      unit: 'mm',
      range: { from: 0, to: mm(10) },
    },
    ratio,
    pivotRise: { ...growth, symbol: 'a', meaning: 'rise of the rocker pivot above the camshaft line (block and head)' },
    pushrodGrowth: { ...growth, symbol: 'p', meaning: 'growth of lifter and pushrod together' },
    tipRise: {
      ...growth,
      symbol: 'v',
      meaning: 'rise of the valve tip above the camshaft line (block, head up to the seat, and valve)',
    },
  },
  outputs: {
    change: {
      kind: 'length',
      symbol: 'Δ',
      meaning: 'change of lash, positive when the gap grows',
      unit: 'mm',
      places: 3,
    },
    hotLash: {
      kind: 'length',
      symbol: 'gh',
      meaning: 'lash at the valve, hot; negative: the valve would be held open',
      unit: 'mm',
      places: 3,
    },
  },
  formula: 'gh = gc + (1 + R)·a − R·p − v',
  assumptions: [
    'Follower on the base circle, small angles, arm ends in line with the pivot. All growths from the camshaft line.',
    'The maker’s own figure for cold or hot decides; this only shows the direction and the size.',
  ],
  sources: ['derived-here'],
  example: {
    inputs: { coldLash: '0.30 mm', ratio: '1.5', pivotRise: '0.30 mm', pushrodGrowth: '0.20 mm', tipRise: '0.35 mm' },
    outputs: { change: '0.10 mm', hotLash: '0.40 mm' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const growths = { pivot: v.pivotRise, pushrod: v.pushrodGrowth, valveTip: v.tipRise };
    const change = lashChange(growths, v.ratio);
    const hotLash = (v.coldLash + change) as Length;
    const held = { code: 'held-open', text: 'no lash is left hot: the valve would be held open' };
    return answer({ change, hotLash }, hotLash <= 0 ? [held] : []);
  },
});
