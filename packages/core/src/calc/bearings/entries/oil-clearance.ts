import type { Length } from '../../../quantity/index.js';
import { answer, defineCalculation, reversedEnds, verdictOf } from '../../catalogue/index.js';
import { oilClearance as find } from '../clearance.js';
import { noClearance } from './faults.js';
import { clearanceOut, highest, housing, journal, lowerWall, lowest, upperWall, verdict } from './inputs.js';

export const oilClearance = defineCalculation({
  id: 'bearings.oil-clearance',
  subject: 'bearings',
  title: 'Oil clearance from housing, shells and journal',
  summary: 'Clearance on the diameter from the bare housing, both shell walls and the journal, against a window.',
  inputs: { housing, upperWall, lowerWall, journal, lowest, highest },
  outputs: {
    clearance: { ...clearanceOut, symbol: 'C', meaning: 'oil clearance on the diameter' },
    radialClearance: { ...clearanceOut, symbol: 'c', meaning: 'half of it, as bearing theory uses it' },
    verdict,
  },
  formula: 'C = H − tu − tl − J; c = C/2',
  assumptions: [
    'All parts clean and at one temperature; the housing with its cap at full torque; walls at the crown.',
    'One wall given stands for both halves, so that its doubt counts twice.',
    'Printed walls already include what the crush does to the housing, a few micrometres.',
  ],
  sources: ['derived-here'],
  example: {
    inputs: { housing: '68.350 mm', upperWall: '2.430 mm', journal: '63.440 mm' },
    outputs: { clearance: '0.0500 mm', radialClearance: '0.0250 mm', verdict: 'no data' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const wrong = reversedEnds(v, ['lowest', 'highest']);
    if (wrong) return wrong;
    const clearance = find(v.housing, { upper: v.upperWall, lower: v.lowerWall ?? v.upperWall }, v.journal);
    if (clearance <= 0) return noClearance(['housing', 'upperWall', 'lowerWall', 'journal']);
    return answer({
      clearance,
      radialClearance: (clearance / 2) as Length,
      verdict: verdictOf(clearance, v.lowest, v.highest),
    });
  },
});
