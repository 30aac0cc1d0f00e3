import { answer, defineCalculation } from '../../catalogue/index.js';
import { petroffVariable as find, frictionOf, sommerfeldNumber } from '../film.js';
import { bearingOf, loaded } from './bearing-inputs.js';
import { friction, number, petroffVariable } from './film-outputs.js';

export const petroff = defineCalculation({
  id: 'bearings.petroff',
  subject: 'bearings',
  title: 'Friction of a journal bearing that runs centred',
  summary: 'Petroff’s friction: coefficient, torque and power of a lightly loaded bearing; a lower bound otherwise.',
  inputs: loaded,
  outputs: { number, frictionVariable: petroffVariable, ...friction },
  formula: 'f = 2π²·(μ·N/P)·(R/c); (R/c)·f = 2π²·S; T = f·W·R',
  assumptions: ['Shaft in the middle of a full film. Loaded bearings lose more: 1.3 times at S 0.135.'],
  sources: ['petroff'],
  example: {
    inputs: {
      load: '500 lbf',
      diameter: '1.5 in',
      length: '1.5 in',
      clearance: '0.003 in',
      speed: '1800 rpm',
      viscosity: '4 µreyn',
    },
    outputs: { number: '0.135', frictionVariable: '2.665' },
    from: 'reference row O-23 with the bearing of O-19',
  },
  compute: (v) => {
    const bearing = bearingOf(v);
    const found = sommerfeldNumber(bearing);
    const rubbing = frictionOf(find(found), bearing);
    return answer({
      number: found,
      frictionVariable: find(found),
      frictionCoefficient: rubbing.coefficient,
      frictionTorque: rubbing.torque,
      power: rubbing.power,
    });
  },
});
