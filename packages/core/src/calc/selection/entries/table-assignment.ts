import type { Ratio } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { type BestAssignment, leastTotal, smallestSpread, smallestWorst } from '../table-assignment.js';
import { count, line, numbers } from './fit-inputs.js';
import { fromOne } from './lists.js';

const GOALS = ['least-total', 'greatest-total', 'smallest-worst', 'least-spread'] as const;
type Goal = (typeof GOALS)[number];

/** Powers of two change no digit; the search needs whole numbers whose sums stay exact. */
function scaleOf(costs: readonly number[], rows: number): number {
  const largest = Math.max(1e-9, ...costs.map(Math.abs));
  return 2 ** Math.floor(Math.log2(2 ** 50 / (rows ** 2 * largest)));
}

function solve(table: readonly (readonly number[])[], goal: Goal) {
  switch (goal) {
    case 'smallest-worst':
      return smallestWorst(table);
    case 'least-spread':
      return smallestSpread(table);
    default:
      return leastTotal(table);
  }
}

function proofText(goal: Goal, found: BestAssignment, bound: number): string {
  if (goal === 'least-spread') return 'every pair of ends nearer together was refused';
  if (!('short' in found)) return `prices of rows and columns add up to ${bound}, and no pair beats its two prices`;
  const { rows, columns } = found.short as { rows: readonly number[]; columns: readonly number[] };
  return `with smaller costs only, row ${numbers(rows)} could take ${columns.length === 0 ? 'no column' : `only column ${numbers(columns)}`}`;
}

const value = (symbol: string, meaning: string) => ({ kind: 'ratio', symbol, meaning, unit: '', places: 4 }) as const;

export const tableAssignment = defineCalculation({
  id: 'selection.table-assignment',
  subject: 'selection',
  title: 'Best assignment of a table of costs',
  summary:
    'Gives each row of a table a column of its own: least or greatest total, smallest worst cost, or least spread.',
  inputs: {
    costs: {
      kind: 'ratio',
      symbol: 'cᵢⱼ',
      meaning: 'cost of each row in each column, row after row, as plain numbers of one unit',
      unit: '',
      range: { from: -1e9, to: 1e9 },
      list: true,
    },
    rows: count('m', 'rows of the table: what needs a place', 1, 100),
    goal: {
      kind: 'choice',
      symbol: 'goal',
      meaning:
        'what is looked for: least total, greatest total, smallest largest cost, or smallest difference of costs',
      choices: GOALS,
      default: 'least-total',
    },
    most: {
      kind: 'ratio',
      symbol: 'c₂',
      meaning: 'costs above this are not allowed; left out: all are',
      unit: '',
      range: { from: -1e9, to: 1e9 },
      optional: true,
    },
  },
  outputs: {
    columns: { kind: 'count', symbol: 'j', meaning: 'column of each row, from 1', list: true },
    chosen: { ...value('cᵢ', 'cost of each row in its column'), list: true },
    total: value('Σc', 'sum of the chosen costs'),
    greatest: value('max c', 'largest chosen cost'),
    spread: value('Δc', 'largest less smallest chosen cost'),
    proof: line('proof', 'why no other assignment is better'),
  },
  formula:
    'each row one column, each column at most one row; minimise Σc, or max c and then Σc, or max c − min c; or maximise Σc',
  assumptions: [
    'At least as many columns as rows.',
    'Costs are compared to about 12 digits of the largest one.',
    'Of equally good assignments one is shown.',
  ],
  sources: ['assignment-duality', 'hopcroft-karp', 'hall-set', 'balanced-assignment'],
  example: {
    inputs: { costs: [4, 1, 3, 2, 0, 5, 3, 2, 2], rows: 3 },
    outputs: { total: '5', columns: [2, 1, 3], greatest: '2' },
    from: 'all six assignments by hand: 6, 11, 5, 9, 8, 6',
  },
  compute: (v) => {
    const columns = v.costs.length / v.rows;
    if (!Number.isInteger(columns) || columns < v.rows) {
      return conflict(['costs', 'rows'], 'the list must fill whole rows, with at least as many columns as rows');
    }
    const sign = v.goal === 'greatest-total' ? -1 : 1;
    const scale = scaleOf(v.costs, v.rows);
    const whole = v.costs.map((cost) =>
      v.most !== undefined && cost > v.most ? Number.POSITIVE_INFINITY : Math.round(sign * cost * scale),
    );
    const table = Array.from({ length: v.rows }, (_, row) => whole.slice(row * columns, (row + 1) * columns));
    const found = solve(table, v.goal);
    if (!found.ok) {
      const { rows, columns: few } = found.fault;
      const only = few.length === 0 ? 'no column' : `only column ${numbers(few)}`;
      return conflict(['costs', 'rows', 'most'], `row ${numbers(rows)} may take ${only}: too few`);
    }
    const chosen = found.value.columnOf.map((column, row) => v.costs[row * columns + column]!);
    return answer({
      columns: fromOne(found.value.columnOf),
      chosen,
      total: chosen.reduce((sum, one) => sum + one, 0) as Ratio,
      greatest: Math.max(...chosen) as Ratio,
      spread: (Math.max(...chosen) - Math.min(...chosen)) as Ratio,
      proof: proofText(v.goal, found.value, (sign * found.value.bound) / scale),
    });
  },
});
