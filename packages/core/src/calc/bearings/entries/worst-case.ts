import type { Length } from '../../../quantity/index.js';
import { answer, type Caution, conflict, defineCalculation, reversedEnds } from '../../catalogue/index.js';
import { agreement, worstCaseClearance } from '../clearance.js';
import { clearanceOut, highest, lowest, size } from './inputs.js';

const disagree: Caution = {
  code: 'ranges-disagree',
  text: 'the part ranges give clearances outside the printed ones: a figure or a mark is misprinted or misread',
};

export const worstCase = defineCalculation({
  id: 'bearings.worst-case-clearance',
  subject: 'bearings',
  title: 'Least and most oil clearance from ranges of parts',
  summary: 'Worst case of housing, shell and journal ranges, and whether it can be the clearance that is printed.',
  inputs: {
    housingLow: { ...size, symbol: 'H min', meaning: 'housing bore, low end' },
    housingHigh: { ...size, symbol: 'H max', meaning: 'housing bore, high end' },
    journalLow: { ...size, symbol: 'J min', meaning: 'journal, low end' },
    journalHigh: { ...size, symbol: 'J max', meaning: 'journal, high end' },
    wallLow: { ...size, symbol: 't min', meaning: 'shell wall (upper half), low end' },
    wallHigh: { ...size, symbol: 't max', meaning: 'shell wall (upper half), high end' },
    lowerWallLow: { ...size, symbol: 'tl min', meaning: 'lower half, low end; left out: as the upper', optional: true },
    lowerWallHigh: {
      ...size,
      symbol: 'tl max',
      meaning: 'lower half, high end; left out: as the upper',
      optional: true,
    },
    printedLow: { ...lowest, symbol: 'P min', meaning: 'printed standard clearance, low end' },
    printedHigh: { ...highest, symbol: 'P max', meaning: 'printed standard clearance, high end' },
  },
  outputs: {
    least: { ...clearanceOut, symbol: 'C min', meaning: 'least clearance; negative: interference' },
    most: { ...clearanceOut, symbol: 'C max', meaning: 'most clearance' },
    middle: { ...clearanceOut, symbol: 'C mid', meaning: 'middle of both' },
    verdict: {
      kind: 'text',
      symbol: 'verdict',
      meaning: 'equal, inside, reaches outside or cannot, against the printed clearance; no data without one',
    },
  },
  formula: 'C min = H min − tu max − tl max − J max; C max = H max − tu min − tl min − J min',
  assumptions: ['Every part at its end at once. Marks hold for new parts only; used parts are measured.'],
  sources: ['grade-chart', 'derived-here'],
  example: {
    inputs: {
      housingLow: '74.032 mm',
      housingHigh: '74.038 mm',
      journalLow: '68.994 mm',
      journalHigh: '69.000 mm',
      wallLow: '2.492 mm',
      wallHigh: '2.495 mm',
      printedLow: '0.042 mm',
      printedHigh: '0.060 mm',
    },
    outputs: { least: '0.0420 mm', most: '0.0600 mm', middle: '0.0510 mm', verdict: 'equal' },
    from: 'reference row O-10, printed grade chart: bore mark 2, journal mark 1, shell 3',
  },
  compute: (v) => {
    const wrong = reversedEnds(
      v,
      ['housingLow', 'housingHigh'],
      ['journalLow', 'journalHigh'],
      ['wallLow', 'wallHigh'],
      ['lowerWallLow', 'lowerWallHigh'],
      ['printedLow', 'printedHigh'],
    );
    if (wrong) return wrong;
    const upper = { low: v.wallLow, high: v.wallHigh };
    const lower = rangeOf(v.lowerWallLow, v.lowerWallHigh);
    const printed = rangeOf(v.printedLow, v.printedHigh);
    if (lower === 'half') return conflict(['lowerWallLow', 'lowerWallHigh'], 'the lower half needs both ends');
    if (printed === 'half') return conflict(['printedLow', 'printedHigh'], 'the printed clearance needs both ends');
    const housing = { low: v.housingLow, high: v.housingHigh };
    const journal = { low: v.journalLow, high: v.journalHigh };
    const found = worstCaseClearance(housing, { upper, lower: lower ?? upper }, journal);
    const verdict = printed ? agreement(found, printed) : 'no data';
    return answer(
      {
        least: found.low,
        most: found.high,
        middle: ((found.low + found.high) / 2) as Length,
        verdict,
      },
      verdict === 'cannot' || verdict === 'reaches outside' ? [disagree] : [],
    );
  },
});

/** Both ends, none, or `half` of a range. */
function rangeOf(low: Length | undefined, high: Length | undefined) {
  if (low === undefined && high === undefined) return undefined;
  return low === undefined || high === undefined ? 'half' : { low, high };
}
