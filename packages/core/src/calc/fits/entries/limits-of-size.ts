import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { deviationsOf } from '../iso-class.js';
import { microns, micronsOut, nominal, toleranceClass } from './inputs.js';

const limit = { kind: 'length', unit: 'mm', places: 4 } as const;

export const limitsOfSize = defineCalculation({
  id: 'fits.limits-of-size',
  subject: 'fits',
  title: 'Limits of a tolerance class',
  summary: 'Largest and smallest size of a hole class such as H7 or a shaft class such as p6.',
  inputs: {
    size: nominal,
    class: {
      ...toleranceClass,
      symbol: 'class',
      meaning: 'tolerance class: capital letter for a hole, small for a shaft',
    },
  },
  outputs: {
    of: { kind: 'text', symbol: 'of', meaning: 'hole or shaft' },
    upperDeviation: { ...micronsOut, symbol: 'ES/es', meaning: 'upper limit less the nominal size' },
    lowerDeviation: { ...micronsOut, symbol: 'EI/ei', meaning: 'lower limit less the nominal size' },
    largest: { ...limit, symbol: 'max', meaning: 'largest size' },
    smallest: { ...limit, symbol: 'min', meaning: 'smallest size' },
  },
  formula: 'max = D + upper; min = D + lower; one of them from the letter, the other from the grade',
  assumptions: ['Sizes over 0 to 500 mm, letters c to x in use here; at 20 °C.'],
  sources: ['iso-286-1', 'iso-286-2'],
  example: {
    inputs: { size: '40 mm', class: 'p6' },
    outputs: {
      of: 'shaft',
      upperDeviation: '42 µm',
      lowerDeviation: '26 µm',
      largest: '40.042 mm',
      smallest: '40.026 mm',
    },
    from: 'reference row O-34',
  },
  compute: (v) => {
    const found = deviationsOf(v.class, v.size);
    if (!found) return conflict(['class', 'size'], 'this class does not exist at this size');
    return answer({
      of: v.class.of,
      upperDeviation: microns(found.upper),
      lowerDeviation: microns(found.lower),
      largest: (v.size + microns(found.upper)) as Length,
      smallest: (v.size + microns(found.lower)) as Length,
    });
  },
});
