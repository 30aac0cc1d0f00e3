import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { stageTorques } from '../stages.js';
import { torque } from './inputs.js';

export const stages = defineCalculation({
  id: 'fasteners.stages',
  subject: 'fasteners',
  title: 'Torques of the stages of a joint',
  summary: 'Each stage as a share of the target, rounded to what the wrench can show; the last is never rounded up.',
  inputs: {
    target: { ...torque, meaning: 'torque of the last stage' },
    shares: {
      kind: 'ratio',
      symbol: 's',
      meaning: 'share of each stage in order, such as 30 %, 60 %, 100 %',
      unit: '%',
      range: { above: 0, to: 1 },
      list: true,
    },
    step: { ...torque, symbol: 'ΔT', meaning: 'step that the wrench can be set to', optional: true },
  },
  outputs: {
    torques: { kind: 'torque', symbol: 'Ti', meaning: 'torque of each stage', unit: 'N·m', places: 1, list: true },
  },
  formula: 'Ti = si·T, to the nearest step; the last to the step below',
  assumptions: [
    'The maker’s stages win. After the last stage go round again until nothing turns, unless an angle follows.',
  ],
  sources: ['stage-shares', 'asme-pcc-1'],
  example: {
    inputs: { target: '65 lbf·ft', shares: ['30 %', '60 %', '100 %'] },
    outputs: { torques: ['19.5 lbf·ft', '39.0 lbf·ft', '65.0 lbf·ft'] },
    from: 'reference row O-27',
  },
  compute: (v) => {
    if (v.shares.some((share, at) => at > 0 && share < v.shares[at - 1]!)) {
      return conflict(['shares'], 'a stage is lower than the one before it');
    }
    const torques = stageTorques(v.target, v.shares, v.step);
    if (torques.some((one) => one <= 0))
      return conflict(['step', 'shares'], 'the wrench’s step is larger than a stage');
    return answer({ torques });
  },
});
