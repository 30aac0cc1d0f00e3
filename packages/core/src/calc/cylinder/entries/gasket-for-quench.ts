import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { spreadOf } from '../spread.js';
import { lengthOut, signedLength, size } from './inputs.js';

export const gasketForQuench = defineCalculation({
  id: 'cylinder.gasket-for-quench',
  subject: 'cylinder',
  title: 'Head gasket for a quench',
  summary: 'Thickness that keeps the least quench at the highest piston, and the thinnest gasket on offer that does.',
  inputs: {
    deckClearances: {
      ...signedLength('d', 'deck clearance of each cylinder, below positive, proud negative'),
      list: true,
    },
    least: size('qmin', 'smallest quench allowed'),
    thicknesses: { ...size('tg', 'compressed thicknesses on offer'), list: true, optional: true },
  },
  outputs: {
    needed: lengthOut('t', 'thickness needed; 0 or below: any gasket will do'),
    chosen: { ...lengthOut('tg', 'thinnest on offer that is thick enough'), optional: true },
    smallestQuench: { ...lengthOut('qmin', 'quench of the highest piston with it'), optional: true },
    largestQuench: { ...lengthOut('qmax', 'quench of the lowest piston with it'), optional: true },
  },
  formula: 't = qmin − dmin; the least tg ≥ t',
  assumptions: ['Cold and standing still.'],
  sources: ['derived-here'],
  example: {
    inputs: {
      deckClearances: ['-0.002 in', '0.004 in'],
      least: '0.040 in',
      thicknesses: ['0.039 in', '0.045 in', '0.051 in'],
    },
    outputs: { needed: '0.042 in', chosen: '0.045 in', smallestQuench: '0.043 in', largestQuench: '0.049 in' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const { least, most } = spreadOf(v.deckClearances);
    const needed = (v.least - least) as Length;
    if (v.thicknesses === undefined) {
      return answer({ needed, chosen: undefined, smallestQuench: undefined, largestQuench: undefined });
    }
    const enough = v.thicknesses.filter((one) => one >= needed - 1e-10);
    if (enough.length === 0)
      return conflict(['thicknesses', 'deckClearances', 'least'], 'none on offer is thick enough');
    const chosen = Math.min(...enough) as Length;
    return answer({
      needed,
      chosen,
      smallestQuench: (chosen + least) as Length,
      largestQuench: (chosen + most) as Length,
    });
  },
});
