import type { Mass } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { bobweight as find } from '../bobweight.js';
import { factor, massOrNone, massOut } from './inputs.js';

export const bobweightUnequal = defineCalculation({
  id: 'balance.bobweight-unequal',
  subject: 'balance',
  title: 'Bobweight of a crankpin with unequal rods',
  summary:
    'For pins whose rods or pistons differ, such as fork and blade: one rotating and one reciprocating mass a rod.',
  inputs: {
    rotating: { ...massOrNone('mrot', 'big end and shells of each rod on the pin'), list: true },
    reciprocating: {
      ...massOrNone('mrec', 'piston, pin, locks, rings and small end of each rod on the pin'),
      list: true,
    },
    oil: { ...massOrNone('mo', 'oil allowance of the whole crankpin'), default: 0 },
    factor,
  },
  outputs: { bobweight: massOut('Mb', 'bobweight') },
  formula: 'Mb = Σ mrot + mo + f·Σ mrec',
  assumptions: ['As in balance.bobweight.'],
  sources: ['shop-practice'],
  example: {
    inputs: { rotating: ['507.0 g'], reciprocating: ['1988.4 g'], oil: '4 g', factor: '50 %' },
    outputs: { bobweight: '1505.2 g' },
    from: 'reference row MO-38 with the pair as one sum',
  },
  compute: (v) => {
    if (v.rotating.length !== v.reciprocating.length) {
      return conflict(['rotating', 'reciprocating'], 'each rod needs a rotating and a reciprocating mass');
    }
    const rods = v.rotating.map((rotating, at) => ({ rotating, reciprocating: v.reciprocating[at] as Mass }));
    return answer({ bobweight: find(rods, v.oil as Mass, v.factor) });
  },
});
