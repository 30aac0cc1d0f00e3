import type { Angle, Length } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { deadCentres as find } from '../dead-centres.js';
import { rodTooShort } from './faults.js';
import { pinOffset, rodLength, stroke } from './inputs.js';
import { topHeight } from './outputs.js';

export const deadCentres = defineCalculation({
  id: 'crank.dead-centres',
  subject: 'crank',
  title: 'Dead centres and true stroke with pin offset',
  summary: 'Crank angles of the highest and lowest piston position, their heights, and the true stroke.',
  inputs: { stroke, rodLength, pinOffset },
  outputs: {
    trueStroke: { kind: 'length', symbol: 'S', meaning: 'true stroke of the piston', unit: 'mm', places: 4 },
    topAngle: { kind: 'angle', symbol: 'θt', meaning: 'crank angle of the highest position', unit: 'deg', places: 3 },
    bottomAngle: {
      kind: 'angle',
      symbol: 'θb',
      meaning: 'crank angle of the lowest position, past 180°',
      unit: 'deg',
      places: 3,
    },
    topHeight,
    bottomHeight: {
      kind: 'length',
      symbol: 'hb',
      meaning: 'pin above the crankshaft centre at the bottom',
      unit: 'mm',
      places: 3,
    },
  },
  formula:
    'sin θt = e/(l + r); sin θb = e/(l − r); S = √((l + r)² − e²) − √((l − r)² − e²), r = half the printed stroke',
  assumptions: [
    'Top dead centre found with a positive stop is this one, not the angle at which the throw points up.',
    'The lowest position is given as the angle past 180°.',
  ],
  sources: ['derived-here'],
  example: {
    inputs: { stroke: '3.480 in', rodLength: '5.700 in', pinOffset: '0.060 in' },
    outputs: { trueStroke: '3.48021 in', topAngle: '0.462 deg', bottomAngle: '0.868 deg', topHeight: '7.43976 in' },
    from: 'reference row MO-07, law of cosines',
  },
  compute: (v) => {
    const g = { crankRadius: (v.stroke / 2) as Length, rodLength: v.rodLength, pinOffset: v.pinOffset };
    const found = find(g);
    if (!found.ok) return rodTooShort(found.fault);
    const { stroke: trueStroke, topAngle, bottomAngle, topHeight, bottomHeight } = found.value;
    return answer({ trueStroke, topAngle, bottomAngle: (bottomAngle - Math.PI) as Angle, topHeight, bottomHeight });
  },
});
