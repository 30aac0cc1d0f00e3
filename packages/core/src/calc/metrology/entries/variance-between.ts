import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { mean } from '../repeats.js';
import { varianceBetween } from '../variance-between.js';
import { asLength, asLengths, type Flavour, lengths, numbers } from './flavour.js';
import { asRatio } from './inputs.js';

const entry = (of: Flavour) =>
  defineCalculation({
    id: `metrology.between-groups${of.tail}`,
    subject: 'metrology',
    title: `Do groups of readings differ${of.of}`,
    summary: 'One-way analysis of variance: whether days, people, gauges or bores differ by more than their scatter.',
    inputs: {
      readings: { ...of.input, symbol: 'x', meaning: 'all readings, group after group', list: true },
      groupSizes: {
        kind: 'count',
        symbol: 'n',
        meaning: 'readings in each group',
        range: { from: 1, to: 1000 },
        list: true,
      },
    },
    outputs: {
      groupMeans: { ...of.output, symbol: 'x̄', meaning: 'mean of each group', list: true },
      betweenDeviation: { ...of.output, symbol: '√MSB', meaning: 'root of the mean square between groups' },
      withinDeviation: {
        ...of.output,
        symbol: 's',
        meaning: 'standard deviation within groups (root of the mean square)',
      },
      betweenDegrees: { kind: 'count', symbol: 'ν1', meaning: 'degrees of freedom between groups' },
      withinDegrees: { kind: 'count', symbol: 'ν2', meaning: 'degrees of freedom within groups' },
      betweenSquares: {
        kind: 'ratio',
        symbol: 'SSB',
        meaning: 'sum of squares between groups (for lengths in mm²)',
        unit: '',
        places: 6,
      },
      withinSquares: {
        kind: 'ratio',
        symbol: 'SSW',
        meaning: 'sum of squares within groups (for lengths in mm²)',
        unit: '',
        places: 6,
      },
      f: { kind: 'ratio', symbol: 'F', meaning: 'mean square between over mean square within', unit: '', places: 4 },
      chance: { kind: 'ratio', symbol: 'p', meaning: 'probability of an F as large by chance', unit: '%', places: 3 },
      explained: {
        kind: 'ratio',
        symbol: 'R²',
        meaning: 'share of the variation that the groups explain',
        unit: '',
        places: 6,
      },
    },
    formula: 'F = (SSB/ν1)/(SSW/ν2); SSB = Σn·(x̄ − x̿)²; SSW = ΣΣ(x − x̄)²',
    assumptions: ['Groups scatter alike, and readings are independent.'],
    sources: ['nist-strd'],
    example: {
      inputs: { readings: of.texts(['1', '2', '3', '2', '3', '4']), groupSizes: [3, 3] },
      outputs: { f: '1.5', betweenSquares: '1.5', withinSquares: '4.0', withinDeviation: of.text('1.0') },
      from: 'hand arithmetic',
    },
    compute: (v) => {
      const wanted = v.groupSizes.reduce((sum, one) => sum + one, 0);
      if (wanted !== v.readings.length)
        return conflict(
          ['readings', 'groupSizes'],
          `the groups take ${wanted} readings, ${v.readings.length} are given`,
        );
      const k = v.groupSizes.length;
      if (k < 2 || wanted <= k) return conflict(['groupSizes'], 'two groups are needed, and one with two readings');
      const ends = v.groupSizes.map((_, at) => v.groupSizes.slice(0, at + 1).reduce((sum, one) => sum + one, 0));
      const groups = v.groupSizes.map((size, at) => v.readings.slice(ends[at]! - size, ends[at]!));
      const found = varianceBetween(groups);
      if (found.within === 0) return conflict(['readings'], 'no group has any scatter: nothing to compare with');
      return answer({
        groupMeans: asLengths(groups.map(mean)),
        betweenDeviation: asLength(Math.sqrt(found.between / found.betweenDegrees)),
        withinDeviation: asLength(Math.sqrt(found.within / found.withinDegrees)),
        betweenDegrees: found.betweenDegrees,
        withinDegrees: found.withinDegrees,
        betweenSquares: asRatio(found.between * of.perSquare),
        withinSquares: asRatio(found.within * of.perSquare),
        f: asRatio(found.f),
        chance: asRatio(found.chance),
        explained: asRatio(found.between / (found.between + found.within)),
      });
    },
  });

export const betweenGroups = entry(lengths);
export const betweenGroupsOfNumbers = entry(numbers);
