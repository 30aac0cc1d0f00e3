import { done, type Length, type Outcome } from '../../quantity/index.js';
import { toNm } from './nanometres.js';
import { type Goal, type NoPartsPlan, type PartsInput, type PartsPlan, partsToPlaces } from './parts-to-places.js';

export interface ExtraPart {
  /** Size of the part that would help most; absent when none of them helps. */
  readonly size?: Length;
  /** Plan with it; the extra part comes after the parts on hand. */
  readonly plan: PartsPlan;
  /** How much less of the goal; 0 when none helps. Absent when without an extra part there is no plan at all. */
  readonly gain?: Length;
}

const goalOf = (plan: PartsPlan, goal: Goal): Length =>
  goal === 'least-total' ? plan.total : goal === 'smallest-worst' ? plan.worst : plan.spread;

/**
 * The one part, among sizes that could be had, that would make the best plan better by most if it lay with the others;
 * the first of equals. Solves `partsToPlaces` again for each size, so the answer is exact.
 *
 * `sizes` [m] are those on offer. Refuses with the reason of `partsToPlaces` when neither without nor with any of them
 * every place can have a part.
 */
export function extraPart(input: PartsInput, sizes: readonly Length[]): Outcome<ExtraPart, NoPartsPlan> {
  const before = partsToPlaces(input);
  let best: { readonly size: Length; readonly plan: PartsPlan } | undefined;
  let least = before.ok ? toNm(goalOf(before.value, input.goal)) : Number.POSITIVE_INFINITY;
  for (const size of sizes) {
    const found = partsToPlaces({ ...input, parts: [...input.parts, size] });
    if (!found.ok || toNm(goalOf(found.value, input.goal)) >= least) continue;
    best = { size, plan: found.value };
    least = toNm(goalOf(found.value, input.goal));
  }
  if (!before.ok) return best ? done(best) : before;
  const now = goalOf(before.value, input.goal);
  if (!best) return done({ plan: before.value, gain: 0 as Length });
  return done({ ...best, gain: (now - goalOf(best.plan, input.goal)) as Length });
}
