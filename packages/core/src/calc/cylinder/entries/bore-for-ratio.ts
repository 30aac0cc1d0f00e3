import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { clearanceVolume, boreForRatio as find } from '../ratio.js';
import { discVolume } from '../volumes.js';
import { lengthOut, ratioWanted, roomOrNone, roomOut, signedRoom, size, stroke } from './inputs.js';
import { chamber, deckClearance, gasketThickness, gasketVolume, pistonVolume } from './parts.js';

export const boreForRatio = defineCalculation({
  id: 'cylinder.bore-for-ratio',
  subject: 'cylinder',
  title: 'Bore for a compression ratio',
  summary: 'Bore that brings a ratio with these parts; deck volume and a gasket of the same bore grow with it.',
  inputs: {
    ratio: ratioWanted,
    stroke,
    chamber,
    gasketThickness: { ...gasketThickness, optional: true },
    gasketBore: {
      ...size('Bg', 'bore of the head gasket, diameter; left out: the gasket grows with the cylinder bore'),
      optional: true,
    },
    gasketVolume,
    deckClearance: { ...deckClearance, optional: true },
    pistonVolume: { ...pistonVolume, optional: true },
    pocketVolume: { ...roomOrNone('Vv', 'valve pockets, where not in the piston volume'), optional: true },
    creviceVolume: { ...roomOrNone('Vk', 'crevice above the top ring'), optional: true },
    otherVolume: { ...signedRoom('Vo', 'anything else'), optional: true },
  },
  outputs: {
    bore: lengthOut('B', 'cylinder bore'),
    swept: roomOut('Vs', 'swept volume of one cylinder'),
  },
  formula: 'π/4·B²·S = (CR − 1)·(V0 + π/4·B²·(d + tg)), solved for B; tg only where the gasket has the cylinder’s bore',
  assumptions: ['Parts and signs as in cylinder.compression-ratio.'],
  sources: ['derived-here'],
  example: {
    inputs: { ratio: '10.0', stroke: '90 mm', chamber: '70 cc', deckClearance: '1 mm' },
    outputs: { bore: '99.51 mm' },
    from: 'hand arithmetic: area = 9·70/(90 − 9) cm² = 77.78 cm²',
  },
  compute: (v) => {
    const { gasketThickness: thick, gasketBore, gasketVolume } = v;
    if (gasketVolume !== undefined && (thick !== undefined || gasketBore !== undefined)) {
      return conflict(['gasketVolume', 'gasketThickness', 'gasketBore'], 'the gasket is given twice');
    }
    if (gasketBore !== undefined && thick === undefined) {
      return conflict(['gasketBore'], 'a gasket bore says nothing without the gasket thickness');
    }
    const own = gasketBore !== undefined && thick !== undefined ? discVolume(gasketBore, thick) : gasketVolume;
    const grows = (v.deckClearance ?? 0) + (gasketBore === undefined ? (thick ?? 0) : 0);
    const fixed = clearanceVolume({
      chamber: v.chamber,
      gasket: own,
      piston: v.pistonVolume,
      pocket: v.pocketVolume,
      crevice: v.creviceVolume,
      other: v.otherVolume,
    });
    const found = find(fixed, grows as Length, v.stroke, v.ratio);
    if (!found.ok) {
      return conflict(['ratio', 'stroke', 'chamber', 'deckClearance', 'gasketThickness'], 'no bore brings this ratio');
    }
    return answer({ bore: found.value, swept: discVolume(found.value, v.stroke) });
  },
});
