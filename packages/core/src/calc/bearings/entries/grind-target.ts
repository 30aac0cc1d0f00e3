import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { journalForClearance } from '../clearance.js';
import { clearance, housing, lowerWall, upperWall } from './inputs.js';

export const grindTarget = defineCalculation({
  id: 'bearings.grind-target',
  subject: 'bearings',
  title: 'Journal diameter to grind to',
  summary: 'Journal that gives a wanted oil clearance with the housing and the shells as measured.',
  inputs: {
    housing,
    upperWall,
    lowerWall,
    clearance: { ...clearance, symbol: 'C', meaning: 'oil clearance wanted, on the diameter' },
  },
  outputs: { journal: { kind: 'length', symbol: 'J', meaning: 'journal to grind to', unit: 'mm', places: 4 } },
  formula: 'J = H − tu − tl − C',
  assumptions: ['The shells that will go in are measured, not looked up. Keep the fillet radius of the crank maker.'],
  sources: ['undersize-walls', 'derived-here'],
  example: {
    inputs: { housing: '75.005 mm', upperWall: '2.637 mm', clearance: '0.017 mm' },
    outputs: { journal: '69.714 mm' },
    from: 'reference row O-14, hand arithmetic',
  },
  compute: (v) => {
    const walls = { upper: v.upperWall, lower: v.lowerWall ?? v.upperWall };
    const journal = journalForClearance(v.housing, walls, v.clearance);
    if (journal <= 0) return conflict(['housing', 'upperWall', 'lowerWall'], 'the shells fill the housing');
    return answer({ journal });
  },
});
