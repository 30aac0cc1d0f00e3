/** Shells that can be had, by the undersize of their journal. */
import type { ShellStock } from '../../engine/index.js';
import { type Closed, closed, sameLength } from './judged.js';
import type { LengthWords } from './length-words.js';
import type { Taken } from './stock-taken.js';

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

/** Whether two halves are of one kind, one perhaps from the bench and one bought. */
export const alikeHalves = (one: ShellStock, other: ShellStock): boolean =>
  one === other ||
  (one.grade === other.grade &&
    sameLength(one.undersize, other.undersize) &&
    sameLength(wallOf(one).low, wallOf(other).low) &&
    sameLength(wallOf(one).high, wallOf(other).high));

/** So many halves of a shell. */
export const halvesOf = (shell: ShellStock, count: number, purpose: string, words: LengthWords): Taken => ({
  part: { ...shell, name: `${shell.name}, half` },
  count,
  size: shellText(shell, words),
  for: purpose,
});
