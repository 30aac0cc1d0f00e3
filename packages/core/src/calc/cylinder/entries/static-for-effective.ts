import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { staticForEffective as find } from '../trapped.js';
import { lengthOut, ratioOut, ratioWanted } from './inputs.js';
import { closingCaution, closingInputs, trappedOf } from './trapped-inputs.js';

export const staticForEffective = defineCalculation({
  id: 'cylinder.static-for-effective',
  subject: 'cylinder',
  title: 'Static ratio for an effective ratio',
  summary: 'Static compression ratio that leaves a wanted effective ratio with this intake closing.',
  inputs: {
    effective: { ...ratioWanted, symbol: 'CRe', meaning: 'effective (trapped) ratio wanted' },
    ...closingInputs,
  },
  outputs: {
    staticRatio: ratioOut('CR', 'static compression ratio'),
    remaining: lengthOut('s', 'stroke left at closing'),
  },
  formula: 'CR = 1 + (CRe − 1)·S/s, s from the exact slider-crank at 180° + IC + Δ',
  assumptions: ['As in cylinder.effective-ratio.'],
  sources: ['shop-practice', 'derived-here'],
  example: {
    inputs: {
      effective: '8.2745',
      stroke: '3.480 in',
      rodLength: '5.700 in',
      intakeCloses: '60 deg',
      closingPoint: 'seat',
    },
    outputs: { staticRatio: '10.00' },
    from: 'reference row MO-14 turned round',
  },
  compute: (v) => {
    const left = trappedOf(v);
    if (!left.ok) return left;
    const { remaining } = left.value;
    if (remaining <= 0) return conflict(['intakeCloses', 'laterBy'], 'no stroke is left after the intake closes');
    return answer({ staticRatio: find(v.effective, left.value), remaining }, [closingCaution(v)]);
  },
});
