import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { studyByVariance } from '../gauge-anova.js';
import { LARGEST_SAMPLE, SMALLEST_SAMPLE } from '../gauge-constants.js';
import { type GaugeReadings, type GaugeStudy, rangeFigures, studyByRanges } from '../gauge-study.js';
import { asLength, asLengths, type Flavour, lengths, maybeLength, numbers } from './flavour.js';
import { asRatio, asRatios } from './inputs.js';

const sizes = { kind: 'count', range: { from: SMALLEST_SAMPLE, to: LARGEST_SAMPLE } } as const;
const percent = { kind: 'ratio', unit: '%', places: 2 } as const;

/** Cuts the flat list into appraisers, trials and parts. */
const shaped = (flat: readonly number[], appraisers: number, trials: number, parts: number): GaugeReadings =>
  Array.from({ length: appraisers }, (_, i) =>
    Array.from({ length: trials }, (_unused, j) => flat.slice((i * trials + j) * parts, (i * trials + j + 1) * parts)),
  );

/** Customary bands of the gauge share of the total. */
const grade = (share: number): string => (share < 0.1 ? 'good' : share <= 0.3 ? 'conditional' : 'not acceptable');

const studyOf = (of: Flavour) =>
  defineCalculation({
    id: `metrology.gauge-study${of.tail}`,
    subject: 'metrology',
    title: `Gauge repeatability and reproducibility${of.of}`,
    summary: 'Several people measure the same parts several times: is the gauge good enough for the parts?',
    inputs: {
      readings: {
        ...of.input,
        symbol: 'x',
        meaning:
          'all readings in one list: first person, first trial, all parts in order; then the second trial; then the next person',
        list: true,
      },
      appraisers: { ...sizes, symbol: 'k', meaning: 'people who measured' },
      trials: { ...sizes, symbol: 'r', meaning: 'trials of each person on each part' },
      parts: { ...sizes, symbol: 'n', meaning: 'parts' },
      method: {
        kind: 'choice',
        symbol: 'method',
        meaning: 'average and range, or analysis of variance, which also sees people who read some parts differently',
        choices: ['average-and-range', 'analysis-of-variance'],
        default: 'average-and-range',
      },
      tolerance: {
        ...of.size,
        symbol: 'T',
        meaning: 'width of the tolerance that the gauge must serve',
        optional: true,
      },
      spread: {
        kind: 'ratio',
        symbol: 'm',
        meaning: 'standard deviations that the gauge takes of the tolerance: 6, in older practice 5.15',
        unit: '',
        range: { above: 0, to: 10 },
        default: 6,
      },
    },
    outputs: {
      repeatability: { ...of.output, symbol: 'EV', meaning: 'repeatability: standard deviation of the gauge' },
      reproducibility: { ...of.output, symbol: 'AV', meaning: 'reproducibility: standard deviation between people' },
      interaction: {
        ...of.output,
        symbol: 'INT',
        meaning: 'part of AV from people who read some parts differently (analysis of variance)',
        optional: true,
      },
      gauge: { ...of.output, symbol: 'GRR', meaning: 'both together' },
      partVariation: { ...of.output, symbol: 'PV', meaning: 'standard deviation between parts' },
      total: { ...of.output, symbol: 'TV', meaning: 'everything together' },
      percents: {
        ...percent,
        symbol: '%',
        meaning: 'EV, AV, GRR and PV as shares of TV; they add in squares, not to 100 %',
        list: true,
      },
      percentGauge: { ...percent, symbol: '%GRR', meaning: 'gauge as a share of TV' },
      percentTolerance: { ...percent, symbol: '%T', meaning: 'm·GRR as a share of the tolerance', optional: true },
      classes: {
        kind: 'count',
        symbol: 'ndc',
        meaning: 'classes of parts that the gauge can tell apart; 5 or more is wanted',
      },
      grade: {
        kind: 'text',
        symbol: 'grade',
        meaning: 'good under 10 % of TV, conditional to 30 %, else not acceptable',
      },
      meanRanges: { ...of.output, symbol: 'R̄', meaning: 'mean range of the trials of each person', list: true },
      meanRange: { ...of.output, symbol: 'R̿', meaning: 'mean of those' },
      appraiserDifference: { ...of.output, symbol: 'x̄ diff', meaning: 'largest mean of a person less the smallest' },
      partRange: { ...of.output, symbol: 'Rp', meaning: 'range of the means of the parts' },
      rangeLimit: { ...of.output, symbol: 'UCL', meaning: 'a range above this (D4·R̿) points to a slip' },
    },
    formula:
      'EV = R̿/d2(r); AV² = (x̄diff/d2*(k))² − EV²/(n·r); GRR² = EV² + AV²; PV = Rp/d2*(n); ndc = 1.41·PV/GRR cut down',
    assumptions: [
      'Every person measures every part as often, in random order, without knowing the earlier readings.',
      'The parts stand for what the gauge will meet.',
    ],
    sources: ['gauge-study', 'range-constants'],
    example: {
      inputs: {
        readings: of.texts(['2', '4', '3', '4', '3', '5', '3', '6']),
        appraisers: 2,
        trials: 2,
        parts: 2,
      },
      outputs: { meanRange: of.text('0.5'), appraiserDifference: of.text('1.0'), partRange: of.text('2.0') },
      from: 'hand arithmetic',
    },
    compute: (v) => {
      const wanted = v.appraisers * v.trials * v.parts;
      if (v.readings.length !== wanted)
        return conflict(
          ['readings', 'appraisers', 'trials', 'parts'],
          `people × trials × parts make ${wanted} readings`,
        );
      const readings = shaped(v.readings, v.appraisers, v.trials, v.parts);
      const study = v.method === 'average-and-range' ? studyByRanges(readings) : studyByVariance(readings);
      if (study.total === 0)
        return conflict(['readings'], 'all readings are alike: the gauge is too coarse to be studied');
      const figures = rangeFigures(readings);
      return answer({
        ...shown(study),
        percentTolerance: v.tolerance ? asRatio((v.spread * study.gauge) / v.tolerance) : undefined,
        meanRanges: asLengths(figures.meanRanges),
        meanRange: asLength(figures.meanRange),
        appraiserDifference: asLength(figures.appraiserDifference),
        partRange: asLength(figures.partRange),
        rangeLimit: asLength(figures.rangeLimit),
      });
    },
  });

function shown(study: GaugeStudy) {
  const share = (one: number) => one / study.total;
  return {
    repeatability: asLength(study.repeatability),
    reproducibility: asLength(study.reproducibility),
    interaction: maybeLength(study.interaction),
    gauge: asLength(study.gauge),
    partVariation: asLength(study.parts),
    total: asLength(study.total),
    percents: asRatios([study.repeatability, study.reproducibility, study.gauge, study.parts].map(share)),
    percentGauge: asRatio(share(study.gauge)),
    classes: study.classes,
    grade: grade(share(study.gauge)),
  };
}

export const gaugeStudy = studyOf(lengths);
export const gaugeStudyOfNumbers = studyOf(numbers);
