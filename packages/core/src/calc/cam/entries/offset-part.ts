import { type Angle, degrees, mm } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { OFFSET_PLACES, offsetForTiming, timingOfOffset } from '../offset.js';
import { shownAngle, shownLift } from './lobe-inputs.js';

export const offsetPart = defineCalculation({
  id: 'cam.offset-part',
  subject: 'cam',
  title: 'What an offset key or bushing does to the cam timing',
  summary: 'Crank angle of an offset key or dowel bushing, and the offset that a wanted change needs.',
  inputs: {
    place: {
      kind: 'choice',
      symbol: 'place',
      meaning: 'where the offset sits: key of the crank sprocket, key of the cam sprocket, or bushing on the cam dowel',
      choices: OFFSET_PLACES,
    },
    radius: {
      kind: 'length',
      symbol: 'R',
      meaning: 'from the centre of that shaft to the key at the joint, or to the dowel',
      unit: 'mm',
      range: { above: 0, to: mm(500) },
    },
    offset: {
      kind: 'length',
      symbol: 's',
      meaning: 'offset of the part',
      unit: 'mm',
      range: { from: 0, to: mm(100) },
      default: 0,
    },
    wanted: {
      kind: 'angle',
      symbol: 'β',
      meaning: 'wanted change of cam timing in crank degrees',
      unit: 'deg',
      range: { from: 0, to: degrees(90) },
      optional: true,
    },
  },
  outputs: {
    timing: { ...shownAngle, symbol: 'β', meaning: 'change of cam timing by the offset, crank degrees' },
    neededOffset: { ...shownLift, symbol: 's', meaning: 'offset for the wanted change', optional: true },
  },
  formula: 'crank key: β = asin(s/R); cam key or dowel: β = 2·asin(s/R)',
  assumptions: [
    'The cam turns at half crank speed: a degree at the cam is two at the crank.',
    'Which way the part is fitted decides between advance and retard: measure again after fitting.',
  ],
  sources: ['derived-here', 'shop-practice'],
  example: {
    inputs: { place: 'cam-dowel-bushing', radius: '20 mm', offset: '1 mm', wanted: '4 deg' },
    outputs: { timing: '5.73 deg', neededOffset: '0.698 mm' },
    from: 'hand arithmetic: asin 0.05 = 2.866°, sin 2° = 0.034899',
  },
  compute: (v) => {
    if (v.offset >= v.radius) {
      return conflict(['offset', 'radius'], 'the offset must be smaller than the radius', {
        input: 'offset',
        below: v.radius,
      });
    }
    const timing: Angle = timingOfOffset(v.place, v.offset, v.radius);
    return answer({
      timing,
      neededOffset: v.wanted === undefined ? undefined : offsetForTiming(v.place, v.wanted, v.radius),
    });
  },
});
