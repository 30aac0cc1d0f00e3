import { answer, defineCalculation } from '../../catalogue/index.js';
import { effectiveRatio as find } from '../trapped.js';
import { lengthOut, ratioOut, staticRatio } from './inputs.js';
import { closingCaution, closingInputs, trappedOf } from './trapped-inputs.js';

export const effectiveRatio = defineCalculation({
  id: 'cylinder.effective-ratio',
  subject: 'cylinder',
  title: 'Effective (trapped) compression ratio from intake closing',
  summary: 'Ratio that counts only the stroke left after the intake valve has closed.',
  inputs: { staticRatio, ...closingInputs },
  outputs: {
    effective: ratioOut('CRe', 'effective ratio'),
    rise: lengthOut('y', 'piston above bottom dead centre at closing'),
    remaining: lengthOut('s', 'stroke left at closing'),
  },
  formula: 'CRe = 1 + (CR − 1)·s/S, s from the exact slider-crank at 180° + IC + Δ',
  assumptions: [
    'The charge is trapped at the closing that is given: which lift that belongs to is printed beside the number.',
    'Degree wheel zeroed at the true top of the piston.',
  ],
  sources: ['shop-practice', 'derived-here'],
  example: {
    inputs: {
      staticRatio: '10.0',
      stroke: '3.480 in',
      rodLength: '5.700 in',
      intakeCloses: '60 deg',
      closingPoint: 'seat',
    },
    outputs: { effective: '8.27', rise: '0.667 in' },
    from: 'reference row MO-14, exact slider-crank',
  },
  compute: (v) => {
    const left = trappedOf(v);
    if (!left.ok) return left;
    const { rise, remaining } = left.value;
    return answer({ effective: find(v.staticRatio, left.value), rise, remaining }, [closingCaution(v)]);
  },
});
