import { answer, defineCalculation } from '../../catalogue/index.js';
import { discArea } from '../volumes.js';
import { lengthOut, roomOut } from './inputs.js';
import { chamber, deckClearance, gasketBore, pistonVolume, smallParts } from './parts.js';
import { clearanceOut, freeRoom, goal, lengthOf, noRoom } from './solve.js';

export const gasketForRatio = defineCalculation({
  id: 'cylinder.gasket-for-ratio',
  subject: 'cylinder',
  title: 'Head gasket thickness for a compression ratio',
  summary: 'Compressed thickness of the gasket when every other part is known.',
  inputs: {
    ...goal,
    chamber,
    gasketBore,
    deckClearance: { ...deckClearance, optional: true },
    pistonVolume: { ...pistonVolume, optional: true },
    ...smallParts,
  },
  outputs: {
    gasketThickness: lengthOut('tg', 'compressed thickness'),
    gasketRoom: roomOut('Vg', 'volume inside the gasket'),
    clearance: clearanceOut,
  },
  formula: 'tg = [π/4·B²·S/(CR − 1) − (V1 + π/4·B²·d + Vp + Vv + Vk + Vo)]/(π/4·Bg²)',
  assumptions: [
    'Parts and signs as in cylinder.compression-ratio. Quench changes with the gasket: see cylinder.quench.',
  ],
  sources: ['derived-here'],
  example: {
    inputs: {
      ratio: '10.0',
      bore: '100 mm',
      stroke: '90 mm',
      chamber: '60 cc',
      gasketBore: '100 mm',
      deckClearance: '1 mm',
      pistonVolume: '5 cc',
    },
    outputs: { clearance: '78.54 cm3', gasketThickness: '0.724 mm' },
    from: 'hand arithmetic: 78.540 − 60 − 7.854 − 5 = 5.686 cc over 78.540 cm²',
  },
  compute: (v) => {
    const { gasketBore, ...others } = v;
    const free = freeRoom(others, 'gasket');
    if (!free.ok) return free;
    const { room, clearance, cautions } = free.value;
    if (room < 0) return noRoom;
    const gasketThickness = lengthOf(room, discArea(gasketBore ?? v.bore));
    return answer({ gasketThickness, gasketRoom: room, clearance }, cautions);
  },
});
