import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { clearanceVolume, compressionRatio as ratioOf } from '../ratio.js';
import { discVolume } from '../volumes.js';
import { ratioOut, roomOut } from './inputs.js';
import { allParts, geometry, partCautions, partsOf } from './parts.js';

export const compressionRatio = defineCalculation({
  id: 'cylinder.compression-ratio',
  subject: 'cylinder',
  title: 'Static compression ratio with every part',
  summary: 'Swept volume over what is left at the top: chamber, gasket, deck clearance, crown, pockets, crevice.',
  inputs: { ...geometry, ...allParts },
  outputs: {
    ratio: ratioOut('CR', 'static compression ratio', 3),
    swept: roomOut('Vs', 'swept volume of one cylinder'),
    clearance: roomOut('Vc', 'clearance volume: all parts together'),
    gasketRoom: { ...roomOut('Vg', 'in the gasket'), optional: true },
    deckRoom: { ...roomOut('Vd', 'above the piston to the deck, negative when proud'), optional: true },
    creviceRoom: { ...roomOut('Vk', 'above the top ring', 3), optional: true },
  },
  formula: 'CR = (Vs + Vc)/Vc, Vs = π/4·B²·S, Vc = V1 + π/4·Bg²·tg + π/4·B²·d + Vp + Vv + Vk + Vo',
  assumptions: [
    'Deck clearance and gasket as they will be when bolted down; stroke without the small gain of a pin offset.',
    'A part that is not given is not counted, and the answer says so.',
  ],
  sources: ['cylinder-ratio-parts', 'inch-volume'],
  example: {
    inputs: {
      bore: '4.000 in',
      stroke: '3.480 in',
      chamber: '64 cc',
      gasketThickness: '0.020 in',
      gasketBore: '4.000 in',
      deckClearance: '0.033 in',
      pistonVolume: '5 cc',
    },
    outputs: { ratio: '9.97', swept: '43.731 in3', deckRoom: '0.4147 in3', gasketRoom: '0.2513 in3' },
    from: 'magazine article with a worked engine (reference row MO-10)',
  },
  compute: (v) => {
    const parts = partsOf(v, v.bore);
    if (!parts.ok) return parts;
    const swept = discVolume(v.bore, v.stroke);
    const clearance = clearanceVolume(parts.value);
    if (clearance <= 0) {
      return conflict(['chamber', 'deckClearance', 'pistonVolume', 'otherVolume'], 'no clearance volume is left');
    }
    const { gasket, deck, crevice } = parts.value;
    return answer(
      {
        ratio: ratioOf(swept, clearance),
        swept,
        clearance,
        gasketRoom: gasket,
        deckRoom: deck,
        creviceRoom: crevice,
      },
      partCautions(v, parts.value, v.bore),
    );
  },
});
