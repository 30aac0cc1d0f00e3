/** Gauge study by the analysis of variance, which also sees people who read some parts differently. */
import { fisherAbove } from './distributions.js';
import { type GaugeReadings, type GaugeStudy, partMeans, together } from './gauge-study.js';
import { mean, squaresAboutMean } from './repeats.js';

export interface GaugeSquares {
  readonly parts: number;
  readonly appraisers: number;
  readonly interaction: number;
  readonly trials: number;
  /** Probability of an interaction as large as this by chance. */
  readonly chance: number;
}

/** Mean squares of a crossed study. Sums are centred before they are squared. Source: AIAG (recalled), two-way analysis. */
export function gaugeSquares(readings: GaugeReadings): GaugeSquares {
  const [k, r, n] = [readings.length, readings[0]!.length, readings[0]![0]!.length];
  const cells = readings.map((trials) => trials[0]!.map((_, part) => trials.map((row) => row[part]!)));
  const means = partMeans(readings);
  const people = readings.map((trials) => mean(trials.flat()));
  const whole = mean(people);
  const parts = k * r * squaresAboutMean(means);
  const appraisers = n * r * squaresAboutMean(people);
  const off = cells.flatMap((row, i) => row.map((cell, j) => (mean(cell) - means[j]! - people[i]! + whole) ** 2));
  const interaction = r * off.reduce((sum, one) => sum + one, 0);
  const trials = cells.flat().reduce((sum, cell) => sum + squaresAboutMean(cell), 0);
  const [crossed, within] = [(n - 1) * (k - 1), n * k * (r - 1)];
  const squares = { interaction: interaction / crossed, trials: trials / within };
  return {
    parts: parts / (n - 1),
    appraisers: appraisers / (k - 1),
    ...squares,
    chance: squares.trials === 0 ? 0 : fisherAbove(squares.interaction / squares.trials, crossed, within),
  };
}

/** Above this chance an interaction is taken as scatter and pooled with it. */
const POOLED_ABOVE = 0.25;

/**
 * Gauge study by the analysis of variance. An interaction that may well be chance (above 25 %) is pooled with the trials.
 *
 *   EV² = MSe; INT² = (MSi − MSe)/r; AV² = (MSa − MSi)/(n·r); PV² = (MSp − MSi)/(k·r); negative: 0
 *
 * Source: AIAG measurement systems analysis (recalled).
 */
export function studyByVariance(readings: GaugeReadings): GaugeStudy {
  const [k, r, n] = [readings.length, readings[0]!.length, readings[0]![0]!.length];
  const found = gaugeSquares(readings);
  const pooled = found.chance > POOLED_ABOVE;
  const [crossed, within] = [(n - 1) * (k - 1), n * k * (r - 1)];
  const scatter = pooled ? (found.interaction * crossed + found.trials * within) / (crossed + within) : found.trials;
  const against = pooled ? scatter : found.interaction;
  const positive = (square: number) => Math.max(0, square);
  const interaction = pooled ? 0 : positive((found.interaction - found.trials) / r);
  const people = positive((found.appraisers - against) / (n * r));
  const parts = positive((found.parts - against) / (k * r));
  const study = together(Math.sqrt(scatter), Math.sqrt(people + interaction), Math.sqrt(parts));
  return { ...study, interaction: Math.sqrt(interaction) };
}
