import { type Angle, type Length, metres } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { lengths, maybeLength } from './flavour.js';
import { asRatio } from './inputs.js';

export const conicity = defineCalculation({
  id: 'metrology.conicity',
  subject: 'metrology',
  title: 'Taper of a cone from two diameters',
  summary:
    'Conicity, angles and the diameter elsewhere along a cone, such as a crank nose, a valve guide or a worn bore.',
  inputs: {
    first: { ...lengths.size, symbol: 'D1', meaning: 'diameter at the first place' },
    second: { ...lengths.size, symbol: 'D2', meaning: 'diameter at the second place' },
    distance: {
      kind: 'length',
      symbol: 'L',
      meaning: 'distance of the places along the axis',
      unit: 'mm',
      range: { above: 0, to: metres(100) },
    },
    at: {
      ...lengths.input,
      symbol: 'z',
      meaning: 'distance from the first place toward the second, where the diameter is wanted',
      optional: true,
    },
  },
  outputs: {
    conicity: {
      kind: 'ratio',
      symbol: 'C',
      meaning: 'change of diameter per length, 1 : x as a ratio; positive: the first is larger',
      unit: '',
      places: 6,
    },
    perUnit: { ...lengths.output, symbol: 'C100', meaning: 'change of diameter on 100 mm' },
    included: { kind: 'angle', symbol: '2β', meaning: 'included angle', unit: 'deg', places: 5 },
    half: { kind: 'angle', symbol: 'β', meaning: 'angle of one side to the axis', unit: 'deg', places: 5 },
    diameter: { ...lengths.output, symbol: 'D', meaning: 'diameter at the place asked for', optional: true },
  },
  formula: 'C = (D1 − D2)/L; β = arctan((D1 − D2)/(2·L)); D = D1 − C·z',
  assumptions: ['Straight sides between the two places.'],
  sources: ['derived-here'],
  example: {
    inputs: { first: '30 mm', second: '20 mm', distance: '50 mm' },
    outputs: { conicity: '0.2', half: '5.711 deg', included: '11.421 deg' },
    from: 'hand arithmetic: 1 : 5, arctan 0.1',
  },
  compute: (v) => {
    const ratio = (v.first - v.second) / v.distance;
    const half = Math.atan(ratio / 2) as Angle;
    const diameter = v.at === undefined ? undefined : v.first - ratio * v.at;
    if (diameter !== undefined && diameter < 0)
      return conflict(['at'], 'the cone has come to its point before that place');
    return answer({
      conicity: asRatio(ratio),
      perUnit: (ratio * HUNDRED_MM) as Length,
      included: (2 * half) as Angle,
      half,
      diameter: maybeLength(diameter),
    });
  },
});
const HUNDRED_MM = metres(0.1);
