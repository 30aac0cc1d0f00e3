import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { gapInBore } from '../rings.js';
import { height, lengthOut, signedLength } from './inputs.js';

export const ringFiling = defineCalculation({
  id: 'cylinder.ring-filing',
  subject: 'cylinder',
  title: 'How much to file off ring ends',
  summary: 'For each ring the amount to its target gap, counting a honing still to come; metal cannot be put back.',
  inputs: {
    gaps: { ...height('g', 'end gap of each ring as measured in its bore'), list: true },
    target: height('gt', 'end gap wanted'),
    most: { ...height('gmax', 'largest end gap allowed'), optional: true },
    boreChange: { ...signedLength('ΔB', 'bore still to grow by honing after the gaps were measured'), default: 0 },
  },
  outputs: {
    toFile: { ...lengthOut('Δ', 'to file off each ring, 0 when the gap is wide enough', 4), list: true },
    gapsAfter: { ...lengthOut('g′', 'gap of each ring afterwards', 4), list: true },
    total: lengthOut('ΣΔ', 'to file in all', 4),
    tooLarge: {
      kind: 'count',
      symbol: 'i',
      meaning: 'places of rings whose gap is over the largest allowed',
      list: true,
    },
  },
  formula: 'Δ = max(0, gt − g − π·ΔB)',
  assumptions: ['Ring square in the bore; file in small steps and measure again.'],
  sources: ['ring-gap-pi', 'derived-here'],
  example: {
    inputs: { gaps: ['0.0130 in', '0.0190 in', '0.0260 in'], target: '0.0180 in', most: '0.0250 in' },
    outputs: { toFile: ['0.0050 in', '0.0000 in', '0.0000 in'], total: '0.0050 in', tooLarge: [3] },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    if (v.most !== undefined && v.most < v.target) {
      return conflict(['target', 'most'], 'the largest gap lies below the gap wanted', {
        input: 'most',
        from: v.target,
      });
    }
    const now = v.gaps.map((gap) => gapInBore(gap, 0 as Length, v.boreChange));
    const toFile = now.map((gap) => Math.max(0, v.target - gap) as Length);
    const gapsAfter = now.map((gap, place) => (gap + (toFile[place] as Length)) as Length);
    const most = v.most ?? Number.POSITIVE_INFINITY;
    return answer({
      toFile,
      gapsAfter,
      total: toFile.reduce<number>((sum, one) => sum + one, 0) as Length,
      tooLarge: gapsAfter.flatMap((gap, place) => (gap > most + 1e-10 ? [place + 1] : [])),
    });
  },
});
