import type { Volume } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { areaInputs, chamberArea } from './chamber-area.js';
import { roomOrNone, roomOut, size } from './inputs.js';

export const volumeFromMill = defineCalculation({
  id: 'cylinder.volume-from-mill',
  subject: 'cylinder',
  title: 'Volume that a head cut takes away',
  summary: 'How much smaller a chamber gets when the head is milled.',
  inputs: {
    cut: size('c', 'to mill off'),
    ...areaInputs,
    chamber: { ...roomOrNone('V1', 'chamber volume before the cut'), optional: true },
  },
  outputs: {
    reduction: roomOut('ΔV', 'volume taken away'),
    chamber: { ...roomOut('V1', 'chamber volume after the cut'), optional: true },
  },
  formula: 'ΔV = A·c; A = P²/(4·π), or as traced, or ΔV1/c1',
  assumptions: ['Chamber walls straight for the depth of the cut.'],
  sources: ['milling-perimeter', 'derived-here'],
  example: {
    inputs: { cut: '0.020 in', perimeter: '12.0 in', chamber: '64 cc' },
    outputs: { reduction: '3.76 cm3', chamber: '60.24 cm3' },
    from: 'hand arithmetic: 11.459 in² · 0.020 in · 16.387',
  },
  compute: (v) => {
    const found = chamberArea(v);
    if (!found.ok) return found;
    const { area, cautions } = found.value;
    const reduction = (area * v.cut) as Volume;
    const chamber = v.chamber === undefined ? undefined : ((v.chamber - reduction) as Volume);
    if (chamber !== undefined && chamber <= 0)
      return conflict(['cut', 'chamber'], 'the cut would take the whole chamber');
    return answer({ reduction, chamber }, cautions);
  },
});
