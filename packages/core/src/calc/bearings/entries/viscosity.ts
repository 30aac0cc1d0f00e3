import { answer, defineCalculation } from '../../catalogue/index.js';
import { viscosityForNumber } from '../film.js';
import { oilless, radialOf } from './bearing-inputs.js';

export const viscosityNeeded = defineCalculation({
  id: 'bearings.viscosity-for-number',
  subject: 'bearings',
  title: 'Viscosity that makes a Sommerfeld number',
  summary: 'Oil viscosity that a journal bearing needs to run at a wanted Sommerfeld number.',
  inputs: {
    number: {
      kind: 'ratio',
      symbol: 'S',
      meaning: 'Sommerfeld number wanted',
      unit: '',
      range: { above: 0, to: 1000 },
    },
    ...oilless,
  },
  outputs: {
    viscosity: { kind: 'viscosity', symbol: 'μ', meaning: 'dynamic viscosity needed', unit: 'mPa·s', places: 3 },
  },
  formula: 'μ = S·P/((R/c)²·N); P = W/(D·L)',
  assumptions: ['At the temperature of the film, which the friction itself sets.'],
  sources: ['shigley-bearing', 'bearing-problem'],
  example: {
    inputs: {
      number: '0.13',
      load: '1500 lbf',
      diameter: '2.50 in',
      length: '2.50 in',
      clearance: '0.0015 in',
      clearanceIs: 'radial',
      speed: '850 rpm',
    },
    outputs: { viscosity: '3.17 µreyn' },
    from: 'reference row O-20, worked example of the source',
  },
  compute: (v) => {
    const { number, load, diameter, length, speed } = v;
    const radialClearance = radialOf(v.clearance, v.clearanceIs);
    return answer({ viscosity: viscosityForNumber(number, { load, diameter, length, speed, radialClearance }) });
  },
});
