import { mm } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { springShims } from '../spring-shims.js';
import { signedLength, size, windowOf } from './fit-inputs.js';
import { spread } from './lists.js';
import { heights, most, planAnswer, planOutputs, shimListFault, shims, stock, tooManyStacks } from './spring-inputs.js';

export const springShimsEntry = defineCalculation({
  id: 'selection.spring-shims',
  subject: 'selection',
  title: 'Shims under valve springs for a wanted installed height',
  summary: 'The stack of shims under each spring that brings its installed height nearest to what is wanted.',
  inputs: {
    heights,
    wanted: { ...size('hw', 'installed height wanted: one for all valves, or one a valve'), list: true },
    shims,
    stock,
    most,
    below: {
      ...signedLength('a', 'how far below the wanted height is accepted'),
      range: { from: 0, to: mm(100) },
      optional: true,
    },
    above: {
      ...signedLength('b', 'how far above the wanted height is accepted'),
      range: { from: 0, to: mm(100) },
      optional: true,
    },
  },
  outputs: planOutputs,
  formula: 'h = h₀ − Σs; minimise (n₀, Σ|h − hw|) in this order; −a ≤ h − hw ≤ b',
  assumptions: [
    'Heights are measured with the retainer, locks and locator that will be used.',
    'Each shim takes its own thickness from the height. Check coil bind and retainer to seal afterwards.',
    'Where a deviation is left open, any is accepted.',
  ],
  sources: ['branch-and-bound', 'shop-practice'],
  example: {
    inputs: {
      heights: ['1.815 in', '1.832 in', '1.801 in'],
      wanted: ['1.800 in'],
      shims: ['0.015 in', '0.030 in', '0.060 in'],
    },
    outputs: {
      thickness: ['0.015 in', '0.030 in', '0 in'],
      heights: ['1.800 in', '1.802 in', '1.801 in'],
      total: '0.003 in',
    },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const wanted = spread(v.wanted, v.heights.length);
    if (!wanted) return conflict(['heights', 'wanted'], 'one wanted height for all valves, or one for each');
    const fault = shimListFault(v);
    if (fault) return fault;
    const low = v.below === undefined ? undefined : (-v.below as typeof v.below);
    const found = springShims({
      heights: v.heights,
      wanted,
      sizes: v.shims,
      most: v.most,
      ...(v.stock && { stock: v.stock }),
      window: windowOf(low, v.above),
    });
    return found.ok ? answer(planAnswer(found.value, v.shims)) : tooManyStacks();
  },
});
