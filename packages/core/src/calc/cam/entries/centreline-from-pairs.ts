import type { Angle } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { equalLifts } from '../equal-lifts.js';
import { oneStop, shownAngle, stops, wheel, wheelTop } from './lobe-inputs.js';

export const centrelineFromPairs = defineCalculation({
  id: 'cam.centreline-from-pairs',
  subject: 'cam',
  title: 'Lobe centreline from several pairs of equal lift, wheel error taken off',
  summary: 'Middle of a lobe from pairs of wheel readings at equal lifts, with the doubt of the mean.',
  inputs: {
    opening: {
      ...wheel,
      symbol: 'a',
      meaning: 'readings on the opening flank in crank degrees after top dead centre (before: negative)',
      list: true,
    },
    closing: {
      ...wheel,
      symbol: 'b',
      meaning: 'readings on the closing flank, each at the lift of the opening reading of the same place',
      list: true,
    },
    ...stops,
  },
  outputs: {
    centreline: { ...shownAngle, symbol: 'CL', meaning: 'centreline after top dead centre (before: negative)' },
    standardUncertainty: {
      ...shownAngle,
      places: 3,
      symbol: 'u',
      meaning: 'standard uncertainty of the centreline from the scatter of the pairs; not known from one pair',
      optional: true,
    },
    middles: {
      ...shownAngle,
      symbol: '(a+b)/2 − top',
      meaning: 'middle of each pair, wheel error taken off',
      list: true,
    },
    spread: { ...shownAngle, symbol: 'max − min', meaning: 'largest middle minus smallest' },
    wheelTop: { ...shownAngle, symbol: 'top', meaning: 'what the wheel reads at true top dead centre' },
  },
  formula: 'top = (s₁ + s₂)/2; CL = mean of (a + b)/2 − top; u = s/√n',
  assumptions: [
    'Flanks that are alike; unlike flanks let the middles drift with the lift, which the spread shows.',
    'All readings were approached turning in the running sense, to keep slack out.',
    'Readings are signed: before top dead centre negative.',
  ],
  sources: ['degree-wheel', 'gum-type-a'],
  example: {
    inputs: { opening: ['60.0 deg'], closing: ['145.5 deg'], stopBefore: '-36.75 deg', stopAfter: '35.25 deg' },
    outputs: { wheelTop: '-0.75 deg', centreline: '103.50 deg' },
    from: 'reference row MO-21 with the stop readings of the same row taken off: 102.75 + 0.75',
  },
  compute: (v) => {
    const top = wheelTop(v);
    if (top === undefined) return oneStop();
    if (v.opening.length !== v.closing.length) {
      return conflict(['opening', 'closing'], 'each opening reading needs its closing reading');
    }
    const crossed = v.opening.findIndex((a, at) => v.closing[at]! <= a);
    if (crossed >= 0) {
      return conflict(['opening', 'closing'], `pair ${crossed + 1}: the closing flank comes after the opening flank`);
    }
    return answer({ ...equalLifts(v.opening, v.closing, top), wheelTop: top as Angle });
  },
});
