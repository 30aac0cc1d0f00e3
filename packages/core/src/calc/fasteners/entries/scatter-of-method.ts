import type { Force } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { methods, scatterOf } from '../methods.js';
import { tighteningFactor } from '../scatter.js';
import { preload } from './inputs.js';

const share = { kind: 'ratio', unit: '%', places: 0 } as const;
const factor = { kind: 'ratio', unit: '', places: 3 } as const;
const load = { kind: 'force', unit: 'kN', places: 1, optional: true } as const;

export const scatterOfMethod = defineCalculation({
  id: 'fasteners.scatter-of-method',
  subject: 'fasteners',
  title: 'Scatter of preload by method of tightening',
  summary: 'How far preloads lie apart by the way of tightening, the tightening factor, and what is left at least.',
  inputs: {
    method: { kind: 'choice', symbol: 'method', meaning: 'how it is tightened', choices: methods },
    most: { ...preload, symbol: 'F max', meaning: 'largest preload that the bolt may see', optional: true },
  },
  outputs: {
    scatterLow: { ...share, symbol: 's min', meaning: 'scatter about the middle, ±, careful work' },
    scatterHigh: { ...share, symbol: 's max', meaning: 'scatter about the middle, ±, rough work' },
    factorLow: { ...factor, symbol: 'α min', meaning: 'tightening factor of the lower scatter' },
    factorHigh: { ...factor, symbol: 'α max', meaning: 'tightening factor of the higher scatter' },
    leastCareful: { ...load, symbol: 'F min', meaning: 'preload that is left at least, careful work' },
    leastRough: { ...load, symbol: 'F min', meaning: 'preload that is left at least, rough work' },
  },
  formula: 'α = (1 + s)/(1 − s); F min = F max/α',
  assumptions: ['Bands of the 1986 edition; later ones print 1.6 to 2.0 for estimated friction. Store the edition.'],
  sources: ['vdi-2230-scatter'],
  example: {
    inputs: { method: 'torque wrench, friction estimated', most: '41.9 kN' },
    outputs: {
      scatterLow: '23 %',
      scatterHigh: '28 %',
      factorLow: '1.597',
      factorHigh: '1.778',
      leastRough: '23.6 kN',
    },
    from: 'reference row O-17',
  },
  compute: (v) => {
    const { low, high } = scatterOf(v.method);
    const left = (of: number) => (v.most === undefined ? undefined : ((v.most / of) as Force));
    const [factorLow, factorHigh] = [tighteningFactor(low), tighteningFactor(high)];
    return answer({
      scatterLow: low,
      scatterHigh: high,
      factorLow,
      factorHigh,
      leastCareful: left(factorLow),
      leastRough: left(factorHigh),
    });
  },
});
