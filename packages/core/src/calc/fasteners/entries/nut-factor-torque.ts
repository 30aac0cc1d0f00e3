import { answer, defineCalculation } from '../../catalogue/index.js';
import { torqueByNutFactor } from '../torque.js';
import { nominalDiameter, nutFactor, preload } from './inputs.js';

export const nutFactorTorque = defineCalculation({
  id: 'fasteners.nut-factor-torque',
  subject: 'fasteners',
  title: 'Torque of a preload, short form',
  summary: 'Tightening torque from the nut factor of a named lubricant.',
  inputs: {
    diameter: nominalDiameter,
    preload,
    nutFactor,
    lubricant: {
      kind: 'text',
      symbol: 'on',
      meaning: 'what is on the thread and under the head: K belongs to it',
      expected: 'the name of the lubricant and finish that K belongs to',
      read: (text: string) => text.trim() || undefined,
    },
  },
  outputs: {
    torque: { kind: 'torque', symbol: 'T', meaning: 'tightening torque', unit: 'N·m', places: 1 },
    belongsTo: { kind: 'text', symbol: 'on', meaning: 'lubricant and finish for which alone it holds' },
  },
  formula: 'T = K·D·F',
  assumptions: [
    'K belongs to one lubricant, one finish and both faces. The maker’s own torque outranks this figure.',
    'One torque gives a band of preloads: see fasteners.preload-band.',
  ],
  sources: ['nut-factor'],
  example: {
    inputs: { diameter: '3/8 in', preload: '4941 lbf', nutFactor: '0.20', lubricant: 'dry, plain' },
    outputs: { torque: '30.9 lbf·ft' },
    from: 'reference row O-09, published chart point',
  },
  compute: (v) => answer({ torque: torqueByNutFactor(v.nutFactor, v.diameter, v.preload), belongsTo: v.lubricant }),
});
