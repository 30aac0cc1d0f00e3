import type { Outcome } from '../../../quantity/index.js';
import { answer, type Conflict, conflict, defineCalculation } from '../../catalogue/index.js';
import { DIXON_FEWEST, DIXON_MOST } from '../dixon-table.js';
import {
  DIXON_LEVELS,
  dixonCritical,
  dixonStatistic,
  grubbsCritical,
  grubbsStatistic,
  robustScores,
  suspectOf,
} from '../outliers.js';
import { deviation, mean, median, medianDistance } from '../repeats.js';
import { asLength, type Flavour, lengths, numbers } from './flavour.js';
import { asRatio, asRatios } from './inputs.js';

const end = {
  kind: 'choice',
  symbol: 'end',
  meaning: 'which reading is suspected',
  choices: ['highest', 'lowest', 'either'],
  default: 'either',
} as const;
const readingsOf = (of: Flavour) => {
  const { input } = of;
  return { ...input, symbol: 'x', meaning: 'readings of one size', list: true } as const;
};
const suspectOutputs = (of: Flavour) => {
  const { output } = of;
  return {
    suspect: { ...output, symbol: 'x?', meaning: 'reading under suspicion' },
    place: { kind: 'count', symbol: 'place', meaning: 'its place in the list, from 1' },
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'keep, or outlier: measure again' },
  } as const;
};
const word = (outlier: boolean) => (outlier ? 'outlier: measure again' : 'keep');
const KEPT = 'Nothing is ever deleted silently: an outlier is a reason to measure again.';
const tooFew = (n: number, fewest: number): Outcome<never, Conflict> | undefined =>
  n < fewest ? conflict(['readings'], `${fewest} readings or more are needed to suspect one`) : undefined;
const number = { kind: 'ratio', unit: '', places: 4 } as const;

const grubbsOf = (of: Flavour) =>
  defineCalculation({
    id: `metrology.outlier-grubbs${of.tail}`,
    subject: 'metrology',
    title: `Is one reading an outlier${of.of}: Grubbs’ test`,
    summary: 'Distance of the suspect from the mean in standard deviations, against its critical value.',
    inputs: {
      readings: readingsOf(of),
      end,
      sides: {
        kind: 'choice',
        symbol: 'sides',
        meaning: 'one-sided where it was known beforehand which end could be wrong, else two-sided',
        choices: ['one-sided', 'two-sided'],
        default: 'two-sided',
      },
      risk: {
        kind: 'ratio',
        symbol: 'α',
        meaning: 'risk of a false alarm',
        unit: '%',
        range: { above: 0, to: 0.5 },
        default: 0.05,
      },
    },
    outputs: {
      mean: { ...of.output, symbol: 'x̄', meaning: 'mean with the suspect' },
      deviation: { ...of.output, places: 7, symbol: 's', meaning: 'standard deviation with the suspect' },
      statistic: { ...number, symbol: 'G', meaning: 'distance from the mean over s' },
      critical: { ...number, symbol: 'G crit', meaning: 'value that only the risk α exceeds' },
      ...suspectOutputs(of),
    },
    formula: 'G = |x? − x̄|/s; G crit = (n − 1)/√n·√(t²/(n − 2 + t²)), t at α/n or α/(2n)',
    assumptions: ['Without the suspect the readings would be normally distributed.', KEPT],
    sources: ['grubbs'],
    example: {
      inputs: { readings: of.texts([5.363, 5.352, 5.345, 5.359, 5.347, 5.328]), end: 'lowest', sides: 'one-sided' },
      outputs: { statistic: '1.6966', critical: '1.822', verdict: 'keep' },
      from: 'reference row O-34',
    },
    compute: (v) => {
      const few = tooFew(v.readings.length, 3);
      if (few) return few;
      const at = suspectOf(v.readings, v.end);
      const statistic = grubbsStatistic(v.readings, at);
      const critical = grubbsCritical(v.readings.length, v.risk, v.sides === 'one-sided' ? 1 : 2);
      return answer({
        mean: asLength(mean(v.readings)),
        deviation: asLength(deviation(v.readings)),
        statistic: asRatio(statistic),
        critical: asRatio(critical),
        suspect: v.readings[at]!,
        place: at + 1,
        verdict: word(statistic > critical),
      });
    },
  });

