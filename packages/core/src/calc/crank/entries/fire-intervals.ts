import { degrees } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { fireIntervals as find } from '../fire-intervals.js';

export const fireIntervals = defineCalculation({
  id: 'crank.fire-intervals',
  subject: 'crank',
  title: 'Firing intervals of a vee and pin splay for even firing',
  summary: 'The two intervals that alternate for a bank angle and pin splay, and the splay that would make them equal.',
  inputs: {
    cylinders: { kind: 'count', symbol: 'N', meaning: 'cylinders', range: { from: 2, to: 24 } },
    veeAngle: {
      kind: 'angle',
      symbol: 'V',
      meaning: 'angle between the banks',
      unit: 'deg',
      range: { from: 0, to: degrees(180) },
    },
    splay: {
      kind: 'angle',
      symbol: 's',
      meaning: 'angle between the two pins of a pair, positive where it opens the vee angle; 0 for a common pin',
      unit: 'deg',
      range: { from: degrees(-180), to: degrees(180) },
      default: 0,
    },
  },
  outputs: {
    shorter: { kind: 'angle', symbol: 'a', meaning: 'shorter interval', unit: 'deg', places: 2 },
    longer: { kind: 'angle', symbol: 'b', meaning: 'longer interval', unit: 'deg', places: 2 },
    even: { kind: 'angle', symbol: 'i', meaning: 'even interval', unit: 'deg', places: 2 },
    splayForEven: { kind: 'angle', symbol: 's₀', meaning: 'splay that makes the firing even', unit: 'deg', places: 2 },
  },
  formula: 'i = 720°/N; a or b = V + s modulo 360°, whichever is nearest to i; a + b = 2·i; s₀ = i − V',
  assumptions: [
    'Cylinders fire in pairs from neighbouring pins.',
    'Of the intervals that the pins allow, the one nearest to even firing is taken.',
  ],
  sources: ['derived-here'],
  example: {
    inputs: { cylinders: 6, veeAngle: '90 deg', splay: '18 deg' },
    outputs: { shorter: '108 deg', longer: '132 deg', even: '120 deg', splayForEven: '30 deg' },
    from: 'reference row MO-37',
  },
  compute: (v) => {
    if (v.cylinders % 2 === 1)
      return conflict(['cylinders'], 'a vee with pairs of cylinders has an even number of them');
    return answer({ ...find(v.cylinders, v.veeAngle, v.splay) });
  },
});
