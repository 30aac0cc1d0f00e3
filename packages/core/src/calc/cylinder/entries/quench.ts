import type { Length } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { quench as find } from '../quench.js';
import { spreadOf } from '../spread.js';
import { lengthOut, signedLength, size, verdictOut } from './inputs.js';
import { gasketThickness } from './parts.js';
import { against } from './verdicts.js';

export const quench = defineCalculation({
  id: 'cylinder.quench',
  subject: 'cylinder',
  title: 'Quench: piston to head at top dead centre',
  summary: 'Deck clearance and compressed gasket together, cylinder by cylinder, against a window.',
  inputs: {
    deckClearances: {
      ...signedLength('d', 'deck clearance of each cylinder, below positive, proud negative'),
      list: true,
    },
    gasketThickness,
    least: { ...size('qmin', 'smallest quench allowed'), optional: true },
    most: { ...size('qmax', 'largest quench wanted'), optional: true },
  },
  outputs: {
    quenches: { ...lengthOut('q', 'quench of cylinder 1, 2, 3 ...'), list: true },
    smallest: lengthOut('qmin', 'smallest'),
    largest: lengthOut('qmax', 'largest'),
    verdict: verdictOut('all cylinders against the window'),
  },
  formula: 'q = d + tg',
  assumptions: ['Cold and standing still: rod stretch, rock and heat take from it, see cylinder.hot-quench.'],
  sources: ['shop-practice'],
  example: {
    inputs: {
      deckClearances: ['0.005 in', '0.008 in'],
      gasketThickness: '0.039 in',
      least: '0.035 in',
      most: '0.045 in',
    },
    outputs: { quenches: ['0.044 in', '0.047 in'], verdict: 'too large' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const quenches = v.deckClearances.map((one) => find(one, v.gasketThickness));
    const { least, most } = spreadOf(quenches);
    const small = against(least, v.least, v.most);
    return answer({
      quenches,
      smallest: least as Length,
      largest: most as Length,
      verdict: small === 'within' ? against(most, v.least, v.most) : small,
    });
  },
});