const dixonOf = (of: Flavour) =>
  defineCalculation({
    id: `metrology.outlier-dixon${of.tail}`,
    subject: 'metrology',
    title: `Is one reading an outlier${of.of}: Dixon’s Q`,
    summary: 'Gap of the suspect to its neighbour over the whole range, against a table.',
    inputs: {
      readings: readingsOf(of),
      end,
      level: { kind: 'choice', symbol: 'p', meaning: 'level of confidence', choices: DIXON_LEVELS, default: '95 %' },
    },
    outputs: {
      statistic: { ...number, symbol: 'Q', meaning: 'gap over range' },
      critical: { ...number, symbol: 'Q crit', meaning: 'table value at the level asked for' },
      criticals: { ...number, symbol: 'Q table', meaning: 'table values at 90, 95 and 99 %', list: true },
      ...suspectOutputs(of),
    },
    formula: 'Q = gap/(highest − lowest)',
    assumptions: ['Two-tailed table of r10: the same numbers are elsewhere headed one-sided at half the risk.', KEPT],
    sources: ['dixon'],
    example: {
      inputs: {
        readings: of.texts([0.189, 0.167, 0.187, 0.183, 0.186, 0.182, 0.181, 0.184, 0.181, 0.177]),
        level: '90 %',
      },
      outputs: { statistic: '0.455', critical: '0.412', verdict: 'outlier: measure again', place: 2 },
      from: 'reference row O-35',
    },
    compute: (v) => {
      const n = v.readings.length;
      const few = tooFew(n, DIXON_FEWEST);
      if (few) return few;
      if (n > DIXON_MOST) return conflict(['readings'], `the table ends at ${DIXON_MOST} readings; use Grubbs’ test`);
      const ends = v.end === 'either' ? (['highest', 'lowest'] as const) : [v.end];
      const found = ends
        .map((one) => ({ end: one, statistic: dixonStatistic(v.readings, one) }))
        .reduce((best, one) => (one.statistic > best.statistic ? one : best));
      const at = suspectOf(v.readings, found.end);
      const critical = dixonCritical(n, v.level);
      return answer({
        statistic: asRatio(found.statistic),
        critical: asRatio(critical),
        criticals: asRatios(DIXON_LEVELS.map((level) => dixonCritical(n, level))),
        suspect: v.readings[at]!,
        place: at + 1,
        verdict: word(found.statistic > critical),
      });
    },
  });

const robustOf = (of: Flavour) =>
  defineCalculation({
    id: `metrology.outlier-robust${of.tail}`,
    subject: 'metrology',
    title: `Outliers by the median${of.of}`,
    summary: 'Finds several outliers at once: the middle reading and the median distance are not pulled by them.',
    inputs: {
      readings: readingsOf(of),
      limit: {
        kind: 'ratio',
        symbol: 'M max',
        meaning: 'largest score that passes',
        unit: '',
        range: { above: 0, to: 100 },
        default: 3.5,
      },
    },
    outputs: {
      median: { ...of.output, symbol: 'x̃', meaning: 'middle reading' },
      medianDistance: { ...of.output, symbol: 'MAD', meaning: 'median distance from it' },
      robustDeviation: { ...of.output, symbol: 's', meaning: 'standard deviation as the median distance estimates it' },
      scores: { ...number, symbol: 'M', meaning: 'score of each reading', list: true },
      outliers: { kind: 'count', symbol: 'places', meaning: 'places of the outliers in the list, from 1', list: true },
      verdict: { kind: 'text', symbol: 'verdict', meaning: 'keep, or outlier: measure again' },
    },
    formula: 'M = 0.6745·(x − x̃)/MAD; outlier where |M| is above the limit',
    assumptions: ['More than half of the readings are good and scatter normally.', KEPT],
    sources: ['robust-score'],
    example: {
      inputs: { readings: of.texts([1, 2, 3, 4, 50]) },
      outputs: { median: of.text(3), medianDistance: of.text(1), outliers: [5], verdict: 'outlier: measure again' },
      from: 'hand arithmetic: 0.6745·47 = 31.7',
    },
    compute: (v) => {
      const few = tooFew(v.readings.length, 3);
      if (few) return few;
      const scores = robustScores(v.readings);
      if (!scores) return conflict(['readings'], 'more than half of the readings are alike: scatter cannot be judged');
      const outliers = scores.flatMap((score, at) => (Math.abs(score) > v.limit ? [at + 1] : []));
      const distance = medianDistance(v.readings);
      return answer({
        median: asLength(median(v.readings)),
        medianDistance: asLength(distance),
        robustDeviation: asLength(distance / 0.6745),
        scores: asRatios(scores),
        outliers,
        verdict: word(outliers.length > 0),
      });
    },
  });

export const outlierCalculations = [lengths, numbers].flatMap((of) => [grubbsOf(of), dixonOf(of), robustOf(of)]);
