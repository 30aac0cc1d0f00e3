import type { Length } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { intakeFace as find } from '../milling.js';
import { height, lengthOut, signedLength, slope } from './inputs.js';

export const intakeFace = defineCalculation({
  id: 'cylinder.intake-face',
  subject: 'cylinder',
  title: 'Intake face correction of a vee engine after head and deck cuts',
  summary: 'What to take off the intake face so that the manifold fits, and how far the manifold then comes down.',
  inputs: {
    bankAngle: slope('α', 'bank from vertical: half of the angle between the banks, 45 deg on a 90 deg vee'),
    faceAngle: slope('φ', 'intake face of the head from vertical; a face square to the deck has the bank’s angle'),
    headCut: { ...height('mh', 'milled off the head’s deck face'), default: 0 },
    blockCut: { ...height('mb', 'milled off the block’s deck on this bank; adds to the head cut'), default: 0 },
    gasketChange: {
      ...signedLength('Δt', 'head gasket, new less old compressed thickness; thicker positive'),
      default: 0,
    },
    intakeGasketChange: { ...signedLength('g', 'intake gasket, new less old; thicker positive'), default: 0 },
  },
  outputs: {
    faceCut: lengthOut('x', 'to take off the intake face of each head; negative: the joint has opened', 4),
    drop: lengthOut(
      'z',
      'manifold comes down by this: to take off the end rails or valley; negative: it stands higher',
      4,
    ),
    moved: lengthOut('m', 'head toward the crank along the bank', 4),
  },
  formula: 'm = mh + mb − Δt; x = m·sin α/cos φ + g; z = m·cos(α − φ)/cos φ',
  assumptions: [
    'Both banks cut alike, so that the manifold moves straight down. A manifold without valley contact needs no z.',
  ],
  sources: ['derived-here', 'intake-face-table'],
  example: {
    inputs: { bankAngle: '45 deg', faceAngle: '55 deg', headCut: '0.030 in' },
    outputs: { faceCut: '0.0370 in', drop: '0.0515 in' },
    from: 'reference row MO-17, trigonometry',
  },
  compute: (v) => {
    const moved = (v.headCut + v.blockCut - v.gasketChange) as Length;
    return answer({ ...find(moved, v.bankAngle, v.faceAngle, v.intakeGasketChange), moved });
  },
});
