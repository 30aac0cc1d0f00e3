import { answer, conflict, defineCalculation, reversedEnds } from '../../catalogue/index.js';
import { type ShellsInput, type ShellsPlan, shellsToJournals } from '../shells-to-journals.js';
import { count, lengthOut, line, shown, signedLength, size } from './fit-inputs.js';

const MOST_POSITIONS = 20;
const MOST_CLASSES = 12;

function positionText(plan: ShellsPlan, at: number): string {
  const pair = plan.pairs[at];
  if (!pair) return `position ${at + 1}: none`;
  return `position ${at + 1}: upper class ${pair.upper + 1}, lower class ${pair.lower + 1}, leaves ${shown(pair.clearance)}`;
}

function proofText({ proven, bound }: ShellsPlan): string {
  if (proven) return 'no other choice of halves is better: every one was tried or cannot reach this plan';
  return `search ended early: no choice is better than ${bound.unserved} without, ${bound.bought} bought, total deviation ${shown(bound.total)}`;
}

/** Lists that do not go together, in words; undefined when they do. */
function listFault(v: {
  readonly housings: readonly unknown[];
  readonly journals: readonly unknown[];
  readonly walls: readonly unknown[];
  readonly stock?: readonly unknown[] | undefined;
}) {
  if (v.housings.length !== v.journals.length)
    return conflict(['housings', 'journals'], 'one housing and one journal a position');
  if (v.stock && v.stock.length !== v.walls.length) return conflict(['walls', 'stock'], 'one number of halves a class');
  if (v.housings.length > MOST_POSITIONS)
    return conflict(['housings', 'journals'], `at most ${MOST_POSITIONS} positions are valid`);
  return v.walls.length > MOST_CLASSES ? conflict(['walls'], `at most ${MOST_CLASSES} classes are valid`) : undefined;
}

export const shellsToJournalsEntry = defineCalculation({
  id: 'selection.shells-to-journals',
  subject: 'selection',
  title: 'Bearing halves for every journal out of one stock',
  summary:
    'Upper and lower half of each position from the classes on hand: none left without, fewest halves bought, least deviation.',
  inputs: {
    housings: { ...size('H', 'housing bore of each position without shells, tightened'), list: true },
    journals: { ...size('J', 'journal of each position'), list: true },
    walls: { ...size('t', 'wall of each class of half, at its middle'), list: true },
    stock: {
      ...count('n', 'halves on hand of each class; left out: as many as needed', 0, 1000),
      list: true,
      optional: true,
    },
    buying: {
      kind: 'choice',
      symbol: 'buying',
      meaning: 'whether halves beyond the stock may be bought',
      choices: ['not-allowed', 'allowed'],
      default: 'not-allowed',
    },
    target: signedLength('C', 'oil clearance wanted, on diameter'),
    lowest: signedLength('C₁', 'lowest clearance accepted'),
    highest: signedLength('C₂', 'highest clearance accepted'),
    widestMix: {
      kind: 'length',
      symbol: 'Δt',
      meaning: 'largest difference between the walls of two halves; 0: never mix classes',
      unit: 'mm',
      range: { from: 0, to: 0.01 },
      default: 0,
    },
    thicker: {
      kind: 'choice',
      symbol: 'thicker',
      meaning: 'where the thicker of two halves goes',
      choices: ['either', 'upper', 'lower'],
      default: 'either',
    },
  },
  outputs: {
    assignments: {
      ...line('plan', 'upper and lower half of each position and the clearance that they leave'),
      list: true,
    },
    clearances: { ...lengthOut('C*', 'clearances of the positions that have halves, in order'), list: true },
    unserved: { kind: 'count', symbol: 'n₀', meaning: 'positions without halves' },
    bought: { kind: 'count', symbol: 'n′', meaning: 'halves to buy' },
    buy: { kind: 'count', symbol: 'nᵢ′', meaning: 'halves to buy of each class', list: true },
    total: lengthOut('Σ|C*−C|', 'sum of the deviations from the clearance wanted'),
    proof: line('proof', 'whether this is proven best, or the bound that was reached'),
  },
  formula: 'C* = H − tu − tl − J; minimise (n₀, n′, Σ|C* − C|) in this order; C₁ ≤ C* ≤ C₂, |tu − tl| ≤ Δt',
  assumptions: [
    'Classes are numbered in the order of the list. With "either" the thicker half is named as the upper one.',
    'Walls are those of the halves as measured, or the middle of the class; the maker may forbid a mix.',
    'Buy and fit halves of one maker: walls of two makers differ although the class is the same.',
  ],
  sources: ['branch-and-bound', 'derived-here'],
  example: {
    inputs: {
      housings: ['64.006 mm', '64.006 mm'],
      journals: ['59.964 mm', '59.964 mm'],
      walls: ['2.0105 mm', '2.0135 mm'],
      stock: [2, 2],
      target: '0.018 mm',
      lowest: '0.014 mm',
      highest: '0.022 mm',
      widestMix: '0.003 mm',
    },
    outputs: { clearances: ['0.0180 mm', '0.0180 mm'], unserved: 0, bought: 0, total: '0.0000 mm' },
    from: 'reference row O-13: one half of each grade leaves 0.0180 mm',
  },
  compute: (v) => {
    const fault = reversedEnds(v, ['lowest', 'highest']) ?? listFault(v);
    if (fault) return fault;
    const input: ShellsInput = {
      positions: v.housings.map((housing, at) => ({ housing, journal: v.journals[at]! })),
      classes: v.walls.map((wall, at) => ({ wall, ...(v.stock && { stock: v.stock[at]! }) })),
      target: v.target,
      window: { low: v.lowest, high: v.highest },
      widestMix: v.widestMix,
      thicker: v.thicker,
      mayBuy: v.buying === 'allowed',
    };
    const plan = shellsToJournals(input);
    return answer({
      assignments: plan.pairs.map((_, at) => positionText(plan, at)),
      clearances: plan.pairs.flatMap((pair) => (pair ? [pair.clearance] : [])),
      unserved: plan.unserved,
      bought: plan.buy.reduce((sum, one) => sum + one, 0),
      buy: plan.buy,
      total: plan.total,
      proof: proofText(plan),
    });
  },
});
