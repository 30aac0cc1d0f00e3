import type { Length, Mass } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { mass, massOrNone, massOut, size } from './inputs.js';

export const rodEndsByScale = defineCalculation({
  id: 'balance.rod-ends-by-scale',
  subject: 'balance',
  title: 'Rod ends from weighing',
  summary: 'Big and small end of a rod from two of three weighings, or a check of all three; with the centre of mass.',
  inputs: {
    total: mass('m', 'whole rod'),
    bigEnd: { ...mass('mb', 'big end on the scale, small end hung level'), optional: true },
    smallEnd: { ...mass('mk', 'small end on the scale, big end hung level'), optional: true },
    rodLength: { ...size('l', 'rod, centre to centre; gives the centre of mass'), optional: true },
    allowed: { ...massOrNone('Δm', 'largest difference between the sum of the ends and the whole'), default: 0.001 },
  },
  outputs: {
    bigEnd: massOut('mb', 'big end'),
    smallEnd: massOut('mk', 'small end'),
    difference: { ...massOut('Δ', 'ends together less the whole, where all three were weighed', 2), optional: true },
    fromBigEnd: {
      kind: 'length',
      symbol: 'x',
      meaning: 'centre of mass from the big eye',
      unit: 'mm',
      places: 2,
      optional: true,
    },
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'whether the weighings agree' },
  },
  formula: 'mb + mk = m; x = l·mk/(mb + mk)',
  assumptions: ['Rod level and free at the hung end. A rod that is not level shifts mass from one end to the other.'],
  sources: ['shop-practice'],
  example: {
    inputs: { total: '392.2 g', bigEnd: '229.8 g', rodLength: '150 mm' },
    outputs: { smallEnd: '162.4 g', fromBigEnd: '62.11 mm' },
    from: 'ends of reference row MO-38, hand arithmetic',
  },
  compute: (v) => {
    const bigEnd = v.bigEnd ?? less(v.total, v.smallEnd);
    if (bigEnd === undefined) return conflict(['total'], 'at least one end must be weighed: give bigEnd or smallEnd');
    const smallEnd = v.smallEnd ?? ((v.total - bigEnd) as Mass);
    if (bigEnd <= 0 || smallEnd <= 0)
      return conflict(['total', 'bigEnd', 'smallEnd'], 'one end weighs more than the whole rod');
    const checked = v.bigEnd !== undefined && v.smallEnd !== undefined;
    const difference = checked ? ((bigEnd + smallEnd - v.total) as Mass) : undefined;
    const share = smallEnd / (bigEnd + smallEnd);
    return answer({
      bigEnd,
      smallEnd,
      difference,
      fromBigEnd: v.rodLength === undefined ? undefined : ((v.rodLength * share) as Length),
      verdict: verdictOf(difference, v.allowed),
    });
  },
});

const less = (total: Mass, end: Mass | undefined): Mass | undefined =>
  end === undefined ? undefined : ((total - end) as Mass);

function verdictOf(difference: number | undefined, allowed: number): string {
  if (difference === undefined) return 'not checked: two weighings only';
  return Math.abs(difference) <= allowed + 1e-9 ? 'weighings agree' : 'weighings disagree: weigh again';
}
