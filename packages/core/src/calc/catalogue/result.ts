import type { QuantityKind } from '../../quantity/index.js';
import type { Source } from '../../sources/index.js';
import type { Caution } from './calculation.js';

/** Doubt of one number, in the unit of its output. All figures are standard uncertainties. */
export interface OutputUncertainty {
  readonly standard: number;
  readonly text: string;
  /** Which input brings how much: shares of the variance, 0 to 1, largest first. */
  readonly contributions: readonly { readonly input: string; readonly share: number }[];
  readonly monteCarlo: {
    readonly mean: number;
    readonly standard: number;
    readonly low: number;
    readonly high: number;
  };
}
export interface OutputResult {
  readonly kind: QuantityKind | 'count' | 'text';
  readonly symbol: string;
  readonly meaning: string;
  /** In `unit`, unrounded; a list where the calculation answers one. */
  readonly value: number | string | readonly (number | string)[];
  readonly unit: string;
  /** Rounded for the reader, in the unit of the reader's own inputs where that can be told. */
  readonly text: string;
  /** Only when asked for and known; for a list one entry a value, null where not known. */
  readonly uncertainty?: OutputUncertainty | readonly (OutputUncertainty | null)[];
}
/** One line of the working panel. */
export interface WorkingLine {
  readonly part: 'input' | 'formula' | 'output' | 'assumption';
  readonly symbol: string;
  readonly text: string;
  readonly meaning: string;
}
export interface CalcResult {
  readonly id: string;
  readonly title: string;
  readonly outputs: Readonly<Record<string, OutputResult>>;
  readonly working: readonly WorkingLine[];
  readonly cautions: readonly Caution[];
  readonly sources: readonly Source[];
  /** How the Monte Carlo cross-check was run, when uncertainty was asked for and an input states one. */
  readonly trials?: { readonly trials: number; readonly refused: number; readonly seed: number };
}
