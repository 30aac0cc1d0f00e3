import { mm } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { rockerSweep as find } from '../sweep.js';
import { smallLength } from './inputs.js';

export const rockerSweep = defineCalculation({
  id: 'valvetrain.rocker-sweep',
  subject: 'valvetrain',
  title: 'Sweep of the rocker tip across the valve stem',
  summary: 'How far the contact moves over the stem, for the place in the lift at which the tip stands square.',
  inputs: {
    arm: {
      kind: 'length',
      symbol: 'R',
      meaning: 'pivot to tip contact',
      unit: 'mm',
      range: { above: 0, to: mm(500) },
    },
    lift: { ...smallLength, symbol: 'L', meaning: 'net valve lift' },
    squareAt: {
      kind: 'choice',
      symbol: 'square at',
      meaning: 'where in the lift the tip stands square to the stem',
      choices: ['half-lift', 'closed'],
      default: 'half-lift',
    },
  },
  outputs: {
    swing: { kind: 'angle', symbol: 'φ', meaning: 'swing of the arm', unit: 'deg', places: 2 },
    sweep: { kind: 'length', symbol: 'w', meaning: 'movement across the stem', unit: 'mm', places: 3 },
  },
  formula: 'half lift: φ = 2·asin(L/2R), w = R·(1 − cos(φ/2)); closed: φ = asin(L/R), w = R·(1 − cos φ)',
  assumptions: ['The mark on the stem is the sweep plus the contact patch.'],
  sources: ['derived-here', 'shop-practice'],
  example: {
    inputs: { arm: '1.470 in', lift: '0.500 in', squareAt: 'half-lift' },
    outputs: { swing: '19.58 deg', sweep: '0.0214 in' },
    from: 'reference row MO-26',
  },
  compute: (v) => {
    const found = find(v.arm, v.lift, v.squareAt);
    if (found.ok) return answer({ ...found.value });
    return conflict(['arm', 'lift'], 'the arm cannot reach that lift', { input: 'arm', above: found.fault.needed });
  },
});
