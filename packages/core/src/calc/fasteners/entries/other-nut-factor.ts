import { answer, defineCalculation } from '../../catalogue/index.js';
import { torqueAtOtherNutFactor } from '../torque.js';
import { nutFactor, torque } from './inputs.js';

export const otherNutFactor = defineCalculation({
  id: 'fasteners.torque-at-other-nut-factor',
  subject: 'fasteners',
  title: 'Torque for equal preload with another lubricant',
  summary: 'Scales a torque from one nut factor to another.',
  inputs: {
    torque,
    from: { ...nutFactor, symbol: 'K1', meaning: 'nut factor that the torque was given for' },
    to: { ...nutFactor, symbol: 'K2', meaning: 'nut factor of the other lubricant' },
  },
  outputs: { torque: { kind: 'torque', symbol: 'T2', meaning: 'torque for equal preload', unit: 'N·m', places: 1 } },
  formula: 'T2 = T1·K2/K1',
  assumptions: ['Never for a torque that its maker already gave for a named lubricant.'],
  sources: ['nut-factor'],
  example: {
    inputs: { torque: '130 lbf·ft', from: '0.17', to: '0.09' },
    outputs: { torque: '68.8 lbf·ft' },
    from: 'reference row O-10 (its source prints 53, which is wrong)',
  },
  compute: (v) => answer({ torque: torqueAtOtherNutFactor(v.torque, v.from, v.to) }),
});
