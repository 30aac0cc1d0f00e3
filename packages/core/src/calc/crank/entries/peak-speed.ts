import type { Length } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { peakSpeed as find } from '../peak-speed.js';
import { rodTooShort } from './faults.js';
import { crankSpeed, pinOffset, rodLength, stroke } from './inputs.js';
import { topHeight } from './outputs.js';

export const peakSpeed = defineCalculation({
  id: 'crank.peak-speed',
  subject: 'crank',
  title: 'Highest piston speed and its crank angle',
  summary: 'Crank angle on the way down at which the piston is fastest, and how fast it is there.',
  inputs: { stroke, rodLength, pinOffset, crankSpeed: { ...crankSpeed, range: { above: 0, to: crankSpeed.range.to } } },
  outputs: {
    angle: { kind: 'angle', symbol: 'θp', meaning: 'crank angle of the highest speed', unit: 'deg', places: 4 },
    speed: { kind: 'speed', symbol: 'v', meaning: 'highest piston speed', unit: 'm/s', places: 3 },
    topHeight,
    pinHeight: { kind: 'length', symbol: 'h', meaning: 'pin above the crankshaft centre at θp', unit: 'mm', places: 3 },
    time: { kind: 'time', symbol: 't', meaning: 'time from top dead centre to θp', unit: 'ms', places: 4 },
  },
  formula: 'd²h/dθ² = 0 between the dead centres, h = r·cos θ + √(l² − (r·sin θ − e)²), r = S/2',
  assumptions: [
    'Constant crank speed. The angle is found by halving the range, with the exact acceleration.',
    'It is not the angle at which rod and throw are square to each other.',
  ],
  sources: ['derived-here', 'peak-piston-speed'],
  example: {
    inputs: { stroke: '4 in', rodLength: '6 in', crankSpeed: '6000 rpm' },
    outputs: { angle: '73.1753 deg' },
    from: 'reference row MO-02, a published pair from memory, recomputed',
  },
  compute: (v) => {
    const g = { crankRadius: (v.stroke / 2) as Length, rodLength: v.rodLength, pinOffset: v.pinOffset };
    const found = find(g, v.crankSpeed);
    return found.ok ? answer({ ...found.value }) : rodTooShort(found.fault);
  },
});
