import type { Mass } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { removals } from '../matching.js';
import { mass, massOrNone, massOut } from './inputs.js';

export const weightMatch = defineCalculation({
  id: 'balance.weight-match',
  subject: 'balance',
  title: 'Weights matched to the lightest',
  summary: 'What to take off each piece, which pieces cannot give that much, and the spread before.',
  inputs: {
    masses: { ...mass('m', 'each piece: pistons, pins, or rod ends of one kind'), list: true },
    canLose: { ...massOrNone('c', 'most that may be taken off a piece'), optional: true },
    tolerance: { ...massOrNone('tol', 'a piece within this of the lightest is left alone'), default: 0 },
  },
  outputs: {
    remove: { ...massOut('Δ', 'to take off each piece', 2), list: true },
    target: massOut('mt', 'what all will weigh: the lightest', 2),
    lightest: { kind: 'count', symbol: 'i', meaning: 'place of the lightest in the list, from 1' },
    spread: massOut('R', 'heaviest less lightest, before', 2),
    total: massOut('ΣΔ', 'to take off in all', 2),
    cannot: { kind: 'count', symbol: 'j', meaning: 'places of pieces that cannot lose enough', list: true },
  },
  formula: 'Δ = m − least m, 0 within the tolerance',
  assumptions: ['Metal can only be taken away; where, the maker says. Small and big ends are matched each by itself.'],
  sources: ['shop-practice'],
  example: {
    inputs: { masses: ['583.9 g', '585.1 g', '584.2 g'], tolerance: '0.5 g' },
    outputs: { remove: ['0.00 g', '1.20 g', '0.00 g'], target: '583.9 g', spread: '1.20 g', lightest: 1 },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    if (v.masses.length < 2) return conflict(['masses'], 'one piece has nothing to be matched to');
    const target = Math.min(...v.masses) as Mass;
    const within = v.tolerance + 1e-12;
    const remove = removals(v.masses, target).map((one) => (one <= within ? 0 : one) as Mass);
    const most = v.canLose ?? Number.POSITIVE_INFINITY;
    return answer({
      remove,
      target,
      lightest: v.masses.indexOf(target) + 1,
      spread: (Math.max(...v.masses) - target) as Mass,
      total: remove.reduce<number>((sum, one) => sum + one, 0) as Mass,
      cannot: remove.flatMap((one, at) => (one > most + 1e-12 ? [at + 1] : [])),
    });
  },
});
