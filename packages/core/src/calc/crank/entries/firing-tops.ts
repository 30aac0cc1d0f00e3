import { wrapped } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { TURN } from '../angle.js';
import { firingTops as find } from '../firing.js';
import { firingFault } from './faults.js';
import { firingOrder, intervals } from './inputs.js';

export const firingTops = defineCalculation({
  id: 'crank.firing-tops',
  subject: 'crank',
  title: 'Dead centres of every cylinder from the firing order',
  summary: 'Crank angle of each firing top dead centre after that of the first cylinder of the order.',
  inputs: { firingOrder, intervals },
  outputs: {
    cylinders: { kind: 'count', symbol: 'cylinder', meaning: 'cylinder numbers, ascending', list: true },
    firingAngles: {
      kind: 'angle',
      symbol: 'A',
      meaning: 'firing top dead centre of each of these cylinders, 0 to 720°',
      unit: 'deg',
      places: 2,
      list: true,
    },
    topAngles: {
      kind: 'angle',
      symbol: 'A₃₆₀',
      meaning: 'top dead centre of each of these cylinders on the damper, 0 to 360°',
      unit: 'deg',
      places: 2,
      list: true,
    },
  },
  formula: 'A(k) = sum of the intervals before place k of the order; even: (k − 1)·720°/N',
  assumptions: ['Four-stroke: one cycle is 720° of the crank.', 'Intervals of an odd-fire engine must be stated.'],
  sources: ['derived-here'],
  example: {
    inputs: { firingOrder: [1, 8, 4, 3, 6, 5, 7, 2] },
    outputs: {
      cylinders: [1, 2, 3, 4, 5, 6, 7, 8],
      topAngles: ['0 deg', '270 deg', '270 deg', '180 deg', '90 deg', '0 deg', '180 deg', '90 deg'],
    },
    from: 'reference row MO-36',
  },
  compute: (v) => {
    const tops = find(v.firingOrder, v.intervals);
    if (!tops.ok) return firingFault(tops.fault);
    const sorted = [...tops.value].sort((a, b) => a.cylinder - b.cylinder);
    return answer({
      cylinders: sorted.map((one) => one.cylinder),
      firingAngles: sorted.map((one) => one.angle),
      topAngles: sorted.map((one) => wrapped(one.angle, TURN)),
    });
  },
});
