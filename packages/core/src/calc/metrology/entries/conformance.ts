import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { conformance } from '../decision.js';
import { type Flavour, lengths, numbers } from './flavour.js';
import { asRatio } from './inputs.js';
import { limitInputs, upsideDown } from './limit-inputs.js';

const share = { kind: 'ratio', unit: '%', places: 2 } as const;

const conformanceOf = (of: Flavour) =>
  defineCalculation({
    id: `metrology.conformance${of.tail}`,
    subject: 'metrology',
    title: `Probability that a measured value keeps its limits${of.of}`,
    summary: 'How likely the true value is inside, below and above, given the standard uncertainty.',
    inputs: {
      value: { ...of.input, symbol: 'y', meaning: 'measured value' },
      uncertainty: { ...of.size, symbol: 'u', meaning: 'standard uncertainty (not expanded)' },
      ...limitInputs(of),
    },
    outputs: {
      inside: { ...share, symbol: 'p', meaning: 'probability inside the limits' },
      below: { ...share, symbol: 'p low', meaning: 'probability below the lower limit' },
      above: { ...share, symbol: 'p high', meaning: 'probability above the upper limit' },
    },
    formula: 'p = Φ((high − y)/u) − Φ((low − y)/u)',
    assumptions: ['Normal distribution about the measured value; nothing was known of the part before.'],
    sources: ['jcgm-106'],
    example: {
      inputs: { value: of.text(13.6), uncertainty: of.text(1.8), low: of.text(12.5), high: of.text(16.3) },
      outputs: { inside: '0.66' },
      from: 'JCGM 106, 7.4; reference row O-31',
    },
    compute: (v) => {
      if (v.low === undefined && v.high === undefined) return conflict(['low', 'high'], 'give at least one limit');
      const wrong = upsideDown(v);
      if (wrong) return wrong;
      const { inside, below, above } = conformance(v.value, v.uncertainty, v);
      return answer({ inside: asRatio(inside), below: asRatio(below), above: asRatio(above) });
    },
  });

export const conformanceLength = conformanceOf(lengths);
export const conformanceNumber = conformanceOf(numbers);
