import type { Force, Length } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { length, times } from '../complex.js';
import { correction, staticUnbalance } from '../rotor.js';
import { angleOut, crankSpeed, forceOut, massOut, size } from './inputs.js';
import { partsOf, rotorInputs, whole } from './rotor-inputs.js';

export const singlePlane = defineCalculation({
  id: 'balance.single-plane',
  subject: 'balance',
  title: 'Rotor balanced in one plane',
  summary:
    'The mass that takes away the static unbalance of a thin rotor such as a flywheel, and the force that it had.',
  inputs: {
    ...rotorInputs,
    correctionRadius: size('rc', 'radius at which mass is put on'),
    speed: { ...crankSpeed, meaning: 'speed of the rotor; gives the force', optional: true },
  },
  outputs: {
    mass: massOut('mc', 'to put on', 2),
    angle: angleOut('αc', 'its angle, or opposite to it when metal is taken off there'),
    force: { ...forceOut('F', 'turning force of the unbalance at that speed'), optional: true },
  },
  formula: 'mc·rc = |Σ m·r|, opposite to it; F = |Σ m·r|·ω²',
  assumptions: ['Thin rotor: all masses and the correction in one plane.'],
  sources: ['khurmi-balance', 'derived-here'],
  example: {
    inputs: {
      masses: ['3 g', '4 g'],
      radii: ['100 mm'],
      angles: ['0 deg', '90 deg'],
      correctionRadius: '100 mm',
      speed: '6000 rpm',
    },
    outputs: { mass: '5.00 g', angle: '233.13 deg', force: '197.4 N' },
    from: 'hand arithmetic: 3-4-5 triangle, 0.0005 kg·m · 628.32²',
  },
  compute: (v) => {
    const parts = partsOf(v);
    if (!parts.ok) return parts;
    const unbalance = staticUnbalance(parts.value);
    const { mass, angle } = correction(times(unbalance, -1), v.correctionRadius as Length);
    const force = v.speed === undefined ? undefined : ((length(unbalance) * v.speed ** 2) as Force);
    return answer({ mass, angle: whole(angle), force });
  },
});
