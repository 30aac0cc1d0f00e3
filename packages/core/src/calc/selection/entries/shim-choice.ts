import { answer, defineCalculation } from '../../catalogue/index.js';
import { chooseShim } from '../shim-choice.js';
import { clearance, rounding, shimConflict, thickness } from './inputs.js';

const output = (symbol: string, meaning: string) =>
  ({ kind: 'length', symbol, meaning, unit: 'mm', places: 3 }) as const;

export const shimChoice = defineCalculation({
  id: 'selection.shim-choice',
  subject: 'selection',
  title: 'Shim for one valve',
  summary: 'The size that brings the clearance to what is wanted, and the clearance that it will leave.',
  inputs: {
    measured: clearance('A', 'clearance measured now'),
    old: thickness('T', 'shim now in, as measured'),
    wanted: clearance('V', 'clearance wanted'),
    thinnest: thickness('t₁', 'thinnest size that can be had'),
    thickest: thickness('t₂', 'thickest size that can be had'),
    step: thickness('Δt', 'step from size to size; 0.02 mm where only even sizes are made'),
    rounding,
    lowest: { ...clearance('c₁', 'lowest clearance accepted'), optional: true },
    highest: { ...clearance('c₂', 'highest clearance accepted'), optional: true },
  },
  outputs: {
    ideal: output('N₀', 'ideal thickness'),
    chosen: output('N', 'size chosen'),
    clearance: output('c', 'clearance with the size chosen'),
    deviation: output('d', 'that clearance less the wanted one'),
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'in, out, or no data where no window is given' },
  },
  formula: 'N₀ = T + (A − V); N = size next to N₀; c = A + T − N; d = c − V',
  assumptions: [
    'The shim carries the clearance one to one, as on a bucket.',
    'The old shim was measured: a worn one is not what its mark says.',
    'Of two equally near sizes the thinner is taken: it leaves more clearance.',
  ],
  sources: ['shim-rule'],
  example: {
    inputs: {
      measured: '0.25 mm',
      old: '2.425 mm',
      wanted: '0.15 mm',
      thinnest: '2.40 mm',
      thickest: '2.60 mm',
      step: '0.05 mm',
      rounding: 'next-thinner',
    },
    outputs: { ideal: '2.525 mm', chosen: '2.500 mm', clearance: '0.175 mm' },
    from: 'worked example printed in the manual of the source; the ends of the row are assumed',
  },
  compute: (v) => {
    const { thinnest, thickest, step, lowest, highest, ...rest } = v;
    const window = {
      ...(lowest === undefined ? {} : { low: lowest }),
      ...(highest === undefined ? {} : { high: highest }),
    };
    const known = lowest !== undefined || highest !== undefined;
    const choice = chooseShim({ ...rest, sizes: { thinnest, thickest, step }, ...(known ? { window } : {}) });
    if (!choice.ok) return shimConflict(Object.keys(v), [choice.fault]);
    const { accepted, ...lengths } = choice.value;
    return answer({ ...lengths, verdict: accepted === undefined ? 'no data' : accepted ? 'in' : 'out' });
  },
});
