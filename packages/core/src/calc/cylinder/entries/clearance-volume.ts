import { litres, type Volume } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { clearanceForRatio } from '../ratio.js';
import { cylinders, roomOut, staticRatio } from './inputs.js';

export const clearanceFromDisplacement = defineCalculation({
  id: 'cylinder.clearance-volume',
  subject: 'cylinder',
  title: 'Clearance volume from displacement and ratio',
  summary: 'Volume left at top dead centre in one cylinder.',
  inputs: {
    displacement: {
      kind: 'volume',
      symbol: 'V',
      meaning: 'displacement of the whole engine (of one cylinder with N = 1)',
      unit: 'L',
      range: { above: 0, to: litres(10_000) },
    },
    cylinders,
    staticRatio,
  },
  outputs: {
    clearance: roomOut('Vc', 'clearance volume of one cylinder'),
    perCylinder: roomOut('Vs', 'swept volume of one cylinder'),
  },
  formula: 'Vc = (V/N)/(CR − 1)',
  assumptions: ['All cylinders alike.'],
  sources: ['inch-volume', 'pulkrabek-crank'],
  example: {
    inputs: { displacement: '3.000 L', cylinders: 6, staticRatio: '9.5' },
    outputs: { clearance: '58.82 cm3' },
    from: 'textbook V6 (reference row MO-06)',
  },
  compute: (v) => {
    const perCylinder = (v.displacement / v.cylinders) as Volume;
    return answer({ clearance: clearanceForRatio(perCylinder, v.staticRatio), perCylinder });
  },
});
