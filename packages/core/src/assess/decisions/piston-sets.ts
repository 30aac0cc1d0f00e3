/** Pistons that can be had, by oversize. */
import type { Engine, PistonStock } from '../../engine/index.js';
import type { Assessment } from '../model.js';
import { placesOf, sizeAt } from './decision.js';
import { type Closed, sameLength } from './judged.js';
import type { LengthWords } from './length-words.js';
import { piecesOf } from './stock-taken.js';

/** All grades of one oversize. */
export interface PistonSet {
  readonly oversize: number;
  readonly grades: readonly PistonStock[];
  /** Pieces that can be had; infinite where a grade can be bought as often as needed. */
  readonly pieces: number;
  /** Skirts that this set may have, over all grades; absent where a grade has no printed size. */
  readonly skirt?: Closed;
}

/** Pistons of the maker's own form: another crown or height is chosen with the combination, not with the bores. */
export const makersPistons = ({ stock }: Engine): readonly PistonStock[] =>
  (stock?.pistons ?? []).filter(({ form }) => form === undefined);

/** Sets in the order of their oversizes, standard first. */
export function pistonSets(pistons: readonly PistonStock[]): readonly PistonSet[] {
  const oversizes = pistons
    .map(({ oversize }) => oversize)
    .filter((one, at, all) => all.findIndex((other) => sameLength(one, other)) === at)
    .toSorted((a, b) => a - b);
  return oversizes.map((oversize) => {
    const grades = pistons.filter((one) => sameLength(one.oversize, oversize));
    const skirt = skirtOf(grades);
    const pieces = grades.reduce((sum, grade) => sum + piecesOf(grade), 0);
    return { oversize, grades, pieces, ...(skirt && { skirt }) };
  });
}

function skirtOf(grades: readonly PistonStock[]): Closed | undefined {
  const lows = grades.flatMap(({ skirt }) => skirt?.low ?? []);
  const highs = grades.flatMap(({ skirt }) => skirt?.high ?? []);
  if (lows.length < grades.length || highs.length < grades.length) return undefined;
  return { low: Math.min(...lows), high: Math.max(...highs) };
}

/** Of several oversizes the one whose nominal bore lies nearest to a size. */
export function nearestOversize(oversizes: readonly number[], standard: number, size: number): number {
  const apart = (oversize: number) => Math.abs(standard + oversize - size);
  return oversizes.reduce((best, one) => (apart(one) < apart(best) ? one : best), 0);
}

/** Measured pistons of one oversize by the cylinder that they are tagged with. */
export function pistonsInHand(
  assessment: Assessment,
  oversizes: readonly number[],
  standard: number,
  oversize: number,
): ReadonlyMap<string, { readonly value: number; readonly u?: number }> {
  const measured = placesOf(assessment, 'piston-skirt').flatMap(({ id }) => {
    const size = sizeAt(assessment, 'piston-skirt.diameter', id);
    if (size === undefined || !sameLength(nearestOversize(oversizes, standard, size.value), oversize)) return [];
    return [[id, size] as const];
  });
  return new Map(measured);
}

/** "+0.020 in", or "standard". */
export const oversizeText = (oversize: number, words: LengthWords): string =>
  oversize === 0 ? 'standard' : `+${words.length(oversize)}`;
