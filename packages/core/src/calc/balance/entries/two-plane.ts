import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { twoPlaneCorrection } from '../rotor.js';
import { angleOut, massOut, place, size } from './inputs.js';
import { partsOf, positions, rotorInputs, whole } from './rotor-inputs.js';

export const twoPlane = defineCalculation({
  id: 'balance.two-plane',
  subject: 'balance',
  title: 'Rotor balanced in two planes',
  summary: 'Masses and angles in two planes that take away force and couple of any set of unbalanced masses.',
  inputs: {
    ...rotorInputs,
    positions,
    firstPlane: place('z1', 'first correction plane along the axis'),
    secondPlane: place('z2', 'second correction plane along the axis'),
    firstRadius: size('r1', 'radius at which mass is put on in the first plane'),
    secondRadius: size('r2', 'radius at which mass is put on in the second plane'),
  },
  outputs: {
    firstMass: massOut('m1', 'to put on in the first plane', 2),
    firstAngle: angleOut('α1', 'its angle, or opposite to it when metal is taken off there'),
    secondMass: massOut('m2', 'to put on in the second plane', 2),
    secondAngle: angleOut('α2', 'its angle'),
  },
  formula: 'U2 = −Σ (z − z1)·U/(z2 − z1); U1 = −ΣU − U2; U = m·r at its angle',
  assumptions: [
    'Rigid rotor well below its first bending speed; first order. Where a mass is nothing its angle says nothing.',
  ],
  sources: ['khurmi-balance', 'derived-here'],
  example: {
    inputs: {
      masses: ['10 g'],
      radii: ['50 mm'],
      angles: ['0 deg'],
      positions: ['100 mm'],
      firstPlane: '0 mm',
      secondPlane: '200 mm',
      firstRadius: '50 mm',
      secondRadius: '50 mm',
    },
    outputs: { firstMass: '5.00 g', firstAngle: '180 deg', secondMass: '5.00 g', secondAngle: '180 deg' },
    from: 'hand arithmetic (lever)',
  },
  compute: (v) => {
    const parts = partsOf(v);
    if (!parts.ok) return parts;
    const planes: readonly [Length, Length] = [v.firstPlane, v.secondPlane];
    const found = twoPlaneCorrection(parts.value, planes, [v.firstRadius, v.secondRadius]);
    if (!found.ok) return conflict(['firstPlane', 'secondPlane'], 'the two planes must lie apart');
    const [first, second] = found.value;
    return answer({
      firstMass: first.mass,
      firstAngle: whole(first.angle),
      secondMass: second.mass,
      secondAngle: whole(second.angle),
    });
  },
});
