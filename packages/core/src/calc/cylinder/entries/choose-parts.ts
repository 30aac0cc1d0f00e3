import type { Length, Volume } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { type Combination, combinations } from '../parts-choice.js';
import {
  bore,
  lengthOut,
  ratioOut,
  ratioWanted,
  roomOrNone,
  roomOut,
  signedLength,
  signedRoom,
  size,
  stroke,
} from './inputs.js';
import { atLeast } from './verdicts.js';

const MOST = 100_000;
const SHOWN = 5;

export const chooseParts = defineCalculation({
  id: 'cylinder.choose-parts',
  subject: 'cylinder',
  title: 'Which gasket, piston, chamber and deck come nearest to a ratio at a quench',
  summary:
    'Tries every combination of the parts on offer and answers the one nearest to the ratio within the quench window.',
  inputs: {
    bore,
    stroke,
    ratio: ratioWanted,
    chambers: { ...roomOrNone('V1', 'chamber volumes on offer'), list: true },
    gasketThicknesses: { ...size('tg', 'compressed gasket thicknesses on offer'), list: true },
    gasketBore: { ...size('Bg', 'bore of the gaskets; left out: the cylinder bore'), optional: true },
    deckClearances: { ...signedLength('d', 'deck clearances that can be had, below positive'), list: true },
    pistonVolumes: { ...signedRoom('Vp', 'crown volumes on offer: dish positive, dome negative'), list: true },
    otherVolume: { ...signedRoom('Vo', 'anything else'), default: 0 },
    leastQuench: { ...size('qmin', 'smallest quench allowed'), optional: true },
    mostQuench: { ...size('qmax', 'largest quench wanted'), optional: true },
  },
  outputs: {
    chamber: roomOut('V1', 'chamber chosen'),
    gasketThickness: lengthOut('tg', 'gasket chosen'),
    deckClearance: lengthOut('d', 'deck clearance chosen'),
    pistonVolume: roomOut('Vp', 'crown chosen'),
    ratio: ratioOut('CR', 'ratio with them', 3),
    quench: lengthOut('q', 'quench with them'),
    tried: { kind: 'count', symbol: 'n', meaning: 'combinations tried' },
    fitting: { kind: 'count', symbol: 'k', meaning: 'of them within the quench window' },
    nextRatios: { ...ratioOut('CR', 'ratios of the best ones, nearest first', 3), list: true },
  },
  formula: 'least |CR − CR wanted| over all combinations with qmin ≤ d + tg ≤ qmax; of equals the smaller quench',
  assumptions: ['Every combination is tried, so no better one exists among the parts on offer.'],
  sources: ['derived-here'],
  example: {
    inputs: {
      bore: '100 mm',
      stroke: '90 mm',
      ratio: '10.0',
      chambers: ['64 cc', '70 cc'],
      gasketThicknesses: ['0.7 mm', '1.0 mm'],
      deckClearances: ['0.2 mm'],
      pistonVolumes: ['0 cc', '5 cc'],
      mostQuench: '1.0 mm',
    },
    outputs: { chamber: '70 cm3', pistonVolume: '0 cm3', ratio: '10.172', quench: '0.9 mm', tried: 8, fitting: 4 },
    from: 'hand arithmetic: 706.858/(70 + 5.498 + 1.571) + 1',
  },
  compute: (v) => {
    const tried = v.chambers.length * v.gasketThicknesses.length * v.deckClearances.length * v.pistonVolumes.length;
    const lists = ['chambers', 'gasketThicknesses', 'deckClearances', 'pistonVolumes'];
    if (tried > MOST) return conflict(lists, `that makes ${tried} combinations; at most ${MOST} are tried`);
    const fitting = combinations({
      bore: v.bore,
      stroke: v.stroke,
      gasketBore: v.gasketBore ?? v.bore,
      chambers: v.chambers,
      gaskets: v.gasketThicknesses,
      decks: v.deckClearances,
      pistons: v.pistonVolumes,
      other: v.otherVolume as Volume,
    }).filter(({ quench }) => atLeast(quench, v.leastQuench) && atLeast(v.mostQuench, quench));
    const off = ({ ratio }: Combination) => Math.abs(ratio - v.ratio);
    const ranked = fitting.toSorted((a, b) => off(a) - off(b) || a.quench - b.quench);
    const [best] = ranked;
    if (!best) return conflict([...lists, 'leastQuench', 'mostQuench'], 'no combination of these parts fits');
    return answer({
      chamber: best.chamber,
      gasketThickness: best.gasket as Length,
      deckClearance: best.deck,
      pistonVolume: best.piston,
      ratio: best.ratio,
      quench: best.quench,
      tried,
      fitting: fitting.length,
      nextRatios: ranked.slice(0, SHOWN).map(({ ratio }) => ratio),
    });
  },
});
