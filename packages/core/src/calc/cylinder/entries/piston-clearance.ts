import type { Length, Ratio } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { height, lengthOut, signedLength, size, verdictOut } from './inputs.js';
import { against } from './verdicts.js';

export const pistonClearance = defineCalculation({
  id: 'cylinder.piston-clearance',
  subject: 'cylinder',
  title: 'Piston-to-bore clearance',
  summary: 'Bore less piston on diameter, against limits, with the honing that a tight one needs.',
  inputs: {
    bore: size('B', 'bore at the maker’s height'),
    piston: size('A', 'piston at the maker’s measuring point, across the pin'),
    boreDepth: { ...height('hb', 'depth below the deck at which the bore was measured'), optional: true },
    skirtHeight: { ...height('hs', 'height above the skirt’s end at which the piston was measured'), optional: true },
    coating: {
      kind: 'choice',
      symbol: 'coating',
      meaning: 'whether the piston was measured over a skirt coating',
      choices: ['none', 'measured with coating', 'not said'],
      default: 'not said',
    },
    least: {
      ...signedLength('cmin', 'smallest clearance allowed; published negative for some coated skirts'),
      optional: true,
    },
    most: { ...signedLength('cmax', 'largest clearance allowed'), optional: true },
  },
  outputs: {
    clearance: lengthOut('c', 'clearance on diameter; negative: interference', 4),
    perSide: lengthOut('c/2', 'to each side', 4),
    toHone: { ...lengthOut('Δ', 'to hone for the smallest clearance, 0 when there is enough', 4), optional: true },
    share: { kind: 'ratio', symbol: 'c/B', meaning: 'clearance over bore, in in per in', unit: '', places: 5 },
    verdict: verdictOut('against the limits given'),
  },
  formula: 'c = B − A',
  assumptions: [
    'Both at one temperature. Each maker names his own measuring point: a diameter without it is not comparable.',
  ],
  sources: ['piston-selection'],
  example: {
    inputs: {
      bore: '99.005 mm',
      piston: '98.990 mm',
      boreDepth: '64 mm',
      skirtHeight: '11 mm',
      least: '0.018 mm',
      most: '0.054 mm',
    },
    outputs: { clearance: '0.015 mm', toHone: '0.003 mm', verdict: 'too small' },
    from: 'published limits and measuring points (reference row O-06), readings ours',
  },
  compute: (v) => {
    const clearance = (v.bore - v.piston) as Length;
    const toHone = v.least === undefined ? undefined : (Math.max(0, v.least - clearance) as Length);
    const nowhere = v.boreDepth === undefined || v.skirtHeight === undefined;
    const place = {
      code: 'measuring-point',
      text: 'where bore and piston were measured is not said: not comparable with a limit',
    };
    return answer(
      {
        clearance,
        perSide: (clearance / 2) as Length,
        toHone,
        share: (clearance / v.bore) as Ratio,
        verdict: against(clearance, v.least, v.most),
      },
      nowhere ? [place] : [],
    );
  },
});
