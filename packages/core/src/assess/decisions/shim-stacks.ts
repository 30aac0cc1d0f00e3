/** Stacks of shims from the sheet's stock, under liners and under springs. */
import type { Stack } from '../../calc/selection/index.js';
import type { ThicknessStock } from '../../engine/index.js';
import type { LengthWords } from './length-words.js';
import type { Taken } from './stock-taken.js';

/** More shims than this on each other lie badly, or stand for a wrong spring. Common practice, no source. */
export const MOST_SHIMS = 2;

/** "0.102 mm + 0.050 mm", or "no shim". */
export const shimText = ({ shims }: Stack, sizes: readonly ThicknessStock[], words: LengthWords): string =>
  shims.length === 0 ? 'no shim' : shims.map((one) => words.length(sizes[one]?.thickness ?? 0)).join(' + ');

/** What stacks take of each size. */
export const takenBy = (
  stacks: readonly Stack[],
  sizes: readonly ThicknessStock[],
  use: string,
  words: LengthWords,
): readonly Taken[] =>
  sizes.flatMap((part, at) => {
    const count = stacks.flatMap(({ shims }) => shims).filter((one) => one === at).length;
    return count === 0 ? [] : [{ part, count, size: words.length(part.thickness), for: use }];
  });
