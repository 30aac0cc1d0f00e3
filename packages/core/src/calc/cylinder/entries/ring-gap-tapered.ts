import type { Length } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { gapInBore } from '../rings.js';
import { spreadOf } from '../spread.js';
import { height, lengthOut, size, verdictOut } from './inputs.js';
import { against } from './verdicts.js';

export const ringGapTapered = defineCalculation({
  id: 'cylinder.ring-gap-tapered',
  subject: 'cylinder',
  title: 'Ring end gap along a tapered bore',
  summary: 'Gap at every height from one measured; the smallest bore decides whether the ends meet.',
  inputs: {
    gap: height('g', 'end gap measured'),
    measuredIn: size('Bm', 'bore at the height where it was measured'),
    bores: { ...size('B', 'bores along the ring’s travel, top to bottom'), list: true },
    least: { ...height('gmin', 'smallest gap wanted anywhere'), optional: true },
  },
  outputs: {
    gaps: { ...lengthOut('g′', 'gap at each height; negative: the ends meet', 4), list: true },
    smallest: lengthOut('g′min', 'smallest gap', 4),
    smallestPlace: { kind: 'count', symbol: 'i', meaning: 'place of the smallest in the list, from 1' },
    largest: lengthOut('g′max', 'largest gap', 4),
    toFile: { ...lengthOut('Δ', 'to file so that the smallest gap is wide enough, 0 when it is', 4), optional: true },
    verdict: verdictOut('smallest gap against the gap wanted'),
  },
  formula: 'g′ = g + π·(B − Bm)',
  assumptions: ['Ring square in the bore. Measure the gap low down, in the unworn part.'],
  sources: ['ring-gap-pi', 'derived-here'],
  example: {
    inputs: {
      gap: '0.0286 in',
      measuredIn: '4.0040 in',
      bores: ['4.0040 in', '4.0015 in', '4.0000 in'],
      least: '0.0180 in',
    },
    outputs: { smallest: '0.0160 in', smallestPlace: 3, toFile: '0.0020 in', verdict: 'too small' },
    from: 'reference row O-08 turned round: 0.0286 − π·0.0040',
  },
  compute: (v) => {
    const gaps = v.bores.map((bore) => gapInBore(v.gap, v.measuredIn, bore));
    const { least, most, leastAt } = spreadOf(gaps);
    const meets = { code: 'ends-meet', text: 'the ring ends meet in the narrow part' };
    return answer(
      {
        gaps,
        smallest: least as Length,
        smallestPlace: leastAt,
        largest: most as Length,
        toFile: v.least === undefined ? undefined : (Math.max(0, v.least - least) as Length),
        verdict: against(least, v.least, undefined),
      },
      least <= 0 ? [meets] : [],
    );
  },
});
