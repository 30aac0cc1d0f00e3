import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { coverageFactor } from '../coverage.js';
import { deviation, mean, median, medianDistance, spread } from '../repeats.js';
import { asLength, type Flavour, lengths, numbers } from './flavour.js';
import { asRatio, level } from './inputs.js';

const repeatsOf = (of: Flavour) =>
  defineCalculation({
    id: `metrology.repeats${of.tail}`,
    subject: 'metrology',
    title: `Mean and scatter of repeated readings${of.of}`,
    summary: 'Mean, standard deviation and standard uncertainty (Type A) of readings of one and the same size.',
    inputs: { readings: { ...of.input, symbol: 'x', meaning: 'readings of one size', list: true }, level },
    outputs: {
      mean: { ...of.output, symbol: 'x̄', meaning: 'mean' },
      deviation: { ...of.output, symbol: 's', meaning: 'standard deviation of one reading, n − 1 degrees of freedom' },
      uncertainty: { ...of.output, symbol: 'u', meaning: 'standard uncertainty of the mean' },
      degrees: { kind: 'count', symbol: 'ν', meaning: 'degrees of freedom' },
      coverage: { kind: 'ratio', symbol: 'k', meaning: 'coverage factor (Student)', unit: '', places: 3 },
      expanded: { ...of.output, symbol: 'U', meaning: 'expanded uncertainty of the mean, scatter alone' },
      lowest: { ...of.output, symbol: 'x min', meaning: 'lowest reading' },
      highest: { ...of.output, symbol: 'x max', meaning: 'highest reading' },
      range: { ...of.output, symbol: 'R', meaning: 'highest minus lowest' },
      median: { ...of.output, symbol: 'x̃', meaning: 'middle reading' },
      medianDistance: { ...of.output, symbol: 'MAD', meaning: 'median distance from the middle reading' },
    },
    formula: 'x̄ = Σx/n; s = √(Σ(x − x̄)²/(n − 1)); u = s/√n; U = t(p, n − 1)·u',
    assumptions: ['Readings are independent of each other and of one size at one place.'],
    sources: ['gum-type-a', 'nist-strd'],
    example: {
      inputs: { readings: of.texts([101.604, 101.606, 101.603, 101.605, 101.607]) },
      outputs: { mean: of.text('101.6050'), deviation: of.text('0.001581'), uncertainty: of.text('0.000707') },
      from: 'reference row O-26, recomputed',
    },
    compute: (v) => {
      const n = v.readings.length;
      if (n < 2) return conflict(['readings'], 'one reading says nothing about scatter; give two or more');
      const s = deviation(v.readings);
      const coverage = coverageFactor(v.level, n - 1);
      return answer({
        mean: asLength(mean(v.readings)),
        deviation: asLength(s),
        uncertainty: asLength(s / Math.sqrt(n)),
        degrees: n - 1,
        coverage: asRatio(coverage),
        expanded: asLength((coverage * s) / Math.sqrt(n)),
        lowest: asLength(Math.min(...v.readings)),
        highest: asLength(Math.max(...v.readings)),
        range: asLength(spread(v.readings)),
        median: asLength(median(v.readings)),
        medianDistance: asLength(medianDistance(v.readings)),
      });
    },
  });

export const repeats = repeatsOf(lengths);
export const repeatsOfNumbers = repeatsOf(numbers);
