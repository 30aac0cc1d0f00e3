import { answer, defineCalculation } from '../../catalogue/index.js';
import { turnsForTravel } from '../adjuster.js';
import { pitch, place, ratio, smallLength } from './inputs.js';

export const turnsFromPreload = defineCalculation({
  id: 'valvetrain.turns-from-preload',
  subject: 'valvetrain',
  title: 'Turns of the adjuster for a lifter plunger travel',
  summary: 'How far to turn past zero lash so that the plunger sits at a wanted depth.',
  inputs: {
    place,
    pitch,
    ratio,
    plungerTravel: { ...smallLength, symbol: 't', meaning: 'wanted plunger travel at the lifter' },
  },
  outputs: {
    turned: { kind: 'angle', symbol: 'n', meaning: 'to turn past zero lash', unit: 'turn', places: 3 },
    degrees: { kind: 'angle', symbol: 'n·360°', meaning: 'the same in degrees of the wrench', unit: 'deg', places: 1 },
  },
  formula: 'stud nut: n = t/(P·(1 + 1/R)); screw at the pushrod: n = t/P; screw at the valve: n = t·R/P',
  assumptions: ['As for the travel from turns.'],
  sources: ['stud-nut-preload'],
  example: {
    inputs: { place: 'stud-nut', pitch: '1/24 in', ratio: '1.5', plungerTravel: '0.06944 in' },
    outputs: { turned: '1.000 turn' },
    from: 'reference row MO-27, turned round',
  },
  compute: (v) => {
    const turned = turnsForTravel(v, v.plungerTravel);
    return answer({ turned, degrees: turned });
  },
});
