/** Inputs and outputs that several entries of this subject share. */
import { celsius, type Ratio } from '../../../quantity/index.js';

export const level = {
  kind: 'ratio',
  symbol: 'p',
  meaning: 'level of confidence, such as 95 % or 0.9545',
  unit: '%',
  range: { above: 0, below: 1 },
  default: 0.95,
} as const;

const MOST_DEGREES = 1e9;

/** Degrees of freedom: a number above 0, or "inf" where the uncertainty is taken as known. */
export const readDegrees = (text: string): number | undefined => {
  const trimmed = text.trim().toLowerCase();
  if (['inf', 'infinite', 'infinity', '∞'].includes(trimmed)) return Number.POSITIVE_INFINITY;
  const number = trimmed === '' ? Number.NaN : Number(trimmed);
  return number > 0 && number <= MOST_DEGREES ? number : undefined;
};
export const degreesOfFreedom = {
  kind: 'text',
  symbol: 'ν',
  meaning: 'degrees of freedom',
  expected: 'a number above 0, or "inf" for one that is taken as known exactly',
  read: readDegrees,
} as const;

export const temperature = {
  kind: 'temperature',
  unit: '°C',
  range: { from: celsius(-60), to: celsius(400) },
} as const;

export const expansion = {
  kind: 'thermal-expansion',
  unit: 'ppm/K',
  range: { from: 0, to: 100e-6 },
} as const;

export const asRatio = (number: number): Ratio => number as Ratio;
export const asRatios = (all: readonly number[]): readonly Ratio[] => all as readonly Ratio[];

/** Most whole degrees that a count can show; above it they say nothing new. */
export const countable = (degrees: number): number | undefined => (Number.isFinite(degrees) ? degrees : undefined);
