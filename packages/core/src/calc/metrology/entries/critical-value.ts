import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import {
  chiSquareBelow,
  chiSquareQuantile,
  fisherBelow,
  fisherQuantile,
  normalBelow,
  normalQuantile,
  studentBelow,
  studentQuantile,
} from '../distributions.js';
import { asRatio } from './inputs.js';

const degrees = { kind: 'ratio', unit: '', range: { from: 1, to: 1e6 }, optional: true } as const;

export const criticalValue = defineCalculation({
  id: 'metrology.critical-value',
  subject: 'metrology',
  title: 'Values and shares of the normal, Student, chi-square and F distributions',
  summary: 'The value below which a share lies, or the share below a value: what printed tables give.',
  inputs: {
    distribution: {
      kind: 'choice',
      symbol: 'distribution',
      meaning: 'which distribution',
      choices: ['normal', 'student', 'chi-square', 'f'],
    },
    share: {
      kind: 'ratio',
      symbol: 'p',
      meaning: 'share below the value; a table headed "upper 5 %" is 95 % here. Give this or the value',
      unit: '',
      range: { above: 0, below: 1 },
      optional: true,
    },
    value: {
      kind: 'ratio',
      symbol: 'x',
      meaning: 'value; give this or the share',
      unit: '',
      range: { from: -1e6, to: 1e6 },
      optional: true,
    },
    degrees: {
      ...degrees,
      symbol: 'ν',
      meaning: 'degrees of freedom (for F those of the numerator); not for the normal',
    },
    degreesBelow: { ...degrees, symbol: 'ν2', meaning: 'for F: degrees of freedom of the denominator' },
  },
  outputs: {
    value: { kind: 'ratio', symbol: 'x', meaning: 'value', unit: '', places: 5 },
    below: { kind: 'ratio', symbol: 'p', meaning: 'share below it', unit: '', places: 6 },
    above: { kind: 'ratio', symbol: '1 − p', meaning: 'share above it', unit: '', places: 6 },
  },
  formula: 'p = share of the distribution below x',
  assumptions: ['Computed by the incomplete beta and gamma functions, not from a table.'],
  sources: ['gum-welch', 'derived-here'],
  example: {
    inputs: { distribution: 'student', share: '0.975', degrees: '10' },
    outputs: { value: '2.228' },
    from: 'any printed table of t (recalled)',
  },
  compute: (v) => {
    if ((v.share === undefined) === (v.value === undefined))
      return conflict(['share', 'value'], 'give either a share or a value');
    if (v.distribution !== 'normal' && v.degrees === undefined)
      return conflict(['distribution', 'degrees'], 'this distribution needs its degrees of freedom');
    if (v.distribution === 'f' && v.degreesBelow === undefined)
      return conflict(['distribution', 'degreesBelow'], 'F needs two degrees of freedom');
    const [one, two] = [v.degrees ?? 1, v.degreesBelow ?? 1];
    const positive = Math.max(0, v.value ?? 0);
    const ways = {
      normal: [() => normalQuantile(v.share!), () => normalBelow(v.value!)],
      student: [() => studentQuantile(v.share!, one), () => studentBelow(v.value!, one)],
      'chi-square': [() => chiSquareQuantile(v.share!, one), () => chiSquareBelow(positive, one)],
      f: [() => fisherQuantile(v.share!, one, two), () => fisherBelow(positive, one, two)],
    } as const;
    const [quantile, share] = ways[v.distribution];
    const below = v.share ?? share();
    return answer({ value: asRatio(v.value ?? quantile()), below: asRatio(below), above: asRatio(1 - below) });
  },
});
