/**
 * Parts of the sheet's stock that a decision takes. One rule for all of them: a part with a count lies on the bench, there are only so
 * many of it and none is bought; a part without one is bought, as often as needed. What lies there and can be bought too stands twice.
 */
import type { StockPart } from '../../engine/index.js';
import type { BuyLine } from '../model.js';

export interface Taken {
  readonly part: StockPart;
  readonly count: number;
  readonly size: string;
  readonly for: string;
}

export const canBeBought = ({ count }: StockPart): boolean => count === undefined;
/** Pieces that can be had of a part; infinite where it is bought. */
export const piecesOf = ({ count = Number.POSITIVE_INFINITY }: StockPart): number => count;

/** What is bought of what is taken. */
export const buysOf = (taken: readonly Taken[]): readonly BuyLine[] =>
  taken
    .filter(({ part, count }) => canBeBought(part) && count > 0)
    .map(({ part, count, size, for: use }) => ({
      part: part.name,
      ...(part.partNumber === undefined ? {} : { partNumber: part.partNumber }),
      size,
      count,
      for: use,
    }));

/** Parts of which more is taken than there are, each in words. */
export const shortOf = (taken: readonly Taken[]): readonly string[] =>
  taken
    .filter(({ part, count }) => count > piecesOf(part))
    .map(({ part, count, size }) => `takes ${count} of ${part.name} ${size}, there are ${part.count}`);

/** So many of several parts that serve alike: what lies on the bench first, then what is bought. */
export function shareOut<P extends StockPart>(
  parts: readonly P[],
  count: number,
): readonly { readonly part: P; readonly count: number }[] {
  let left = count;
  return [...parts.filter((part) => !canBeBought(part)), ...parts.filter(canBeBought)].flatMap((part) => {
    const own = Math.min(left, piecesOf(part));
    left -= own;
    return own > 0 ? [{ part, count: own }] : [];
  });
}
