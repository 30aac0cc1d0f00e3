import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { creviceVolume as find } from '../volumes.js';
import { bore, height, roomOut, size } from './inputs.js';

export const crevice = defineCalculation({
  id: 'cylinder.crevice-volume',
  subject: 'cylinder',
  title: 'Crevice above the top ring',
  summary: 'Room between top land and bore, a part of the clearance volume.',
  inputs: { bore, landDiameter: size('d', 'diameter of the top land'), landHeight: height('h', 'crown to top ring') },
  outputs: { volume: roomOut('Vk', 'crevice volume', 3) },
  formula: 'Vk = π/4·(B² − d²)·h',
  assumptions: ['Round land without carbon; the room behind the ring is not counted.'],
  sources: ['derived-here'],
  example: {
    inputs: { bore: '100 mm', landDiameter: '99.4 mm', landHeight: '6 mm' },
    outputs: { volume: '0.564 cm3' },
    from: 'hand arithmetic: π/4·(10000 − 9880.36)·6',
  },
  compute: (v) =>
    v.landDiameter > v.bore
      ? conflict(['landDiameter', 'bore'], 'the land does not go into the bore', { input: 'landDiameter', to: v.bore })
      : answer({ volume: find(v.bore, v.landDiameter, v.landHeight) }),
});
