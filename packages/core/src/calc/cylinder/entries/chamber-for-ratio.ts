import { answer, defineCalculation } from '../../catalogue/index.js';
import { roomOut } from './inputs.js';
import { deckClearance, gasket, pistonVolume, smallParts } from './parts.js';
import { clearanceOut, freeRoom, goal, noRoom } from './solve.js';

export const chamberForRatio = defineCalculation({
  id: 'cylinder.chamber-for-ratio',
  subject: 'cylinder',
  title: 'Chamber volume for a compression ratio',
  summary: 'How large the combustion chamber must be when every other part is known.',
  inputs: {
    ...goal,
    ...gasket,
    deckClearance: { ...deckClearance, optional: true },
    pistonVolume: { ...pistonVolume, optional: true },
    ...smallParts,
  },
  outputs: { chamber: roomOut('V1', 'chamber volume'), clearance: clearanceOut },
  formula: 'V1 = π/4·B²·S/(CR − 1) − (Vg + π/4·B²·d + Vp + Vv + Vk + Vo)',
  assumptions: ['Parts and signs as in cylinder.compression-ratio.'],
  sources: ['inch-volume', 'cylinder-ratio-parts'],
  example: {
    inputs: { ratio: '10.0', bore: '4.030 in', stroke: '3.480 in', otherVolume: '15.0 cc' },
    outputs: { clearance: '80.82 cm3', chamber: '65.8 cm3' },
    from: 'inverse formula of a published page (reference row MO-13)',
  },
  compute: (v) => {
    const free = freeRoom(v, 'chamber');
    if (!free.ok) return free;
    const { room, clearance, cautions } = free.value;
    return room < 0 ? noRoom : answer({ chamber: room, clearance }, cautions);
  },
});
