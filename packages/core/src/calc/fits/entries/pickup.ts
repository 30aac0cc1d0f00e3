import type { Length } from '../../../quantity/index.js';
import { mm } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation, reversedEnds, verdictOf } from '../../catalogue/index.js';
import { size } from './inputs.js';

const limit = { kind: 'length', unit: 'mm', range: { from: 0, to: mm(100) }, optional: true } as const;

export const pickup = defineCalculation({
  id: 'fits.pickup-clearance',
  subject: 'fits',
  title: 'Oil pickup over the floor of the pan',
  summary: 'Clearance between pickup and pan floor from two depths and the gasket.',
  inputs: {
    panDepth: { ...size, symbol: 'a', meaning: 'depth of the pan at the pickup, rail to floor' },
    gasket: {
      kind: 'length',
      symbol: 't',
      meaning: 'gasket between block and pan, compressed; 0: sealant only',
      unit: 'mm',
      range: { from: 0, to: mm(10) },
      default: 0,
    },
    pickupDepth: { ...size, symbol: 'b', meaning: 'lowest point of the pickup below the block rail' },
    lowest: { ...limit, symbol: 'c min', meaning: 'lowest clearance accepted' },
    highest: { ...limit, symbol: 'c max', meaning: 'highest clearance accepted' },
  },
  outputs: {
    clearance: { kind: 'length', symbol: 'c', meaning: 'pickup over the floor', unit: 'mm', places: 2 },
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'in, below or above the window; no data without one' },
  },
  formula: 'c = a + t − b',
  assumptions: ['Pump and pickup fitted and tight. 1/4 to 3/8 in is usual: common practice, no source.'],
  sources: ['shop-practice', 'derived-here'],
  example: {
    inputs: { panDepth: '7.60 in', gasket: '0.06 in', pickupDepth: '7.35 in', lowest: '1/4 in', highest: '3/8 in' },
    outputs: { clearance: '0.31 in', verdict: 'in' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const reversed = reversedEnds(v, ['lowest', 'highest']);
    if (reversed) return reversed;
    const clearance = (v.panDepth + v.gasket - v.pickupDepth) as Length;
    if (clearance < 0) return conflict(['panDepth', 'gasket', 'pickupDepth'], 'the pickup would stand through the pan');
    return answer({ clearance, verdict: verdictOf(clearance, v.lowest, v.highest) });
  },
});
