import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { rodEndsByCentre as find } from '../rod-ends.js';
import { mass, massOut, size } from './inputs.js';

export const rodEndsByCentre = defineCalculation({
  id: 'balance.rod-ends-by-centre',
  subject: 'balance',
  title: 'Rod ends from total mass and centre of mass',
  summary: 'Parts a rod into the mass of its big and its small end.',
  inputs: {
    total: mass('m', 'whole rod'),
    rodLength: size('l', 'rod, centre to centre'),
    fromBigEnd: size('x', 'centre of mass from the centre of the big eye'),
  },
  outputs: { bigEnd: massOut('mb', 'big end: rotating'), smallEnd: massOut('mk', 'small end: reciprocating') },
  formula: 'mk = m·x/l; mb = m − mk',
  assumptions: ['Two masses with the sum and the centre of the rod; its turning inertia is a little different.'],
  sources: ['khurmi-balance'],
  example: {
    inputs: { total: '600 g', rodLength: '150 mm', fromBigEnd: '40 mm' },
    outputs: { bigEnd: '440.0 g', smallEnd: '160.0 g' },
    from: 'hand arithmetic (lever)',
  },
  compute: (v) =>
    v.fromBigEnd > v.rodLength
      ? conflict(['fromBigEnd', 'rodLength'], 'the centre of mass lies between the eyes', {
          input: 'fromBigEnd',
          to: v.rodLength,
        })
      : answer(find(v.total, v.rodLength, v.fromBigEnd)),
});
