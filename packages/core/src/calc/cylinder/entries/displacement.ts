import type { Volume } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { discVolume } from '../volumes.js';
import { bore, cylinders, roomOut, stroke } from './inputs.js';

export const displacement = defineCalculation({
  id: 'cylinder.displacement',
  subject: 'cylinder',
  title: 'Displacement',
  summary: 'Swept volume of one cylinder and of the engine.',
  inputs: { bore, stroke, cylinders },
  outputs: {
    perCylinder: roomOut('Vs', 'swept volume of one cylinder'),
    total: roomOut('V', 'swept volume of the engine', 1),
  },
  formula: 'Vs = π/4·B²·S; V = N·Vs',
  assumptions: ['All cylinders alike; cylinder axis through the crankshaft centre.'],
  sources: ['inch-volume'],
  example: {
    inputs: { bore: '4.030 in', stroke: '3.480 in', cylinders: 8 },
    outputs: { total: '355.1 in3' },
    from: 'reference row MO-13',
  },
  compute: (v) => {
    const perCylinder = discVolume(v.bore, v.stroke);
    return answer({ perCylinder, total: (v.cylinders * perCylinder) as Volume });
  },
});
