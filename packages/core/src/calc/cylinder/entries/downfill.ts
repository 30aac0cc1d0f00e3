import type { Volume } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { downfill as find } from '../burette.js';
import { compressionRatio } from '../ratio.js';
import { discVolume } from '../volumes.js';
import { bore, ratioOut, roomOrNone, roomOut, signedLength, size, stroke } from './inputs.js';

export const downfill = defineCalculation({
  id: 'cylinder.downfill',
  subject: 'cylinder',
  title: 'Crown volume and ratio from a downfill',
  summary: 'Piston lowered by a known depth and the room above it filled: what the crown adds, and the ratio with it.',
  inputs: {
    bore,
    depth: size('h', 'how far the piston is lowered'),
    depthFrom: {
      kind: 'choice',
      symbol: 'zero',
      meaning: 'from where the depth counts: the piston’s own top dead centre, or the deck down to the crown flat',
      choices: ['own-top', 'deck'],
      default: 'own-top',
    },
    measured: roomOrNone('Vm', 'volume filled in, up to the deck'),
    stroke: { ...stroke, optional: true },
    chamber: { ...roomOrNone('V1', 'combustion chamber; with stroke and gasket gives the ratio'), optional: true },
    gasketVolume: { ...roomOrNone('Vg', 'volume inside the head gasket'), optional: true },
    deckClearance: {
      ...signedLength('d', 'deck clearance, below positive; counted only where the depth is from the deck'),
      optional: true,
    },
  },
  outputs: {
    perfect: roomOut('V0', 'plain cylinder of this depth'),
    extra: roomOut('ΔV', 'measured less plain: room that the crown adds, dome negative'),
    swept: { ...roomOut('Vs', 'swept volume'), optional: true },
    clearance: { ...roomOut('Vc', 'clearance volume'), optional: true },
    ratio: { ...ratioOut('CR', 'static compression ratio'), optional: true },
  },
  formula: 'ΔV = Vm − π/4·B²·h; Vc = V1 + Vg + ΔV (+ π/4·B²·d with the depth from the deck); CR = (Vs + Vc)/Vc',
  assumptions: [
    'From its own top: the extra volume holds dish, reliefs, dome, crevice and the deck clearance at once.',
    'From the deck: it holds the same without the deck clearance, which is then needed for the ratio.',
  ],
  sources: ['downfill'],
  example: {
    inputs: {
      bore: '4.070 in',
      depth: '0.500 in',
      measured: '113 cc',
      stroke: '3.31 in',
      chamber: '67 cc',
      gasketVolume: '8.0 cc',
    },
    outputs: { perfect: '106.6 cm3', extra: '6.4 cm3', swept: '705.7 cm3', ratio: '9.67' },
    from: 'published measurement (reference row MO-11; the page rounds the extra volume to 6.5 and gets 9.66)',
  },
  compute: (v) => {
    const perfect = discVolume(v.bore, v.depth);
    const extra = find(v.measured, v.bore, v.depth);
    const { stroke: s, chamber, gasketVolume, deckClearance } = v;
    const unknown = { perfect, extra, swept: undefined, clearance: undefined, ratio: undefined };
    if (s === undefined && chamber === undefined && gasketVolume === undefined) return answer(unknown);
    if (s === undefined || chamber === undefined || gasketVolume === undefined) {
      return conflict(
        ['stroke', 'chamber', 'gasketVolume'],
        'the ratio needs stroke, chamber and gasketVolume together',
      );
    }
    if (v.depthFrom === 'deck' && deckClearance === undefined) {
      return conflict(['depthFrom'], 'with the depth from the deck, deckClearance is needed for the ratio');
    }
    const above = v.depthFrom === 'deck' && deckClearance !== undefined ? discVolume(v.bore, deckClearance) : 0;
    const clearance = (chamber + gasketVolume + extra + above) as Volume;
    if (clearance <= 0) return conflict(['measured', 'chamber', 'gasketVolume'], 'no clearance volume is left');
    const swept = discVolume(v.bore, s);
    return answer({ perfect, extra, swept, clearance, ratio: compressionRatio(swept, clearance) });
  },
});
