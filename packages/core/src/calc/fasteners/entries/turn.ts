/** Turn of the nut and preload, both ways. */
import { type Angle, type Compliance, degrees, type Force } from '../../../quantity/index.js';
import { answer, type Caution, conflict, defineCalculation } from '../../catalogue/index.js';
import { angleForPreload, preloadForAngle } from '../turn.js';
import { preload, thread } from './inputs.js';
import { boltCompliance, force, partCompliance } from './joint-inputs.js';

const snug = {
  kind: 'force',
  symbol: 'F0',
  meaning: 'preload at snug, from where the angle counts',
  unit: 'kN',
  range: { from: 0, to: 5e6 },
  default: 0,
} as const;
const limit = {
  ...preload,
  symbol: 'F max',
  meaning: 'preload at which the bolt yields; above it this figure does not hold',
  optional: true,
} as const;
const pastYield: Caution = {
  code: 'past-yield',
  text: 'above the preload at which the bolt yields: the turn no longer follows this elastic line',
};
const assumptions = [
  'Elastic estimate. The angle counts from snug, with all faces seated, at the fastener and not at a flexing bar.',
  'A gasket gives as well and makes the same angle clamp less: add its compliance to that of the parts.',
] as const;

export const angleFromPreload = defineCalculation({
  id: 'fasteners.angle-from-preload',
  subject: 'fasteners',
  title: 'Turn that makes a preload',
  summary: 'Angle beyond snug from the preload wanted, the pitch and what bolt and parts give.',
  inputs: { thread, preload, snugPreload: snug, boltCompliance, partCompliance, yieldPreload: limit },
  outputs: {
    angle: { kind: 'angle', symbol: 'θ', meaning: 'turn beyond snug', unit: 'deg', places: 1 },
    perDegree: { ...force, symbol: 'F/°', meaning: 'preload that each degree adds', places: 4 },
  },
  formula: 'θ = 360°·(F − F0)·(δS + δP)/P',
  assumptions,
  sources: ['vdi-2230'],
  example: {
    inputs: { thread: 'M10 x 1.5', preload: '30 kN', boltCompliance: '7.218 µm/kN', partCompliance: '2.710 µm/kN' },
    outputs: { angle: '71.5 deg', perDegree: '0.4197 kN' },
    from: 'reference row O-22',
  },
  compute: (v) => {
    if (v.snugPreload > v.preload) {
      return conflict(['snugPreload', 'preload'], 'snug is tighter than what is wanted', {
        input: 'preload',
        from: v.snugPreload,
      });
    }
    const compliance = (v.boltCompliance + v.partCompliance) as Compliance;
    const rise = (v.preload - v.snugPreload) as Force;
    return answer(
      {
        angle: angleForPreload(rise, compliance, v.thread.pitch),
        perDegree: preloadForAngle(degrees(1), compliance, v.thread.pitch),
      },
      v.yieldPreload !== undefined && v.preload > v.yieldPreload ? [pastYield] : [],
    );
  },
});

export const preloadFromAngle = defineCalculation({
  id: 'fasteners.preload-from-angle',
  subject: 'fasteners',
  title: 'Preload that a turn makes',
  summary: 'Preload after a turn beyond snug, from the pitch and what bolt and parts give.',
  inputs: {
    thread,
    angle: {
      kind: 'angle',
      symbol: 'θ',
      meaning: 'turn beyond snug',
      unit: 'deg',
      range: { from: 0, to: degrees(3600) },
    },
    snugPreload: snug,
    boltCompliance,
    partCompliance,
    yieldPreload: limit,
  },
  outputs: {
    preload: { ...force, symbol: 'F', meaning: 'preload, if still elastic' },
    perDegree: { ...force, symbol: 'F/°', meaning: 'preload that each degree adds', places: 4 },
  },
  formula: 'F = F0 + θ·P/(360°·(δS + δP))',
  assumptions,
  sources: ['vdi-2230'],
  example: {
    inputs: { thread: 'M10 x 1.5', angle: '90 deg', boltCompliance: '7.218 µm/kN', partCompliance: '2.710 µm/kN' },
    outputs: { preload: '37.8 kN', perDegree: '0.4197 kN' },
    from: 'reference row O-22',
  },
  compute: (v) => {
    const compliance = (v.boltCompliance + v.partCompliance) as Compliance;
    const found = (v.snugPreload + preloadForAngle(v.angle as Angle, compliance, v.thread.pitch)) as Force;
    return answer(
      { preload: found, perDegree: preloadForAngle(degrees(1), compliance, v.thread.pitch) },
      v.yieldPreload !== undefined && found > v.yieldPreload ? [pastYield] : [],
    );
  },
});
