import { type AngularSpeed, degrees, type Length } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { pistonMotion } from '../motion.js';
import { rodTooShort } from './faults.js';
import { crankSpeed, pinOffset, rodLength, stroke } from './inputs.js';

export const motion = defineCalculation({
  id: 'crank.motion',
  subject: 'crank',
  title: 'Piston position, speed and acceleration',
  summary:
    'Where the piston is at a crank angle, how fast it moves and how hard it is accelerated; exact, with pin offset.',
  inputs: {
    stroke,
    rodLength,
    pinOffset,
    crankAngle: {
      kind: 'angle',
      symbol: 'θ',
      meaning: 'crank angle, 0 with the crankpin straight up the cylinder axis, growing as the crank turns',
      unit: 'deg',
      range: { from: degrees(-7200), to: degrees(7200) },
    },
    crankSpeed: { ...crankSpeed, optional: true },
  },
  outputs: {
    pinHeight: {
      kind: 'length',
      symbol: 'h',
      meaning: 'piston pin above the crankshaft centre',
      unit: 'mm',
      places: 3,
    },
    drop: { kind: 'length', symbol: 'x', meaning: 'piston below its highest point', unit: 'mm', places: 3 },
    speed: {
      kind: 'speed',
      symbol: 'v',
      meaning: 'piston speed, positive away from the head',
      unit: 'm/s',
      places: 3,
      optional: true,
    },
    acceleration: {
      kind: 'acceleration',
      symbol: 'a',
      meaning: 'piston acceleration, positive away from the head',
      unit: 'm/s2',
      places: 1,
      optional: true,
    },
  },
  formula: 'h = r·cos θ + √(l² − (r·sin θ − e)²), r = S/2; x = h(top) − h; v = −dh/dt; a = −d²h/dt²',
  assumptions: [
    'Rigid parts, cylinder axis through the crankshaft centre unless the offset says otherwise, constant crank speed.',
    'With an offset the highest point is not at 0°: see crank.dead-centres.',
  ],
  sources: ['derived-here', 'heywood-crank'],
  example: {
    inputs: { stroke: '3.480 in', rodLength: '5.700 in', crankAngle: '90 deg', crankSpeed: '6500 rpm' },
    outputs: { drop: '2.0121 in' },
    from: 'reference row MO-08, recomputed from the exact formula',
  },
  compute: (v) => {
    const g = { crankRadius: (v.stroke / 2) as Length, rodLength: v.rodLength, pinOffset: v.pinOffset };
    const found = pistonMotion(g, v.crankAngle, v.crankSpeed ?? STANDING);
    if (!found.ok) return rodTooShort(found.fault);
    const { pinHeight, drop, speed, acceleration } = found.value;
    // Without a crank speed those of the piston are not known, and not zero either.
    return answer(
      v.crankSpeed === undefined
        ? { pinHeight, drop, speed: undefined, acceleration: undefined }
        : { pinHeight, drop, speed, acceleration },
    );
  },
});

const STANDING = 0 as AngularSpeed;
