/** Shells that can be had, by the undersize of their journal. */
import type { ShellStock } from '../../engine/index.js';
import type { BuyLine } from '../model.js';
import { type Closed, closed, sameLength } from './judged.js';
import type { LengthWords } from './length-words.js';

/** Undersizes that exist, standard first. */
export const undersizesOf = (shells: readonly ShellStock[]): readonly number[] =>
  shells
    .map(({ undersize }) => undersize as number)
    .filter((one, at, all) => all.findIndex((other) => sameLength(one, other)) === at)
    .toSorted((a, b) => a - b);

export const undersizeText = (undersize: number, words: LengthWords): string =>
  undersize === 0 ? 'standard' : `${words.length(undersize)} undersize`;

/** Printed wall; both ends are known in a sheet that was read without fault. */
export const wallOf = ({ wall }: ShellStock): Closed => closed(wall) ?? { low: wall.low ?? 0, high: wall.high ?? 0 };

/** "blue, 1.990..1.996 mm". */
export function shellText(shell: ShellStock, words: LengthWords): string {
  const mark = shell.grade === undefined ? undersizeText(shell.undersize, words) : `grade ${shell.grade}`;
  return `${mark}, wall ${words.window(wallOf(shell))}`;
}

/** Shells to buy; `count` halves. */
export const buyShell = (shell: ShellStock, count: number, purpose: string, words: LengthWords): BuyLine => ({
  part: `${shell.name}, half`,
  ...(shell.partNumber === undefined ? {} : { partNumber: shell.partNumber }),
  size: shellText(shell, words),
  count,
  for: purpose,
});
