/**
 * A value with the causes of its error. Two readings of one gauge share its setting error: in a mean it stays, in a difference it
 * cancels. So every value carries its causes, and equal causes add before they are squared.
 */
import { combinedUncertainty } from '../../quantity/index.js';

/** One independent cause of error: the reading itself, the setting of a gauge, a thermometer. */
export interface ErrorSource {
  /** A slot, or what readings share: `gauge/...`, `warmth/...`. */
  readonly key: string;
  readonly name: string;
  /** Standard uncertainty in its own unit. */
  readonly u: number;
}
/** Whether a cause is a reading, which can be taken again; no feature is called gauge or warmth. */
export const isReading = (key: string): boolean => !/^(gauge|warmth)\//.test(key);
/** How much the value changes for one unit of the source. */
export interface Cause {
  readonly source: ErrorSource;
  readonly sensitivity: number;
}
export interface Known {
  readonly value: number;
  readonly causes: readonly Cause[];
}
export type Weighted = readonly [factor: number, known: Known];

/**
 * Causes of Σ cᵢ·xᵢ: those that two inputs share count once, with their sensitivities added.
 * Source: JCGM 100, 5.1.2 and F.1.2.3 (recalled): inputs correlated through common variables are written in these variables.
 */
export function causesOf(terms: readonly Weighted[]): readonly Cause[] {
  const sums = new Map<ErrorSource, number>();
  for (const [factor, { causes }] of terms) {
    if (factor === 0) continue;
    for (const { source, sensitivity } of causes) sums.set(source, (sums.get(source) ?? 0) + factor * sensitivity);
  }
  const merged: Cause[] = [];
  for (const [source, sensitivity] of sums) merged.push({ source, sensitivity });
  return merged;
}

/** Standard uncertainty of a value with these causes, in the unit of the value. */
export const doubtOf = (causes: readonly Cause[]): number =>
  combinedUncertainty(causes.map(({ source, sensitivity }) => ({ u: source.u, sensitivity })));
