import type { Force } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { tighteningFactor as find } from '../scatter.js';
import { preload } from './inputs.js';

export const tighteningFactor = defineCalculation({
  id: 'fasteners.tightening-factor',
  subject: 'fasteners',
  title: 'Tightening factor of a scatter of preload',
  summary: 'Most over least preload for a scatter, and the least preload that is left of a known most.',
  inputs: {
    scatter: {
      kind: 'ratio',
      symbol: 's',
      meaning: 'scatter of preload about its middle, such as "23 %" for ±23 %',
      unit: '%',
      range: { from: 0, below: 1 },
    },
    most: { ...preload, symbol: 'F max', meaning: 'largest preload', optional: true },
  },
  outputs: {
    factor: { kind: 'ratio', symbol: 'α', meaning: 'tightening factor', unit: '', places: 3 },
    least: {
      kind: 'force',
      symbol: 'F min',
      meaning: 'preload that is left at least',
      unit: 'kN',
      places: 1,
      optional: true,
    },
  },
  formula: 'α = F max/F min = (1 + s)/(1 − s)',
  assumptions: ['Not 1 + s and not 1/(1 − s). The scatter of a method depends on the edition of its table.'],
  sources: ['vdi-2230-scatter'],
  example: {
    inputs: { scatter: '28 %', most: '41.9 kN' },
    outputs: { factor: '1.778', least: '23.6 kN' },
    from: 'reference row O-17; least preload by hand arithmetic',
  },
  compute: (v) => {
    const factor = find(v.scatter);
    return answer({ factor, least: v.most === undefined ? undefined : ((v.most / factor) as Force) });
  },
});
