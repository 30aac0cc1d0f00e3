import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation, reversedEnds, verdictOf } from '../../catalogue/index.js';
import { clearanceOut, highest, journal, lowest, size, verdict } from './inputs.js';

export const installedClearance = defineCalculation({
  id: 'bearings.installed-clearance',
  subject: 'bearings',
  title: 'Oil clearance from the bore with the shells in',
  summary: 'Clearance on the diameter from the bearing bore, shells in and caps torqued, and the journal.',
  inputs: {
    bore: {
      ...size,
      symbol: 'B',
      meaning: 'bearing bore with the shells in and the cap at its torque, 90° from the parting line',
    },
    journal,
    lowest,
    highest,
  },
  outputs: {
    clearance: { ...clearanceOut, symbol: 'C', meaning: 'oil clearance on the diameter' },
    radialClearance: { ...clearanceOut, symbol: 'c', meaning: 'half of it, as bearing theory uses it' },
    verdict,
  },
  formula: 'C = B − J; c = C/2',
  assumptions: ['Both at one temperature. The bore is never read at the split: shells are relieved there.'],
  sources: ['derived-here'],
  example: {
    inputs: { bore: '2.4512 in', journal: '2.4490 in', lowest: '0.0010 in', highest: '0.0025 in' },
    outputs: { clearance: '0.0022 in', verdict: 'in' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const wrong = reversedEnds(v, ['lowest', 'highest']);
    if (wrong) return wrong;
    const clearance = (v.bore - v.journal) as Length;
    if (clearance <= 0) {
      return conflict(['bore', 'journal'], 'no clearance is left, so one size is wrong: measure both again', {
        input: 'bore',
        above: v.journal,
      });
    }
    return answer({
      clearance,
      radialClearance: (clearance / 2) as Length,
      verdict: verdictOf(clearance, v.lowest, v.highest),
    });
  },
});
