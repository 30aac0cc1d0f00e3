import type { Length, Outcome } from '../../quantity/index.js';
import { done, refused } from '../../quantity/index.js';
import { fromNm, toNm } from './nanometres.js';
import { checkedSizes, planWith } from './shim-pool.js';
import { allSizes } from './shim-sizes.js';
import type { ShimFault, ShimPool, ShimPoolInput, ShimSizes } from './types.js';

export interface ExtraShim {
  readonly thickness: Length;
  /** What one such shim in the box would save, in the order of the plan's wishes. */
  readonly fewerUnserved: number;
  readonly fewerBought: number;
  readonly lessDeviation: Length;
}

/** Positive when `a` saves more than `b`, wish by wish. */
function compareSavings(a: ExtraShim, b: ExtraShim): number {
  return (
    a.fewerUnserved - b.fewerUnserved || a.fewerBought - b.fewerBought || toNm(a.lessDeviation) - toNm(b.lessDeviation)
  );
}

function savings(before: ShimPool, after: ShimPool, thickness: Length): ExtraShim {
  return {
    thickness,
    fewerUnserved: before.unserved.length - after.unserved.length,
    fewerBought: before.boughtCount - after.boughtCount,
    lessDeviation: fromNm(toNm(before.totalDeviation) - toNm(after.totalDeviation)),
  };
}

/**
 * The one shim, among `sizes`, that would help most if it lay in the box: fewest valves unserved, then fewest bought, then
 * least deviation; the thinnest of equals. Absent when none would improve the plan. Solves the plan again for each size.
 * Refuses what `planShims` refuses.
 */
export function bestExtraShim(
  input: ShimPoolInput,
  sizes: ShimSizes,
): Outcome<ExtraShim | undefined, readonly ShimFault[]> {
  const buyable = checkedSizes(input);
  if (!buyable.ok) return buyable;
  const all = allSizes(sizes);
  if (!all.ok) return refused([all.fault]);
  const before = planWith(input, buyable.value);
  let best: ExtraShim | undefined;
  for (const size of all.value) {
    const thickness = fromNm(size);
    const after = planWith({ ...input, spares: [...input.spares, thickness] }, buyable.value);
    const found = savings(before, after, thickness);
    const none = { ...found, fewerUnserved: 0, fewerBought: 0, lessDeviation: 0 as Length };
    if (compareSavings(found, best ?? none) > 0) best = found;
  }
  return done(best);
}
