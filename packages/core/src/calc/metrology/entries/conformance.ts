import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { conformance, knowingBefore } from '../decision.js';
import { asLength, type Flavour, lengths, numbers } from './flavour.js';
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
      priorMean: {
        ...of.input,
        symbol: 'm₀',
        meaning: 'mean of like parts as known before this measurement; left out: nothing was known',
        optional: true,
      },
      priorDeviation: {
        ...of.size,
        symbol: 's₀',
        meaning: 'standard deviation of like parts as known before',
        optional: true,
      },
    },
    outputs: {
      mean: {
        ...of.output,
        symbol: 'm',
        meaning: 'value after both kinds of knowledge; the measured value where nothing was known',
      },
      deviation: { ...of.output, symbol: 's', meaning: 'its standard uncertainty' },
      inside: { ...share, symbol: 'p', meaning: 'probability inside the limits' },
      below: { ...share, symbol: 'p low', meaning: 'probability below the lower limit' },
      above: { ...share, symbol: 'p high', meaning: 'probability above the upper limit' },
    },
    formula:
      'p = Φ((high − m)/s) − Φ((low − m)/s); m = y, s = u, or with a prior m = (y·s₀² + m₀·u²)/(s₀² + u²), 1/s² = 1/u² + 1/s₀²',
    assumptions: ['Normal distributions. Without a prior nothing was known of the part before.'],
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
      if ((v.priorMean === undefined) !== (v.priorDeviation === undefined))
        return conflict(['priorMean', 'priorDeviation'], 'a prior has a mean and a deviation');
      const known = v.priorDeviation
        ? knowingBefore(v.value, v.uncertainty, { mean: v.priorMean!, deviation: v.priorDeviation })
        : { mean: v.value, deviation: v.uncertainty };
      if (v.priorDeviation === 0) return conflict(['priorDeviation'], 'like parts are never exactly alike');
      const { inside, below, above } = conformance(known.mean, known.deviation, v);
      return answer({
        mean: asLength(known.mean),
        deviation: asLength(known.deviation),
        inside: asRatio(inside),
        below: asRatio(below),
        above: asRatio(above),
      });
    },
  });

export const conformanceLength = conformanceOf(lengths);
export const conformanceNumber = conformanceOf(numbers);
