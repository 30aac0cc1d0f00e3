import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { bestExtraShim } from '../best-extra-shim.js';
import { lengthOut } from './fit-inputs.js';
import { clearance, rounding, shimConflict, thickness } from './inputs.js';
import { spread } from './lists.js';

export const extraShim = defineCalculation({
  id: 'selection.extra-shim',
  subject: 'selection',
  title: 'Which one shim in the box would help most',
  summary: 'Tries every size of a row beside the shims of the engine and the box, and names the one that saves most.',
  inputs: {
    measured: { ...clearance('A', 'clearance measured at each valve'), list: true },
    old: { ...thickness('T', 'shim now in each valve, as measured'), list: true },
    wanted: { ...clearance('V', 'clearance wanted: one for all valves, or one a valve'), list: true },
    lowest: { ...clearance('c₁', 'lowest clearance accepted: one for all valves, or one a valve'), list: true },
    highest: { ...clearance('c₂', 'highest clearance accepted: one for all valves, or one a valve'), list: true },
    spares: { ...thickness('S', 'loose shims on hand, as measured'), list: true, optional: true },
    thinnest: thickness('t₁', 'thinnest size that can be had'),
    thickest: thickness('t₂', 'thickest size that can be had'),
    step: thickness('Δt', 'step from size to size'),
    rounding,
  },
  outputs: {
    thickness: { ...lengthOut('N*', 'size that would help most; absent when none helps', 3), optional: true },
    fewerUnserved: { kind: 'count', symbol: 'n₀', meaning: 'valves served more with it' },
    fewerBought: { kind: 'count', symbol: 'n', meaning: 'shims to buy less with it' },
    lessDeviation: lengthOut(
      'Σ|d|',
      'how much less deviation in all with it; below 0 when it saves a purchase at that price',
      3,
    ),
  },
  formula: 'N* = the size with the best plan of `selection.shim-pool`, when one of that size lay in the box',
  assumptions: [
    'Every size of the row can also be bought, each as often as needed; the extra shim is one that need not be bought.',
    'The shim carries the clearance one to one, as on a bucket.',
  ],
  sources: ['shim-rule', 'assignment-duality'],
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
    outputs: { thickness: '2.950 mm', fewerBought: 1, lessDeviation: '0.000 mm' },
    from: 'hand arithmetic: 2.95 is the one shim that the plan of the example of shim-pool buys',
  },
  compute: (v) => {
    const places = v.measured.length;
    const [wanted, lowest, highest] = [v.wanted, v.lowest, v.highest].map((list) => spread(list, places));
    if (!wanted || !lowest || !highest || v.old.length !== places) {
      const lists = ['measured', 'old', 'wanted', 'lowest', 'highest'];
      return conflict(lists, 'each list needs one value a valve; wanted, lowest and highest may be one for all');
    }
    const sizes = { thinnest: v.thinnest, thickest: v.thickest, step: v.step };
    const input = {
      places: v.measured.map((measured, at) => ({
        id: String(at + 1),
        measured,
        old: v.old[at]!,
        wanted: wanted[at]!,
        window: { low: lowest[at]!, high: highest[at]! },
      })),
      spares: v.spares ?? [],
      buyable: sizes,
      rounding: v.rounding,
    };
    const found = bestExtraShim(input, sizes);
    if (!found.ok) return shimConflict(Object.keys(v), found.fault);
    const none = { thickness: undefined, fewerUnserved: 0, fewerBought: 0, lessDeviation: 0 as typeof v.step };
    return answer(found.value ?? none);
  },
});
