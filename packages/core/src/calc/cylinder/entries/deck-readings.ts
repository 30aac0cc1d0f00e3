import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { spreadOf } from '../spread.js';
import { lengthOut, signedLength } from './inputs.js';

const reading = (symbol: string, meaning: string) => ({ ...signedLength(symbol, meaning), list: true }) as const;

export const deckReadings = defineCalculation({
  id: 'cylinder.deck-readings',
  subject: 'cylinder',
  title: 'Deck clearance or protrusion from two readings a piston',
  summary: 'Mean of two points on the pin axis, so that piston rock cancels; with rock and spread over the cylinders.',
  inputs: {
    firstSide: reading(
      'a',
      'reading at one end of the pin axis, each cylinder; below the deck positive, proud negative',
    ),
    secondSide: reading('b', 'reading at the other end of the pin axis, each cylinder'),
  },
  outputs: {
    deckClearances: { ...lengthOut('d', 'mean of each cylinder'), list: true },
    tilts: { ...lengthOut('|a − b|', 'difference of the two sides'), list: true },
    mean: lengthOut('d̄', 'mean of all cylinders'),
    least: lengthOut('dmin', 'smallest: the highest piston'),
    most: lengthOut('dmax', 'largest: the lowest piston'),
    spread: lengthOut('Δd', 'largest less smallest'),
  },
  formula: 'd = (a + b)/2',
  assumptions: ['Crank at the true top of each piston; readings on the pin axis.'],
  sources: ['shop-practice'],
  example: {
    inputs: { firstSide: ['0.021 in', '0.024 in'], secondSide: ['0.025 in', '0.026 in'] },
    outputs: { deckClearances: ['0.023 in', '0.025 in'], spread: '0.002 in', mean: '0.024 in' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    if (v.firstSide.length !== v.secondSide.length) {
      return conflict(['firstSide', 'secondSide'], 'each cylinder needs two readings');
    }
    const pairs = v.firstSide.map((a, place) => [a, v.secondSide[place] as Length] as const);
    const deckClearances = pairs.map(([a, b]) => ((a + b) / 2) as Length);
    const { least, most, apart, mean } = spreadOf(deckClearances);
    return answer({
      deckClearances,
      tilts: pairs.map(([a, b]) => Math.abs(a - b) as Length),
      mean: mean as Length,
      least: least as Length,
      most: most as Length,
      spread: apart as Length,
    });
  },
});
