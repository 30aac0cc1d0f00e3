import type { Mass } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { massAtValve } from '../moving-mass.js';
import { ratio } from './inputs.js';
import { mass } from './spring-inputs.js';

const part = { ...mass, default: 0 } as const;

export const movingMass = defineCalculation({
  id: 'valvetrain.moving-mass',
  subject: 'valvetrain',
  title: 'Effective mass of the valve gear',
  summary: 'Masses of valve, spring, rocker, pushrod and lifter referred to the valve, and to the lobe.',
  inputs: {
    valve: { ...mass, symbol: 'mv', meaning: 'valve' },
    retainer: { ...part, symbol: 'mr', meaning: 'retainer, locks and lash cap' },
    spring: { ...part, symbol: 'ms', meaning: 'whole spring or springs of the valve; a third counts' },
    rocker: {
      ...part,
      symbol: 'mR',
      meaning:
        'rocker referred to its valve end: its moment of inertia about the pivot over the square of the valve arm',
    },
    pushrod: { ...part, symbol: 'mp', meaning: 'pushrod' },
    lifter: { ...part, symbol: 'ml', meaning: 'lifter or follower that moves with the lobe' },
    ratio: { ...ratio, default: 1 },
  },
  outputs: {
    atValve: { kind: 'mass', symbol: 'm', meaning: 'effective mass at the valve', unit: 'g', places: 1 },
    atLobe: { kind: 'mass', symbol: 'm·R²', meaning: 'the same referred to the lobe', unit: 'g', places: 1 },
  },
  formula: 'm = mv + mr + ms/3 + mR + (mp + ml)/R²; at the lobe: m·R²',
  assumptions: ['Rigid gear. The lobe side moves R times slower than the valve, so it counts 1/R² at the valve.'],
  sources: ['derived-here'],
  example: {
    inputs: { valve: '100 g', retainer: '30 g', spring: '90 g', pushrod: '60 g', lifter: '120 g', ratio: '1.5' },
    outputs: { atValve: '240.0 g', atLobe: '540.0 g' },
    from: 'hand arithmetic: 100 + 30 + 30 + 180/2.25',
  },
  compute: (v) => {
    const masses = {
      withValve: (v.valve + v.retainer) as Mass,
      spring: v.spring,
      rockerAtValve: v.rocker,
      withLobe: (v.pushrod + v.lifter) as Mass,
    };
    const atValve = massAtValve(masses, v.ratio);
    return answer({ atValve, atLobe: (atValve * v.ratio ** 2) as Mass });
  },
});
