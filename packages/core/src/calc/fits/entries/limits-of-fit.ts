import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { deviationsOf } from '../iso-class.js';
import { microns, micronsOut, nominal, toleranceClass } from './inputs.js';

export const limitsOfFit = defineCalculation({
  id: 'fits.limits-of-fit',
  subject: 'fits',
  title: 'Clearance or interference of a fit',
  summary: 'Least and most interference of a hole class and a shaft class such as H7/p6, and what kind of fit it is.',
  inputs: {
    size: nominal,
    hole: { ...toleranceClass, symbol: 'hole', meaning: 'class of the hole, capital letter: H7' },
    shaft: { ...toleranceClass, symbol: 'shaft', meaning: 'class of the shaft, small letter: p6' },
  },
  outputs: {
    holeUpper: { ...micronsOut, symbol: 'ES', meaning: 'upper deviation of the hole' },
    holeLower: { ...micronsOut, symbol: 'EI', meaning: 'lower deviation of the hole' },
    shaftUpper: { ...micronsOut, symbol: 'es', meaning: 'upper deviation of the shaft' },
    shaftLower: { ...micronsOut, symbol: 'ei', meaning: 'lower deviation of the shaft' },
    leastInterference: { ...micronsOut, symbol: 'δ min', meaning: 'least interference; negative: clearance' },
    mostInterference: { ...micronsOut, symbol: 'δ max', meaning: 'most interference; negative: clearance' },
    leastClearance: { ...micronsOut, symbol: 'C min', meaning: 'least clearance; negative: interference' },
    mostClearance: { ...micronsOut, symbol: 'C max', meaning: 'most clearance; negative: interference' },
    fit: { kind: 'text', symbol: 'fit', meaning: 'clearance, transition or interference' },
  },
  formula: 'δ min = ei − ES; δ max = es − EI; C = −δ',
  assumptions: ['Interference is on the diameter and positive when the shaft is larger; it is never clipped at zero.'],
  sources: ['iso-286-1', 'iso-286-2'],
  example: {
    inputs: { size: '40 mm', hole: 'H7', shaft: 'p6' },
    outputs: {
      holeUpper: '25 µm',
      holeLower: '0 µm',
      shaftUpper: '42 µm',
      shaftLower: '26 µm',
      leastInterference: '1 µm',
      mostInterference: '42 µm',
      fit: 'interference',
    },
    from: 'reference row O-34',
  },
  compute: (v) => {
    if (v.hole.of !== 'hole' || v.shaft.of !== 'shaft') {
      return conflict(['hole', 'shaft'], 'the hole takes a capital letter and the shaft a small one');
    }
    const hole = deviationsOf(v.hole, v.size);
    const shaft = deviationsOf(v.shaft, v.size);
    if (!hole) return conflict(['hole', 'size'], 'this class does not exist at this size');
    if (!shaft) return conflict(['shaft', 'size'], 'this class does not exist at this size');
    const least = shaft.lower - hole.upper;
    const most = shaft.upper - hole.lower;
    return answer({
      holeUpper: microns(hole.upper),
      holeLower: microns(hole.lower),
      shaftUpper: microns(shaft.upper),
      shaftLower: microns(shaft.lower),
      leastInterference: microns(least),
      mostInterference: microns(most),
      leastClearance: microns(0 - most),
      mostClearance: microns(0 - least),
      fit: most <= 0 ? 'clearance' : least > 0 ? 'interference' : 'transition',
    });
  },
});
