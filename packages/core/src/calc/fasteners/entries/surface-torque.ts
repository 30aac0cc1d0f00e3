import { answer, defineCalculation } from '../../catalogue/index.js';
import { nutFactorRanges, surfaces } from '../nut-factors.js';
import { torqueByNutFactor } from '../torque.js';
import { nominalDiameter, preload } from './inputs.js';

export const surfaceTorque = defineCalculation({
  id: 'fasteners.surface-torque',
  subject: 'fasteners',
  title: 'Band of torques for a preload and a kind of surface',
  summary: 'Short form with the printed range of the nut factor: shown as a band, never as one number.',
  inputs: {
    diameter: nominalDiameter,
    preload,
    surface: { kind: 'choice', symbol: 'surface', meaning: 'surface and lubricant', choices: surfaces },
  },
  outputs: {
    lowFactor: { kind: 'ratio', symbol: 'K low', meaning: 'nut factor, low end', unit: '', places: 2 },
    highFactor: { kind: 'ratio', symbol: 'K high', meaning: 'nut factor, high end', unit: '', places: 2 },
    lowTorque: { kind: 'torque', symbol: 'T low', meaning: 'torque at the low end', unit: 'N·m', places: 1 },
    highTorque: { kind: 'torque', symbol: 'T high', meaning: 'torque at the high end', unit: 'N·m', places: 1 },
  },
  formula: 'T = K·D·F at both ends of K',
  assumptions: ['The range is that of one supplier’s table; for machine oil it spans 2.6 to 1.'],
  sources: ['nut-factor-ranges', 'nut-factor'],
  example: {
    inputs: { diameter: '3/8 in', preload: '4941 lbf', surface: 'machine oil' },
    outputs: { lowFactor: '0.10', highFactor: '0.26', lowTorque: '15.4 lbf·ft', highTorque: '40.1 lbf·ft' },
    from: 'range of reference row O-10, torque by hand arithmetic',
  },
  compute: (v) => {
    const { low, high } = nutFactorRanges[v.surface];
    return answer({
      lowFactor: low,
      highFactor: high,
      lowTorque: torqueByNutFactor(low, v.diameter, v.preload),
      highTorque: torqueByNutFactor(high, v.diameter, v.preload),
    });
  },
});
