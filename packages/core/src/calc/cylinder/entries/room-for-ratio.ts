import { answer, defineCalculation } from '../../catalogue/index.js';
import { roomOut } from './inputs.js';
import { allParts } from './parts.js';
import { clearanceOut, freeRoom, goal } from './solve.js';

const { otherVolume: _free, ...given } = allParts;

export const roomForRatio = defineCalculation({
  id: 'cylinder.room-for-ratio',
  subject: 'cylinder',
  title: 'Room still to find or to fill for a compression ratio',
  summary:
    'How much volume must be added to the parts given, or taken away, to meet a ratio: pockets, crevice, chamfers.',
  inputs: { ...goal, ...given },
  outputs: {
    room: roomOut('ΔV', 'to add when positive, to take away when negative'),
    clearance: clearanceOut,
  },
  formula: 'ΔV = π/4·B²·S/(CR − 1) − (V1 + Vg + π/4·B²·d + Vp + Vv + Vk)',
  assumptions: ['Parts and signs as in cylinder.compression-ratio.'],
  sources: ['derived-here'],
  example: {
    inputs: { ratio: '10.0', bore: '100 mm', stroke: '90 mm', chamber: '60 cc', gasketVolume: '8 cc' },
    outputs: { clearance: '78.54 cm3', room: '10.54 cm3' },
    from: 'hand arithmetic: 78.540 − 68',
  },
  compute: (v) => {
    const free = freeRoom(v, 'other');
    if (!free.ok) return free;
    const { room, clearance, cautions } = free.value;
    return answer({ room, clearance }, cautions);
  },
});
