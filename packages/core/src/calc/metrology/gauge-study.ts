/** Gauge study: how much of the scatter comes from the gauge, from the people and from the parts. Any unit. */
import { meanRange, meanRangeOfOne, rangeLimitFactor } from './gauge-constants.js';
import { mean, spread } from './repeats.js';

/** Readings by appraiser, trial and part, each at least two. */
export type GaugeReadings = readonly (readonly (readonly number[])[])[];

/** Standard deviations of the parts of the scatter. */
export interface GaugeStudy {
  readonly repeatability: number;
  readonly reproducibility: number;
  /** Part-by-appraiser part of the reproducibility; only the analysis of variance can see it. */
  readonly interaction?: number;
  readonly gauge: number;
  readonly parts: number;
  readonly total: number;
  /** Distinct classes of parts that the gauge can tell apart, 1 at least. */
  readonly classes: number;
}

/** Range of the trials of each part, by appraiser and part. */
const rangesOf = (readings: GaugeReadings): readonly (readonly number[])[] =>
  readings.map((trials) => trials[0]!.map((_, part) => spread(trials.map((row) => row[part]!))));

/** Mean of each part over all people and trials. */
export const partMeans = (readings: GaugeReadings): readonly number[] =>
  readings[0]![0]!.map((_, part) => mean(readings.flatMap((trials) => trials.map((row) => row[part]!))));

export interface RangeFigures {
  /** Mean range of each appraiser. */
  readonly meanRanges: readonly number[];
  /** Mean of those. */
  readonly meanRange: number;
  /** Largest appraiser mean less the smallest. */
  readonly appraiserDifference: number;
  /** Range of the part means. */
  readonly partRange: number;
  /** Ranges above it point to a slip. */
  readonly rangeLimit: number;
}

export function rangeFigures(readings: GaugeReadings): RangeFigures {
  const meanRanges = rangesOf(readings).map(mean);
  const average = mean(meanRanges);
  return {
    meanRanges,
    meanRange: average,
    appraiserDifference: spread(readings.map((trials) => mean(trials.flat()))),
    partRange: spread(partMeans(readings)),
    rangeLimit: average * rangeLimitFactor(readings[0]!.length),
  };
}

/**
 * Gauge study by averages and ranges.
 *
 *   EV = R̄·K1; AV = √((x̄diff·K2)² − EV²/(n·r)); GRR = √(EV² + AV²); PV = Rp·K3; classes = 1.41·PV/GRR cut down
 *
 * K1 = 1/d2 of the trials r, K2 and K3 = 1/d2* of the appraisers and of the parts n; each of them 2 to 20.
 * A negative square is 0: the people differ no more than the gauge scatters.
 * Source: AIAG measurement systems analysis (recalled), reproduced on its data.
 */
export function studyByRanges(readings: GaugeReadings): GaugeStudy {
  const trials = readings[0]!.length;
  const parts = readings[0]![0]!.length;
  const found = rangeFigures(readings);
  const repeatability = found.meanRange / meanRange(trials);
  const between = found.appraiserDifference / meanRangeOfOne(readings.length);
  const reproducibility = Math.sqrt(Math.max(0, between ** 2 - repeatability ** 2 / (parts * trials)));
  return together(repeatability, reproducibility, found.partRange / meanRangeOfOne(parts));
}

export function together(repeatability: number, reproducibility: number, parts: number): GaugeStudy {
  const gauge = Math.hypot(repeatability, reproducibility);
  const classes = gauge === 0 ? MOST_CLASSES : Math.floor((CLASS_WIDTH * parts) / gauge);
  return {
    repeatability,
    reproducibility,
    gauge,
    parts,
    total: Math.hypot(gauge, parts),
    classes: Math.min(MOST_CLASSES, Math.max(1, classes)),
  };
}
/** √2 as the manual prints it. */
const CLASS_WIDTH = 1.41;
/** A gauge without scatter tells any parts apart; the figure says "more than matters". */
const MOST_CLASSES = 1000;
