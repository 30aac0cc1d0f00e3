import { formatQuantity, type Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { planShims } from '../shim-pool.js';
import type { ShimAssignment, ShimOrigin, ShimPoolInput, ShimSizes } from '../types.js';
import { clearance, rounding, shimConflict, thickness } from './inputs.js';
import { spread } from './lists.js';

function sizesOf(thinnest?: Length, thickest?: Length, step?: Length): { buyable?: ShimSizes } | undefined {
  if (thinnest === undefined && thickest === undefined && step === undefined) return {};
  if (thinnest === undefined || thickest === undefined || step === undefined) return undefined;
  return { buyable: { thinnest, thickest, step } };
}

const shown = (length: Length) => formatQuantity('length', length, 'mm', 3);
function originText(origin: ShimOrigin): string {
  switch (origin.kind) {
    case 'own':
      return '(its own)';
    case 'place':
      return `(out of valve ${origin.place})`;
    case 'spare':
      return `(spare ${origin.index + 1})`;
    case 'bought':
      return '(bought)';
  }
}
const line = (one: ShimAssignment) =>
  `valve ${one.id}: ${shown(one.thickness)} ${originText(one.origin)} leaves ${shown(one.clearance)}`;

type Lists = Readonly<Record<'measured' | 'old' | 'wanted' | 'lowest' | 'highest', readonly Length[]>>;

/** Valves numbered from 1 in the order of the lists. */
function placesOf(lists: Lists): ShimPoolInput['places'] | undefined {
  const count = lists.measured.length;
  const [wanted, lowest, highest] = [lists.wanted, lists.lowest, lists.highest].map((list) => spread(list, count));
  if (!wanted || !lowest || !highest || lists.old.length !== count) return undefined;
  return lists.measured.map((measured, i) => ({
    id: String(i + 1),
    measured,
    old: lists.old[i]!,
    wanted: wanted[i]!,
    window: { low: lowest[i]!, high: highest[i]! },
  }));
}

export const shimPool = defineCalculation({
  id: 'selection.shim-pool',
  subject: 'selection',
  title: 'Shims for all valves with the fewest bought',
  summary:
    'Gives every valve a shim out of the engine, out of the box, or bought; the fewest bought, then the least deviation.',
  inputs: {
    measured: { ...clearance('A', 'clearance measured at each valve'), list: true },
    old: { ...thickness('T', 'shim now in each valve, as measured'), list: true },
    wanted: { ...clearance('V', 'clearance wanted: one for all valves, or one a valve'), list: true },
    lowest: { ...clearance('c₁', 'lowest clearance accepted: one for all valves, or one a valve'), list: true },
    highest: { ...clearance('c₂', 'highest clearance accepted: one for all valves, or one a valve'), list: true },
    spares: { ...thickness('S', 'loose shims on hand, as measured'), list: true, optional: true },
    thinnest: { ...thickness('t₁', 'thinnest size that can be bought; left out: none'), optional: true },
    thickest: { ...thickness('t₂', 'thickest size that can be bought'), optional: true },
    step: { ...thickness('Δt', 'step from size to size'), optional: true },
    rounding,
  },
  outputs: {
    assignments: { kind: 'text', symbol: 'shims', meaning: 'shim of each valve and where it comes from', list: true },
    boughtCount: { kind: 'count', symbol: 'n', meaning: 'shims to buy' },
    bought: { kind: 'length', symbol: 'N', meaning: 'their sizes', unit: 'mm', places: 3, list: true },
    totalDeviation: {
      kind: 'length',
      symbol: 'Σ|d|',
      meaning: 'sum of the deviations from the wanted clearances',
      unit: 'mm',
      places: 3,
    },
    unserved: { kind: 'text', symbol: 'none', meaning: 'valves that nothing fits, and the size they need', list: true },
  },
  formula:
    'minimise (valves unserved, n, Σ|A + T − N − V|, valves that change shims) in this order, c₁ ≤ A + T − N ≤ c₂',
  assumptions: [
    'The shim carries the clearance one to one, as on a bucket.',
    'Every size can be bought as often as needed.',
    'All thicknesses were measured: a worn shim is not what its mark says.',
  ],
  sources: ['shim-rule', 'derived-here'],
  example: {
    inputs: {
      measured: ['0.25 mm', '0.30 mm', '0.35 mm'],
      old: ['2.65 mm', '2.70 mm', '2.80 mm'],
      wanted: ['0.20 mm'],
      lowest: ['0.17 mm'],
      highest: ['0.23 mm'],
      thinnest: '2.50 mm',
      thickest: '3.30 mm',
      step: '0.05 mm',
    },
    outputs: { boughtCount: 1, bought: ['2.950 mm'], totalDeviation: '0.000 mm' },
    from: 'hand arithmetic: valve 1 takes the shim of 2, valve 2 that of 3, and valve 3 needs 2.95',
  },
  compute: (v) => {
    const places = placesOf(v);
    if (!places) {
      const lists = ['measured', 'old', 'wanted', 'lowest', 'highest'];
      return conflict(lists, 'each list needs one value a valve; wanted, lowest and highest may be one for all');
    }
    const buyable = sizesOf(v.thinnest, v.thickest, v.step);
    if (!buyable) return conflict(['thinnest', 'thickest', 'step'], 'a row of sizes needs all three');
    const pool = planShims({ places, spares: v.spares ?? [], rounding: v.rounding, ...buyable });
    if (!pool.ok) return shimConflict(Object.keys(v), pool.fault);
    const { assignments, buy, boughtCount, totalDeviation, unserved } = pool.value;
    return answer({
      assignments: assignments.map(line),
      boughtCount,
      bought: buy.flatMap(({ thickness: size, count }) => Array.from({ length: count }, () => size)),
      totalDeviation,
      unserved: unserved.map(({ id, ideal }) => `valve ${id}: ${shown(ideal)} would be needed`),
    });
  },
});
