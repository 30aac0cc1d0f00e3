import { answer, defineCalculation } from '../../catalogue/index.js';
import { roomOut } from './inputs.js';
import { chamber, deckClearance, gasket, smallParts } from './parts.js';
import { clearanceOut, freeRoom, goal } from './solve.js';

export const pistonForRatio = defineCalculation({
  id: 'cylinder.piston-for-ratio',
  subject: 'cylinder',
  title: 'Dish or dome for a compression ratio',
  summary: 'Volume that the piston crown must have: dish positive, dome negative.',
  inputs: { ...goal, chamber, ...gasket, deckClearance: { ...deckClearance, optional: true }, ...smallParts },
  outputs: {
    pistonVolume: roomOut('Vp', 'crown volume: dish and valve reliefs positive, dome negative'),
    crown: { kind: 'text', symbol: 'crown', meaning: 'dish, flat or dome' },
    clearance: clearanceOut,
  },
  formula: 'Vp = π/4·B²·S/(CR − 1) − (V1 + Vg + π/4·B²·d + Vv + Vk + Vo)',
  assumptions: ['Parts and signs as in cylinder.compression-ratio. Valve reliefs are inside the crown volume.'],
  sources: ['derived-here'],
  example: {
    inputs: {
      ratio: '11.0',
      bore: '100 mm',
      stroke: '90 mm',
      chamber: '70 cc',
      gasketThickness: '1 mm',
      gasketBore: '100 mm',
      deckClearance: '0 mm',
    },
    outputs: { clearance: '70.69 cm3', pistonVolume: '-7.17 cm3', crown: 'dome' },
    from: 'hand arithmetic: 70.686 − 70 − 7.854 = −7.168 cc',
  },
  compute: (v) => {
    const free = freeRoom(v, 'piston');
    if (!free.ok) return free;
    const { room, clearance, cautions } = free.value;
    return answer({ pistonVolume: room, crown: crownOf(room), clearance }, cautions);
  },
});

const crownOf = (volume: number): string => (volume > 0 ? 'dish' : volume < 0 ? 'dome' : 'flat');
