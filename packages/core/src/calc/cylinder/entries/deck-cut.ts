import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { deckCuts } from '../deck.js';
import { height, lengthOut, signedLength, size, verdictOut } from './inputs.js';
import { atLeast } from './verdicts.js';

export const deckCut = defineCalculation({
  id: 'cylinder.deck-cut',
  subject: 'cylinder',
  title: 'Deck cut of a bank to one clearance, square at every corner',
  summary: 'What comes off at each place measured, the deepest and the shallowest, and the deck height that is left.',
  inputs: {
    deckClearances: {
      ...signedLength('d', 'deck clearance now at each cylinder or corner of the bank, below positive'),
      list: true,
    },
    target: signedLength('dt', 'deck clearance wanted everywhere'),
    deckHeight: { ...size('H', 'deck height now at the place with the largest clearance'), optional: true },
    leastDeckHeight: { ...size('Hmin', 'smallest deck height allowed'), optional: true },
    alreadyCut: { ...height('c0', 'taken off this deck before'), default: 0 },
    mostCut: { ...height('cmax', 'most that may come off this deck in all'), optional: true },
  },
  outputs: {
    cuts: { ...lengthOut('c', 'to take off at each place; negative: already below the target'), list: true },
    deepest: lengthOut('cmax', 'largest cut'),
    shallowest: lengthOut('cmin', 'smallest cut'),
    deckHeightLeft: { ...lengthOut('H′', 'deck height left'), optional: true },
    verdict: verdictOut('whether the target can be reached within the limits'),
  },
  formula: 'c = d − dt at each place; H′ = H − largest cut',
  assumptions: [
    'Pistons alike, so that the clearances show the deck. Intake face, pushrods and valve room move with it.',
  ],
  sources: ['derived-here'],
  example: {
    inputs: { deckClearances: ['0.025 in', '0.022 in', '0.024 in', '0.020 in'], target: '0.005 in' },
    outputs: { cuts: ['0.020 in', '0.017 in', '0.019 in', '0.015 in'], deepest: '0.020 in', verdict: 'can be cut' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    if (v.leastDeckHeight !== undefined && v.deckHeight === undefined) {
      return conflict(['leastDeckHeight'], 'a smallest deck height says nothing without the deck height now');
    }
    const cuts = deckCuts(v.deckClearances, v.target);
    const deepest = Math.max(...cuts) as Length;
    const shallowest = Math.min(...cuts) as Length;
    const deckHeightLeft = v.deckHeight === undefined ? undefined : ((v.deckHeight - deepest) as Length);
    const total = v.alreadyCut + deepest;
    const faults = [
      shallowest < 0 && 'a place is already below the target',
      !atLeast(deckHeightLeft, v.leastDeckHeight) && 'the deck height left is too small',
      !atLeast(v.mostCut, total) && 'more comes off in all than is allowed',
    ].filter((one) => one !== false);
    const verdict = faults.length === 0 ? 'can be cut' : `cannot be cut: ${faults.join('; ')}`;
    return answer({ cuts, deepest, shallowest, deckHeightLeft, verdict });
  },
});
