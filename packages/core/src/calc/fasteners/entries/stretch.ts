import type { Compliance, Length, Pressure, Ratio } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { barCompliance } from '../resilience.js';
import { circle } from '../thread.js';
import { preload } from './inputs.js';
import { boltModulus, complianceOut, length } from './joint-inputs.js';

export const stretch = defineCalculation({
  id: 'fasteners.stretch',
  subject: 'fasteners',
  title: 'Stretch of a bolt by segments',
  summary: 'Elastic stretch of a bolt of several sections under a preload, and the stress in each section.',
  inputs: {
    preload,
    modulus: boltModulus,
    lengths: { ...length, symbol: 'L', meaning: 'length of each segment between the measuring points', list: true },
    areas: {
      kind: 'area',
      symbol: 'A',
      meaning: 'section of each segment; for free thread its stress area (or give the diameters)',
      unit: 'mm2',
      range: { above: 0, to: 0.01 },
      list: true,
      optional: true,
    },
    diameters: {
      ...length,
      symbol: 'D',
      meaning: 'diameter of each segment, round (or give the areas)',
      list: true,
      optional: true,
    },
  },
  outputs: {
    stretch: { kind: 'length', symbol: 'x', meaning: 'stretch of all segments', unit: 'mm', places: 4 },
    parts: { kind: 'length', symbol: 'xi', meaning: 'stretch of each segment', unit: 'mm', places: 4, list: true },
    stresses: {
      kind: 'pressure',
      symbol: 'σi',
      meaning: 'tension in each segment',
      unit: 'MPa',
      places: 1,
      list: true,
    },
    compliance: { ...complianceOut, symbol: 'δS', meaning: 'stretch for each unit of force' },
    strain: { kind: 'ratio', symbol: 'x/ΣL', meaning: 'stretch over length', unit: '%', places: 3 },
  },
  formula: 'x = F·Σ Li/(E·Ai); σi = F/Ai',
  assumptions: [
    'Elastic. What gives inside the head and the engaged thread is not in it: see fasteners.bolt-resilience.',
    'Measured stretch is the change of free length between the same two centre marks of this bolt.',
  ],
  sources: ['derived-here'],
  example: {
    inputs: {
      preload: '7000 lbf',
      modulus: '30000000 psi',
      lengths: ['1.10 in', '0.50 in'],
      areas: ['0.0804248 in2', '0.0878 in2'],
    },
    outputs: { stretch: '0.00452 in', parts: ['0.003191 in', '0.001329 in'] },
    from: 'reference row O-20: a shank of 0.320 in and free thread of 3/8-24',
  },
  compute: (v) => {
    const areas = v.areas ?? v.diameters?.map(circle);
    if (!areas || (v.areas && v.diameters)) {
      return conflict(['areas', 'diameters'], 'one of areas and diameters is needed, and not both');
    }
    if (areas.length !== v.lengths.length) {
      return conflict(['lengths', 'areas', 'diameters'], 'each segment needs its length and its section');
    }
    const each = areas.map((area, at) => barCompliance(v.lengths[at]!, area, v.modulus));
    const compliance = each.reduce((sum, one) => sum + one, 0) as Compliance;
    const whole = v.lengths.reduce((sum, one) => sum + one, 0);
    return answer({
      stretch: (v.preload * compliance) as Length,
      parts: each.map((one) => (v.preload * one) as Length),
      stresses: areas.map((area) => (v.preload / area) as Pressure),
      compliance,
      strain: ((v.preload * compliance) / whole) as Ratio,
    });
  },
});
