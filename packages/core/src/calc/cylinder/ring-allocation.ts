import { done, type Length, type Outcome, refused } from '../../quantity/index.js';

/** Which ring goes where. */
export interface RingPlan {
  /** Place of the ring in its list, from 0, for each cylinder in turn. */
  readonly rings: readonly number[];
  /** To file off the ends at each cylinder, 0 where the gap is large enough. */
  readonly filing: readonly Length[];
  /** Gap as fitted after filing. */
  readonly gaps: readonly Length[];
  readonly total: Length;
}
export interface NoRingPlan {
  readonly code: 'too-few-rings' | 'no-allocation';
}

/** One length beats another only by more than rounding. */
const ROUNDING = 1e-12;

/**
 * Gives each cylinder a ring so that the least is filed in all and no gap is over the largest allowed.
 *
 * `gaps` [m] of all rings were measured in one bore `measuredIn`; in bore Bj ring i shows gi + π·(Bj − measuredIn). Filing
 * opens a gap to `target` [m], nothing closes one: over `most` [m] a ring cannot be used there. Cost and limit depend on
 * gi less what the bore asks only, and the cost is convex in it; so with both sorted an exchange of two crossing pairs
 * never costs more, and the best plan is found exactly by going down both sorted lists (which rings to leave out is
 * decided by dynamic programming).
 * Refuses with `too-few-rings`, or `no-allocation` when some gap would always be too large. Source: derived.
 */
export function allocateRings(
  gaps: readonly Length[],
  measuredIn: Length,
  bores: readonly Length[],
  target: Length,
  most: Length,
): Outcome<RingPlan, NoRingPlan> {
  if (gaps.length < bores.length) return refused({ code: 'too-few-rings' });
  const rings = sortedPlaces(gaps);
  // A larger bore opens the gap, so it asks for a ring with less: sort bores falling against gaps rising.
  const order = sortedPlaces(bores.map((one) => -one));
  const fitted = (ring: number, cylinder: number) =>
    ((gaps[ring] as Length) + Math.PI * ((bores[cylinder] as Length) - measuredIn)) as Length;
  const chosen = cheapestRun(rings.length, order.length, (i, j) => {
    const gap = fitted(rings[i] as number, order[j] as number);
    return gap > most + ROUNDING ? Number.POSITIVE_INFINITY : Math.max(0, target - gap);
  });
  if (!chosen) return refused({ code: 'no-allocation' });
  const place = new Map(order.map((cylinder, j) => [cylinder, rings[chosen[j] as number] as number]));
  const found = bores.map((_, cylinder) => place.get(cylinder) as number);
  const asIs = found.map((ring, cylinder) => fitted(ring, cylinder));
  const filing = asIs.map((gap) => Math.max(0, target - gap) as Length);
  return done({
    rings: found,
    filing,
    gaps: asIs.map((gap, at) => (gap + (filing[at] as Length)) as Length),
    total: filing.reduce<number>((sum, one) => sum + one, 0) as Length,
  });
}

const sortedPlaces = (values: readonly number[]): readonly number[] =>
  values.map((_, place) => place).sort((a, b) => (values[a] as number) - (values[b] as number));

/**
 * Matches places 0..n−1 with rising places of 0..m−1 (m ≥ n) at the least total cost; undefined when every way costs
 * infinitely much. Answers the chosen place for each of the n.
 */
function cheapestRun(m: number, n: number, cost: (i: number, j: number) => number): readonly number[] | undefined {
  // best[j][i]: the first j served by the first i.
  const best = Array.from({ length: n + 1 }, (_, j) =>
    new Array<number>(m + 1).fill(j === 0 ? 0 : Number.POSITIVE_INFINITY),
  );
  const at = (j: number, i: number) => best[j]?.[i] as number;
  for (let j = 1; j <= n; j += 1) {
    for (let i = j; i <= m; i += 1)
      (best[j] as number[])[i] = Math.min(at(j, i - 1), at(j - 1, i - 1) + cost(i - 1, j - 1));
  }
  if (!Number.isFinite(at(n, m))) return undefined;
  const chosen: number[] = [];
  for (let j = n, i = m; j > 0; i -= 1) {
    // The ring is in the best run when the run without it costs more.
    if (at(j, i - 1) > at(j, i)) {
      chosen.unshift(i - 1);
      j -= 1;
    }
  }
  return chosen;
}
