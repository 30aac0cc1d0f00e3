import { type Compliance, type Force, kelvinDifference } from '../../../quantity/index.js';
import { answer, type Caution, defineCalculation } from '../../catalogue/index.js';
import { thermalPreload } from '../turn.js';
import { preload } from './inputs.js';
import { boltCompliance, force, length, partCompliance } from './joint-inputs.js';

const expansion = { kind: 'thermal-expansion', unit: 'ppm/K', range: { from: 0, to: 1e-4 } } as const;
const rise = {
  kind: 'temperature-difference',
  unit: 'K',
  range: { from: kelvinDifference(-300), to: kelvinDifference(1000) },
} as const;
const slack: Caution = { code: 'no-preload', text: 'no preload is left at this temperature: the joint is open' };

export const preloadTemperature = defineCalculation({
  id: 'fasteners.preload-temperature',
  subject: 'fasteners',
  title: 'Change of preload with temperature',
  summary: 'What a bolt gains or loses when it and the parts it clamps grow differently.',
  inputs: {
    grip: { ...length, symbol: 'L', meaning: 'clamped length' },
    boltCompliance,
    partCompliance,
    partExpansion: { ...expansion, symbol: 'αP', meaning: 'thermal expansion of the clamped parts' },
    boltExpansion: { ...expansion, symbol: 'αS', meaning: 'thermal expansion of the bolt' },
    partRise: { ...rise, symbol: 'ΔTP', meaning: 'rise of the parts’ temperature since tightening' },
    boltRise: { ...rise, symbol: 'ΔTS', meaning: 'rise of the bolt’s; left out: as the parts', optional: true },
    preload: { ...preload, symbol: 'F0', meaning: 'preload before', optional: true },
  },
  outputs: {
    change: { ...force, symbol: 'ΔF', meaning: 'change of preload; positive: tighter' },
    preload: { ...force, symbol: 'F', meaning: 'preload then; negative: nothing is left', optional: true },
  },
  formula: 'ΔF = (αP·ΔTP − αS·ΔTS)·L/(δS + δP); F = F0 + ΔF',
  assumptions: [
    'Elastic, moduli as at room temperature, each at one temperature. Alloy under steel gains hot and loses in the cold.',
    'Re-torque and stretch readings belong to room temperature.',
  ],
  sources: ['derived-here'],
  example: {
    inputs: {
      grip: '85 mm',
      boltCompliance: '7.218 µm/kN',
      partCompliance: '3.484 µm/kN',
      partExpansion: '21.5 ppm/K',
      boltExpansion: '11.7 ppm/K',
      partRise: '80 K',
    },
    outputs: { change: '6.23 kN' },
    from: 'reference row O-24',
  },
  compute: (v) => {
    const { partExpansion, boltExpansion, partRise, boltRise = partRise } = v;
    const compliance = (v.boltCompliance + v.partCompliance) as Compliance;
    const change = thermalPreload(v.grip, compliance, { partExpansion, boltExpansion, partRise, boltRise });
    const left = v.preload === undefined ? undefined : ((v.preload + change) as Force);
    return answer({ change, preload: left }, left !== undefined && left <= 0 ? [slack] : []);
  },
});
