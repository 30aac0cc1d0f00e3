import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { clearanceVolume, strokeForRatio as find } from '../ratio.js';
import { discVolume } from '../volumes.js';
import { bore, lengthOut, ratioWanted, roomOut } from './inputs.js';
import { allParts, partCautions, partsOf } from './parts.js';

export const strokeForRatio = defineCalculation({
  id: 'cylinder.stroke-for-ratio',
  subject: 'cylinder',
  title: 'Stroke for a compression ratio',
  summary: 'Stroke that brings a ratio with these parts, the deck clearance kept as given.',
  inputs: { ratio: ratioWanted, bore, ...allParts },
  outputs: {
    stroke: lengthOut('S', 'stroke'),
    swept: roomOut('Vs', 'swept volume of one cylinder'),
    clearance: roomOut('Vc', 'clearance volume of the parts'),
  },
  formula: 'S = (CR − 1)·Vc/(π/4·B²), Vc = V1 + Vg + π/4·B²·d + Vp + Vv + Vk + Vo',
  assumptions: ['Parts and signs as in cylinder.compression-ratio. A longer throw needs a shorter piston or rod.'],
  sources: ['derived-here'],
  example: {
    inputs: { ratio: '10.0', bore: '4.030 in', chamber: '65.82 cc', otherVolume: '15.0 cc' },
    outputs: { stroke: '3.480 in' },
    from: 'reference row MO-13 turned round',
  },
  compute: (v) => {
    const parts = partsOf(v, v.bore);
    if (!parts.ok) return parts;
    const clearance = clearanceVolume(parts.value);
    if (clearance <= 0) return conflict(['chamber', 'deckClearance', 'pistonVolume'], 'no clearance volume is left');
    const stroke = find(v.bore, clearance, v.ratio);
    return answer({ stroke, swept: discVolume(v.bore, stroke), clearance }, partCautions(v, parts.value, v.bore));
  },
});
