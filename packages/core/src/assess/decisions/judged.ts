import { conformance, judge } from '../../calc/metrology/index.js';
import type { Window } from '../../engine/index.js';
import type { VerdictWord } from '../model.js';

/** A value of the same kind as its window, with its standard uncertainty where known. */
export interface Known {
  readonly value: number;
  readonly u?: number | undefined;
}

/**
 * Verdict of a figure against a window: near where the expanded uncertainty (k = 2) reaches the limit. Where the uncertainty is not
 * known no verdict rests on it: `no data`. Source: `judge`, guarded rule, as for every finding.
 */
export function judged({ value, u }: Known, window: Window<number>): VerdictWord {
  if (u === undefined) return 'no data';
  const found = judge({ rule: 'guarded', readings: [value], expanded: 2 * u, guardFactor: 1, ...window });
  return found?.verdict ?? 'no data';
}

/** Chance that all of several independent figures lie in their windows; undefined where an uncertainty is not known. */
export function chanceOfAll(
  figures: readonly { readonly known: Known; readonly window: Window<number> }[],
): number | undefined {
  let chance = 1;
  for (const { known, window } of figures) {
    if (known.u === undefined) return undefined;
    chance *= conformance(known.value, known.u, window).inside;
  }
  return chance;
}

/** From here on a thing counts as sure: the share that an expanded uncertainty of k = 2 covers. */
export const SURE = 0.95;

/** "97 %", "over 99.9 %", or that it is not known. */
export function chanceText(chance: number | undefined): string {
  if (chance === undefined) return 'not known: the uncertainty of a reading is missing';
  if (chance > 0.999) return 'over 99.9 %';
  if (chance < 0.001) return 'under 0.1 %';
  return `${(100 * chance).toFixed(chance > 0.99 ? 1 : 0)} %`;
}

/** What two or more windows have in common; undefined where nothing is. An open end stays open. */
export function common(windows: readonly Window<number>[]): Window<number> | undefined {
  const lows = windows.flatMap(({ low }) => low ?? []);
  const highs = windows.flatMap(({ high }) => high ?? []);
  const low = lows.length === 0 ? undefined : Math.max(...lows);
  const high = highs.length === 0 ? undefined : Math.min(...highs);
  if (low !== undefined && high !== undefined && low > high + PICOMETRE) return undefined;
  return {
    ...(low === undefined ? {} : { low }),
    ...(high === undefined ? {} : { high: Math.max(high, low ?? high) }),
  };
}
const PICOMETRE = 1e-12;

export interface Closed {
  readonly low: number;
  readonly high: number;
}
/** A window with both ends; undefined where one is open: then there is no middle to aim at. */
export const closed = ({ low, high }: Window<number>): Closed | undefined =>
  low === undefined || high === undefined ? undefined : { low, high };
export const middle = ({ low, high }: Closed): number => (low + high) / 2;
export const moved = ({ low, high }: Closed, by: number): Closed => ({ low: low + by, high: high + by });

/** Whether two lengths are the same but for rounding: to a nanometre. */
export const sameLength = (a: number, b: number): boolean => Math.abs(a - b) < NANOMETRE;
const NANOMETRE = 1e-9;

/** The window when all of several are the same; undefined when they differ. */
export function sameWindow([first, ...others]: readonly Closed[]): Closed | undefined {
  const alike = first && others.every(({ low, high }) => sameLength(low, first.low) && sameLength(high, first.high));
  return alike ? first : undefined;
}
