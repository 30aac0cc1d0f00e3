import type { Length } from '../../../quantity/index.js';
import { answer, defineCalculation, reversedEnds, verdictOf } from '../../catalogue/index.js';
import { clearance, clearanceOut, highest, lowest } from './inputs.js';

export const threadGauge = defineCalculation({
  id: 'bearings.thread-gauge',
  subject: 'bearings',
  title: 'Oil clearance from a squeezed plastic thread',
  summary: 'Tightest and loosest place along the strip, the taper it shows, and each against its own limit.',
  inputs: {
    readings: {
      ...clearance,
      symbol: 'c',
      meaning: 'clearance read at places along the strip, at its widest there',
      list: true,
    },
    lowest,
    highest,
  },
  outputs: {
    tightest: { ...clearanceOut, symbol: 'c min', meaning: 'smallest: judged as too tight', places: 3 },
    loosest: { ...clearanceOut, symbol: 'c max', meaning: 'largest: judged as too loose', places: 3 },
    taper: { ...clearanceOut, symbol: 'Δc', meaning: 'indicated taper', places: 3 },
    verdict: {
      kind: 'text',
      symbol: 'verdict',
      meaning: 'in, below (tight end), above (loose end), below and above, or no data',
    },
  },
  formula: 'too tight when min c < C min; too loose when max c > C max; taper = max c − min c',
  assumptions: [
    'Dry parts, cap at its torque, crank not turned. Resolution about 0.013 mm (0.0005 in), common practice.',
    'A strip does not see out-of-round, and says nothing under a worn or eccentric shell edge.',
  ],
  sources: ['thread-gauge'],
  example: {
    inputs: { readings: ['0.051 mm', '0.038 mm'], lowest: '0.028 mm', highest: '0.048 mm' },
    outputs: { tightest: '0.038 mm', loosest: '0.051 mm', taper: '0.013 mm', verdict: 'above' },
    from: 'reference row O-18; procedure printed in the source, readings ours',
  },
  compute: (v) => {
    const reversed = reversedEnds(v, ['lowest', 'highest']);
    if (reversed) return reversed;
    const tightest = Math.min(...v.readings) as Length;
    const loosest = Math.max(...v.readings) as Length;
    const [low, high] = [tightest, loosest].map((one) => verdictOf(one, v.lowest, v.highest));
    const outside = [low === 'below' && 'below', high === 'above' && 'above'].filter((one) => one !== false);
    return answer({
      tightest,
      loosest,
      taper: (loosest - tightest) as Length,
      verdict: outside.length > 0 ? outside.join(' and ') : low === 'no data' ? 'no data' : 'in',
    });
  },
});
