import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { lengthOut, signedLength, size } from './inputs.js';

export const impliedBand = defineCalculation({
  id: 'cylinder.implied-band',
  subject: 'cylinder',
  title: 'Size band that a printed clearance band implies',
  summary:
    'The bore band behind a piston band and a clearance band, or the ring or piston band behind a groove or bore.',
  inputs: {
    known: { kind: 'choice', symbol: 'known', meaning: 'which part’s band is known', choices: ['inner', 'outer'] },
    sizeLeast: size('smin', 'smallest size of the known part: inner is piston or ring, outer is bore or groove'),
    sizeMost: size('smax', 'largest size of the known part'),
    clearanceLeast: signedLength('cmin', 'smallest clearance printed'),
    clearanceMost: signedLength('cmax', 'largest clearance printed'),
  },
  outputs: {
    least: lengthOut('dmin', 'smallest size of the other part', 4),
    most: lengthOut('dmax', 'largest size of the other part', 4),
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'whether the bands can belong together' },
  },
  formula: 'outer: dmin = cmin + smax, dmax = cmax + smin; inner: dmax = smin − cmin, dmin = smax − cmax',
  assumptions: ['The printed clearance is that of the extreme sizes: worst case, not statistical.'],
  sources: ['piston-selection', 'ring-side-clearance'],
  example: {
    inputs: {
      known: 'outer',
      sizeLeast: '0.0484 in',
      sizeMost: '0.0490 in',
      clearanceLeast: '0.0015 in',
      clearanceMost: '0.0029 in',
    },
    outputs: { least: '0.0461 in', most: '0.0469 in', verdict: 'bands agree' },
    from: 'published groove and side clearance (reference row O-44)',
  },
  compute: (v) => {
    if (v.sizeLeast > v.sizeMost) return conflict(['sizeLeast', 'sizeMost'], 'the band runs backwards');
    if (v.clearanceLeast > v.clearanceMost)
      return conflict(['clearanceLeast', 'clearanceMost'], 'the band runs backwards');
    const [least, most] =
      v.known === 'inner'
        ? [v.clearanceLeast + v.sizeMost, v.clearanceMost + v.sizeLeast]
        : [v.sizeMost - v.clearanceMost, v.sizeLeast - v.clearanceLeast];
    const apart = 'the clearance band is narrower than the known size band alone: it belongs to graded, matched parts';
    return answer({
      least: least as Length,
      most: most as Length,
      verdict: least <= most + 1e-10 ? 'bands agree' : apart,
    });
  },
});
