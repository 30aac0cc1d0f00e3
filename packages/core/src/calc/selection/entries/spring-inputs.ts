/** Inputs, outputs and words that the entries of spring shims share. */
import type { Length } from '../../../quantity/index.js';
import { conflict } from '../../catalogue/index.js';
import type { Stack } from '../shim-stacks.js';
import type { SpringShimsPlan } from '../spring-shims.js';
import { count, lengthOut, line, shown, size } from './fit-inputs.js';

const MOST_VALVES = 64;

export const heights = {
  ...size('h₀', 'installed height of each spring without shims, valve closed'),
  list: true,
} as const;
export const shims = { ...size('s', 'shim thicknesses'), list: true } as const;
export const stock = {
  ...count('n', 'shims on hand of each thickness; left out: as many as needed', 0, 1000),
  list: true,
  optional: true,
} as const;
export const most = { ...count('k', 'most shims under one spring', 0, 6), default: 2 } as const;

export const stackOutputs = {
  assignments: { ...line('plan', 'shims of each valve and the height that they leave'), list: true },
  thickness: { ...lengthOut('Σs', 'shims under each valve that is served, together'), list: true },
  heights: { ...lengthOut('h', 'installed height with the shims, of each valve that is served'), list: true },
} as const;
export const planOutputs = {
  ...stackOutputs,
  unserved: { kind: 'count', symbol: 'n₀', meaning: 'valves without an accepted stack' },
  total: lengthOut('Σ|h−hw|', 'sum of the deviations from the wanted heights'),
  proof: line('proof', 'whether this is proven best, or the bound that was reached'),
} as const;

export function stackText(at: number, stack: Stack, height: Length, sizes: readonly Length[]): string {
  const shimText = stack.shims.length === 0 ? 'no shim' : stack.shims.map((one) => shown(sizes[one]!)).join(' + ');
  return `valve ${at + 1}: ${shimText} leaves ${shown(height)}`;
}

export function planAnswer(plan: SpringShimsPlan, sizes: readonly Length[]) {
  return {
    assignments: plan.stacks.map((stack, at) =>
      stack ? stackText(at, stack, plan.heights[at]!, sizes) : `valve ${at + 1}: nothing fits`,
    ),
    thickness: plan.stacks.flatMap((stack) => (stack ? [stack.height] : [])),
    heights: plan.heights.filter((height) => height !== undefined),
    unserved: plan.unserved,
    total: plan.total,
    proof: plan.proven
      ? 'no other choice of shims is better: every one was tried or cannot reach this plan'
      : `search ended early: with as few left without, no choice has a total below ${shown(plan.bound)}`,
  };
}

/** Refuses lists that do not go together. */
export function shimListFault(v: {
  readonly heights: readonly unknown[];
  readonly shims: readonly unknown[];
  readonly stock?: readonly unknown[] | undefined;
}) {
  if (v.heights.length > MOST_VALVES) return conflict(['heights'], `at most ${MOST_VALVES} valves are valid`);
  return v.stock && v.stock.length !== v.shims.length
    ? conflict(['shims', 'stock'], 'one number of shims a thickness')
    : undefined;
}
export const tooManyStacks = () => conflict(['shims', 'most'], 'that makes more than 5000 different stacks');
