import type { Length } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { deckClearance as find } from '../deck.js';
import { spreadOf } from '../spread.js';
import { lengthOut, size, stroke } from './inputs.js';
import { sameLength } from './lists.js';

const each = 'one value for all, or one for each cylinder';
const list = (symbol: string, meaning: string) => ({ ...size(symbol, `${meaning}; ${each}`), list: true }) as const;

export const deckClearance = defineCalculation({
  id: 'cylinder.deck-clearance',
  subject: 'cylinder',
  title: 'Deck clearance from block, crank, rod and piston',
  summary: 'Where the crown stops at top dead centre, cylinder by cylinder: below the deck positive, proud negative.',
  inputs: {
    deckHeights: list('H', 'crankshaft centre to deck'),
    strokes: { ...stroke, meaning: `stroke; ${each}`, list: true },
    rodLengths: list('l', 'connecting rod, centre to centre'),
    compressionHeights: list('K', 'piston pin centre to crown flat'),
  },
  outputs: {
    deckClearances: { ...lengthOut('d', 'deck clearance of cylinder 1, 2, 3 ...'), list: true },
    least: lengthOut('dmin', 'smallest: the highest piston'),
    most: lengthOut('dmax', 'largest: the lowest piston'),
    spread: lengthOut('Δd', 'largest less smallest'),
  },
  formula: 'd = H − S/2 − l − K',
  assumptions: ['Bearing clearances, pin offset and heat left out; measured with bridge and dial is surer.'],
  sources: ['derived-here'],
  example: {
    inputs: {
      deckHeights: ['9.025 in'],
      strokes: ['3.480 in'],
      rodLengths: ['5.700 in'],
      compressionHeights: ['1.560 in', '1.565 in'],
    },
    outputs: { deckClearances: ['0.025 in', '0.020 in'], spread: '0.005 in' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const { deckHeights, strokes, rodLengths, compressionHeights } = v;
    const lists = sameLength({ deckHeights, strokes, rodLengths, compressionHeights });
    if (!lists.ok) return lists;
    const { count, at } = lists.value;
    const found = Array.from({ length: count }, (_, i) =>
      find({
        deckHeight: at('deckHeights', i),
        stroke: at('strokes', i),
        rodLength: at('rodLengths', i),
        compressionHeight: at('compressionHeights', i),
      }),
    );
    const { least, most, apart } = spreadOf(found);
    return answer({
      deckClearances: found,
      least: least as Length,
      most: most as Length,
      spread: apart as Length,
    });
  },
});
