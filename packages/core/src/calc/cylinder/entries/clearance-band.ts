import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { lengthOut, size } from './inputs.js';

export const clearanceBand = defineCalculation({
  id: 'cylinder.clearance-band',
  subject: 'cylinder',
  title: 'Clearance band of two size bands',
  summary:
    'Smallest and largest clearance of a bore grade with a piston grade, or of any hole with one part in it; with shells between: bearings.worst-case-clearance.',
  inputs: {
    boreLeast: size('Bmin', 'smallest bore'),
    boreMost: size('Bmax', 'largest bore'),
    pistonLeast: size('Amin', 'smallest piston'),
    pistonMost: size('Amax', 'largest piston'),
  },
  outputs: {
    least: lengthOut('cmin', 'smallest clearance; negative: interference', 4),
    most: lengthOut('cmax', 'largest clearance', 4),
    middle: lengthOut('c̄', 'middle of the band', 4),
  },
  formula: 'cmin = Bmin − Amax; cmax = Bmax − Amin',
  assumptions: ['Sizes at one temperature and at the maker’s measuring points.'],
  sources: ['bored-size'],
  example: {
    inputs: { boreLeast: '80.000 mm', boreMost: '80.010 mm', pistonLeast: '79.965 mm', pistonMost: '79.975 mm' },
    outputs: { least: '0.025 mm', most: '0.045 mm' },
    from: 'published bands, which close exactly (reference row O-04)',
  },
  compute: (v) => {
    if (v.boreLeast > v.boreMost) return conflict(['boreLeast', 'boreMost'], 'the band runs backwards');
    if (v.pistonLeast > v.pistonMost) return conflict(['pistonLeast', 'pistonMost'], 'the band runs backwards');
    const least = v.boreLeast - v.pistonMost;
    const most = v.boreMost - v.pistonLeast;
    return answer({ least: least as Length, most: most as Length, middle: ((least + most) / 2) as Length });
  },
});
