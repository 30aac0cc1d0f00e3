import { cubicCentimetres, type Ratio, type Volume } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { clearanceVolume, compressionRatio } from '../ratio.js';
import { spreadOf } from '../spread.js';
import { discVolume } from '../volumes.js';
import { bore, height, ratioOut, signedLength, signedRoom, size, stroke } from './inputs.js';
import { sameLength } from './lists.js';

const each = 'one value for all, or one for each cylinder';

export const ratioSpread = defineCalculation({
  id: 'cylinder.ratio-spread',
  subject: 'cylinder',
  title: 'Compression ratio of every cylinder, and their spread',
  summary:
    'Static ratio cylinder by cylinder from measured chambers, decks and crowns, with the lowest and the highest.',
  inputs: {
    bores: { ...bore, meaning: `cylinder bore; ${each}`, list: true },
    strokes: { ...stroke, meaning: `stroke; ${each}`, list: true },
    chambers: {
      kind: 'volume',
      symbol: 'V1',
      meaning: `combustion chamber; ${each}`,
      unit: 'cm3',
      range: { above: 0, to: cubicCentimetres(1e6) },
      list: true,
    },
    gasketThickness: { ...height('tg', 'head gasket, compressed thickness'), optional: true },
    gasketBore: { ...size('Bg', 'bore of the head gasket; left out: the cylinder bore'), optional: true },
    deckClearances: {
      ...signedLength('d', `deck clearance, below the deck positive; ${each}`),
      list: true,
      optional: true,
    },
    pistonVolumes: { ...signedRoom('Vp', `crown: dish positive, dome negative; ${each}`), list: true, optional: true },
    otherVolumes: { ...signedRoom('Vo', `anything else; ${each}`), list: true, optional: true },
  },
  outputs: {
    ratios: { ...ratioOut('CR', 'ratio of cylinder 1, 2, 3 ...', 3), list: true },
    lowest: ratioOut('CRmin', 'lowest ratio', 3),
    highest: ratioOut('CRmax', 'highest ratio', 3),
    spread: ratioOut('ΔCR', 'highest less lowest', 3),
    lowestCylinder: { kind: 'count', symbol: 'imin', meaning: 'place of the lowest in the lists, from 1' },
    highestCylinder: { kind: 'count', symbol: 'imax', meaning: 'place of the highest in the lists, from 1' },
  },
  formula: 'CR = (Vs + Vc)/Vc for each cylinder, Vc = V1 + Vg + π/4·B²·d + Vp + Vo',
  assumptions: ['Parts and signs as in cylinder.compression-ratio; one gasket for all.'],
  sources: ['derived-here', 'cylinder-ratio-parts'],
  example: {
    inputs: {
      bores: ['100 mm'],
      strokes: ['90 mm'],
      chambers: ['70 cc', '71 cc'],
      gasketThickness: '1 mm',
      deckClearances: ['0 mm', '0.1 mm'],
    },
    outputs: { ratios: ['10.079', '9.876'], spread: '0.204', lowestCylinder: 2 },
    from: 'hand arithmetic: 706.858/77.854 + 1 and 706.858/79.639 + 1',
  },
  compute: (v) => {
    const { bores, strokes, chambers, deckClearances, pistonVolumes, otherVolumes } = v;
    const lists = sameLength({ bores, strokes, chambers, deckClearances, pistonVolumes, otherVolumes });
    if (!lists.ok) return lists;
    if (v.gasketBore !== undefined && v.gasketThickness === undefined) {
      return conflict(['gasketBore'], 'a gasket bore says nothing without the gasket thickness');
    }
    const { count, at } = lists.value;
    const ratios: Ratio[] = [];
    for (let i = 0; i < count; i += 1) {
      const b = at('bores', i);
      const deck = at('deckClearances', i);
      const clearance = clearanceVolume({
        chamber: at('chambers', i),
        gasket: v.gasketThickness && discVolume(v.gasketBore ?? b, v.gasketThickness),
        deck: deck && discVolume(b, deck),
        piston: at('pistonVolumes', i),
        other: at('otherVolumes', i),
      } as { chamber: Volume });
      if (clearance <= 0) {
        return conflict(
          ['chambers', 'deckClearances', 'pistonVolumes'],
          `no clearance volume is left at place ${i + 1}`,
        );
      }
      ratios.push(compressionRatio(discVolume(b, at('strokes', i)), clearance));
    }
    const { least, most, apart, leastAt, mostAt } = spreadOf(ratios);
    return answer({
      ratios,
      lowest: least as Ratio,
      highest: most as Ratio,
      spread: apart as Ratio,
      lowestCylinder: leastAt,
      highestCylinder: mostAt,
    });
  },
});
