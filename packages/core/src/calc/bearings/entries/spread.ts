import { answer, defineCalculation } from '../../catalogue/index.js';
import { freeSpread } from '../crush.js';
import { clearanceOut, housing, size } from './inputs.js';

export const spread = defineCalculation({
  id: 'bearings.free-spread',
  subject: 'bearings',
  title: 'Free spread of a shell half',
  summary: 'How much wider a free shell half is than its housing, and whether it holds itself in.',
  inputs: {
    freeWidth: { ...size, symbol: 'b', meaning: 'width of the half across its ends, lying free' },
    housing,
  },
  outputs: {
    spread: { ...clearanceOut, symbol: 's', meaning: 'free spread', places: 3 },
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'holds or loose' },
  },
  formula: 's = b − H',
  assumptions: ['About 0.025 in (0.64 mm) on a big end is usual. A shell without spread must not be bent open.'],
  sources: ['shell-spread', 'derived-here'],
  example: {
    inputs: { freeWidth: '2.666 in', housing: '2.641 in' },
    outputs: { spread: '0.025 in', verdict: 'holds' },
    from: 'hand arithmetic; spread as printed in the source',
  },
  compute: (v) => {
    const found = freeSpread(v.freeWidth, v.housing);
    return answer({ spread: found, verdict: found > 0 ? 'holds' : 'loose' });
  },
});
