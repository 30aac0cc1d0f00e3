import type { Length } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { sideClearance } from '../rings.js';
import { height, lengthOut, size, verdictOut } from './inputs.js';
import { against } from './verdicts.js';

export const ringSideClearance = defineCalculation({
  id: 'cylinder.ring-side-clearance',
  subject: 'cylinder',
  title: 'Ring side clearance',
  summary: 'Full axial play of one ring in its groove, against limits.',
  inputs: {
    groove: size('a', 'width of the groove (axial)'),
    ring: size('h', 'width of the ring (axial)'),
    least: { ...height('smin', 'smallest side clearance allowed'), optional: true },
    most: { ...height('smax', 'largest side clearance allowed'), optional: true },
  },
  outputs: {
    clearance: lengthOut('s', 'side clearance; negative: the ring does not go in', 4),
    verdict: verdictOut('against the limits given'),
  },
  formula: 's = a − h',
  assumptions: ['Full play of one ring, not per side. Groove clean of carbon.'],
  sources: ['ring-side-clearance'],
  example: {
    inputs: { groove: '0.0487 in', ring: '0.0465 in', least: '0.0015 in', most: '0.0029 in' },
    outputs: { clearance: '0.0022 in', verdict: 'within' },
    from: 'middle of the published bands of reference row O-44',
  },
  compute: (v) => {
    const clearance: Length = sideClearance(v.groove, v.ring);
    return answer({ clearance, verdict: against(clearance, v.least, v.most) });
  },
});
