import { answer, conflict, defineCalculation, reversedEnds } from '../../catalogue/index.js';
import { commonHeight } from '../spring-shims.js';
import { lengthOut, size, windowOf } from './fit-inputs.js';
import { heights, most, shimListFault, shims, stackOutputs, stackText, tooManyStacks } from './spring-inputs.js';

export const commonSpringHeight = defineCalculation({
  id: 'selection.common-spring-height',
  subject: 'selection',
  title: 'Shims that make the installed heights as equal as they can be',
  summary: 'The stack of shims under each spring with the least spread of heights, whatever the common height is.',
  inputs: {
    heights,
    shims,
    most,
    lowest: { ...size('h₁', 'lowest installed height accepted; left out: any'), optional: true },
    highest: { ...size('h₂', 'highest installed height accepted; left out: any'), optional: true },
  },
  outputs: { ...stackOutputs, spread: lengthOut('Δh', 'largest less smallest height; no choice of shims has less') },
  formula: 'h = h₀ − Σs; minimise max h − min h; h₁ ≤ h ≤ h₂; of equals the greatest lowest height',
  assumptions: [
    'Every shim can be had as often as needed.',
    'Each shim takes its own thickness from the height. Check coil bind and retainer to seal afterwards.',
  ],
  sources: ['derived-here', 'shop-practice'],
  example: {
    inputs: { heights: ['1.815 in', '1.832 in', '1.801 in'], shims: ['0.015 in', '0.030 in', '0.060 in'] },
    outputs: { thickness: ['0.015 in', '0.030 in', '0 in'], spread: '0.002 in' },
    from: 'hand arithmetic: 1.800, 1.802, 1.801 in',
  },
  compute: (v) => {
    const fault = reversedEnds(v, ['lowest', 'highest']) ?? shimListFault(v);
    if (fault) return fault;
    const found = commonHeight({
      heights: v.heights,
      sizes: v.shims,
      most: v.most,
      window: windowOf(v.lowest, v.highest),
    });
    if (!found.ok) return tooManyStacks();
    if (!found.value)
      return conflict(['heights', 'shims', 'lowest', 'highest'], 'some valve has no accepted height with these shims');
    const { stacks, heights: shimmed, spread } = found.value;
    return answer({
      assignments: stacks.map((stack, at) => stackText(at, stack, shimmed[at]!, v.shims)),
      thickness: stacks.map(({ height }) => height),
      heights: shimmed,
      spread,
    });
  },
});
