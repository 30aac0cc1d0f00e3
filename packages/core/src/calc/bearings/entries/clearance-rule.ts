import { answer, defineCalculation } from '../../catalogue/index.js';
import { clearanceByRule } from '../clearance.js';
import { clearanceOut, journal } from './inputs.js';

export const clearanceRule = defineCalculation({
  id: 'bearings.clearance-rule',
  subject: 'bearings',
  title: 'Oil clearance by the size of the journal',
  summary: 'Rule of thumb: 0.00075 to 0.0010 inch for each inch of journal, or the same share in millimetres.',
  inputs: { journal: { ...journal, meaning: 'journal diameter' } },
  outputs: {
    low: { ...clearanceOut, symbol: 'C min', meaning: 'low end of the rule', places: 4 },
    high: { ...clearanceOut, symbol: 'C max', meaning: 'high end of the rule', places: 4 },
  },
  formula: 'C = 0.00075·J to 0.0010·J',
  assumptions: ['On the diameter, read 90° from the split. The engine maker’s window outranks it by far.'],
  sources: ['clearance-rule'],
  example: {
    inputs: { journal: '2.000 in' },
    outputs: { low: '0.0015 in', high: '0.0020 in' },
    from: 'reference row O-12, example printed in the source',
  },
  compute: ({ journal: j }) => answer(clearanceByRule(j)),
});
