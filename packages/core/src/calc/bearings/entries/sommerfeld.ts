import type { Ratio } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { projectedPressure, sommerfeldNumber } from '../film.js';
import { bearingOf, loaded } from './bearing-inputs.js';
import { number, unitLoad } from './film-outputs.js';

export const sommerfeld = defineCalculation({
  id: 'bearings.sommerfeld-number',
  subject: 'bearings',
  title: 'Sommerfeld number of a journal bearing',
  summary: 'Load on the projected area and the bearing’s characteristic number.',
  inputs: loaded,
  outputs: {
    unitLoad,
    number,
    lengthToDiameter: { kind: 'ratio', symbol: 'L/D', meaning: 'length over diameter', unit: '', places: 3 },
    slack: { kind: 'ratio', symbol: 'R/c', meaning: 'radius over radial clearance', unit: '', places: 1 },
  },
  formula: 'S = (R/c)²·μ·N/P; P = W/(D·L); N in turns a second, c radial',
  assumptions: ['Steady load and speed; one viscosity in the whole film. Workshop clearances are diametral: twice c.'],
  sources: ['shigley-bearing'],
  example: {
    inputs: {
      load: '500 lbf',
      diameter: '1.5 in',
      length: '1.5 in',
      clearance: '0.0015 in',
      clearanceIs: 'radial',
      speed: '1800 rpm',
      viscosity: '4 µreyn',
    },
    outputs: { unitLoad: '222.2 psi', number: '0.135', lengthToDiameter: '1.0', slack: '500' },
    from: 'reference row O-19, textbook example',
  },
  compute: (v) => {
    const bearing = bearingOf(v);
    return answer({
      unitLoad: projectedPressure(bearing),
      number: sommerfeldNumber(bearing),
      lengthToDiameter: (v.length / v.diameter) as Ratio,
      slack: (v.diameter / 2 / bearing.radialClearance) as Ratio,
    });
  },
});
