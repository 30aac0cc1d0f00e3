import { answer, defineCalculation } from '../../catalogue/index.js';
import { plungerTravel } from '../adjuster.js';
import { gapOfTravel } from '../collapsed-lifter.js';
import { pitch, place, ratio, turned } from './inputs.js';

export const preloadFromTurns = defineCalculation({
  id: 'valvetrain.preload-from-turns',
  subject: 'valvetrain',
  title: 'Lifter plunger travel from turns of the adjuster',
  summary: 'How deep a hydraulic lifter’s plunger goes when the adjuster is turned past zero lash.',
  inputs: { place, pitch, ratio, turned },
  outputs: {
    plungerTravel: { kind: 'length', symbol: 't', meaning: 'plunger travel at the lifter', unit: 'mm', places: 3 },
    atValve: { kind: 'length', symbol: 't·R', meaning: 'the same seen at the valve tip', unit: 'mm', places: 3 },
  },
  formula: 'stud nut: t = n·P·(1 + 1/R); screw at the pushrod: t = n·P; screw at the valve: t = n·P/R',
  assumptions: [
    'Valve seated, follower on the base circle, lifter bled down, small angles, arm ends in line with the pivot, nothing bends.',
    'The limit is the measured plunger travel of the lifter that is fitted.',
  ],
  sources: ['stud-nut-preload'],
  example: {
    inputs: { place: 'stud-nut', pitch: '1/24 in', ratio: '1.5', turned: '1/2 turn' },
    outputs: { plungerTravel: '0.0347 in' },
    from: 'reference row MO-27; turns from printed service data, travel derived',
  },
  compute: (v) => {
    const travel = plungerTravel(v, v.turned);
    return answer({ plungerTravel: travel, atValve: gapOfTravel(travel, v.ratio) });
  },
});
