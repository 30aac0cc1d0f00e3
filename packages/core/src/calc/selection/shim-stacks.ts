import type { Length } from '../../quantity/index.js';
import { toNm } from './nanometres.js';

/** Shims on top of each other: their places in the list of sizes, thinnest first. */
export interface Stack {
  readonly shims: readonly number[];
  readonly height: Length;
}

/**
 * Every height that up to `most` shims make, the empty stack first and rising; of stacks of one height the one with the
 * fewest shims. Sizes [m] may be used again and again.
 */
export function distinctStacks(sizes: readonly Length[], most: number): readonly Stack[] {
  const byHeight = new Map<number, Stack>();
  for (const stack of allStacks(sizes, most)) {
    const height = toNm(stack.height);
    if (!byHeight.has(height)) byHeight.set(height, stack);
  }
  return [...byHeight.values()].toSorted((a, b) => a.height - b.height);
}

/** Every stack of up to `most` shims, those with fewer shims first. */
export function allStacks(sizes: readonly Length[], most: number): readonly Stack[] {
  let layer: readonly Stack[] = [{ shims: [], height: 0 as Length }];
  const stacks = [...layer];
  for (let count = 1; count <= most; count += 1) {
    layer = layer.flatMap((stack) => higher(stack, sizes));
    stacks.push(...layer);
  }
  return stacks;
}

const higher = ({ shims, height }: Stack, sizes: readonly Length[]): readonly Stack[] =>
  [...sizes.entries()]
    .filter(([size]) => size >= (shims.at(-1) ?? 0))
    .map(([size, thickness]) => ({ shims: [...shims, size], height: (height + thickness) as Length }));
