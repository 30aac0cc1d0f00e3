/** Where to go next with the wrench when the maker prints no order. */

export interface PlacedHole {
  readonly id: string;
  /** Plan position; any one unit of length for all holes. */
  readonly x: number;
  readonly y: number;
}

/** Distances that differ by less than this share of the largest one count as one ring. */
const RING_WIDTH = 0.02;

/**
 * Visiting order of a ring of n fasteners, as places round the ring counted from 1.
 *
 * n divisible by four: groups of four at right angles, `k, k + n/2, k + n/4, k + 3n/4` for k = 1 … n/4.
 * n even otherwise: opposite pairs `k, k + n/2`, with k stepping through the half ring by (n/2 − 1)/2.
 * n odd: a star, each step (n − 1)/2 places on.
 *
 * Holds for n ≥ 0; n = 0 gives an empty list. For 5 fasteners or more, two after each other are never neighbours.
 * Example: 8 fasteners give 1 5 3 7 2 6 4 8.
 * Source: legacy cross-pattern table of ASME PCC-1 for n divisible by four (recalled, not re-read); the other two are
 * own constructions with the same property.
 */
export function crossPattern(n: number): number[] {
  if (n < 3) return Array.from({ length: n }, (_, index) => index + 1);
  if (n % 2 === 1) return star(n, (n - 1) / 2);
  const half = n / 2;
  if (n % 4 === 2) return star(half, (half - 1) / 2).flatMap((k) => [k, k + half]);
  const quarter = n / 4;
  return star(quarter, 1).flatMap((k) => [k, k + half, k + quarter, k + half + quarter]);
}

/** Places 1 … n visited by a fixed step; the step shares no divisor with n. */
function star(n: number, step: number): number[] {
  return Array.from({ length: n }, (_, index) => ((index * step) % n) + 1);
}

/**
 * Order from the centre of the fasteners outward, alternating sides; a fallback for a sheet that prints none.
 *
 * | symbol | argument | unit | meaning                                           |
 * |--------|----------|------|---------------------------------------------------|
 * | x, y   | `holes`  | [m]  | plan position; any unit, the same for all          |
 *
 * The centre is the mean of the positions. Holes whose distances from it agree within 2 % of the largest one form a
 * ring; rings are taken from the inside out, each in the cross pattern, beginning with the hole farthest from the last
 * one of the ring before. Loosening is the exact reverse.
 *
 * Returns every id once. The answer depends on positions only, not on the order of the list; equal positions fall back
 * on the ids. Holes without a finite position come last, as listed.
 * Assumes one joint in one plane. A maker's drawing may differ (long and short bolts, dowels) and wins.
 * Example: two rows of five, 100 by 110 apart: the central pair, the next four, the outer four.
 * Source: common practice, no source; the principle "from the middle to the ends" for a row of bolts:
 * TB 9-2320-279-13&P-2, torque limits work package (read).
 */
export function centreOutwardOrder(holes: readonly PlacedHole[]): string[] {
  const known = holes.filter(({ x, y }) => Number.isFinite(x) && Number.isFinite(y)).toSorted(byPlace);
  const unknown = holes.filter((hole) => !known.includes(hole));
  const visited: PlacedHole[] = [];
  const centre = { x: mean(known.map((hole) => hole.x)), y: mean(known.map((hole) => hole.y)) };
  for (const ring of ringsAbout(centre, known)) visited.push(...acrossRing(ring, centre, visited.at(-1)));
  return [...visited, ...unknown].map((hole) => hole.id);
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

const byPlace = (a: PlacedHole, b: PlacedHole): number =>
  a.x - b.x || b.y - a.y || Number(a.id > b.id) - Number(a.id < b.id);

const apart = (a: { x: number; y: number }, b: { x: number; y: number }): number => Math.hypot(a.x - b.x, a.y - b.y);

/** Holes in rings from the inside out; a ring reaches from its nearest hole outward by the ring width. */
function ringsAbout(centre: { x: number; y: number }, holes: readonly PlacedHole[]): PlacedHole[][] {
  const sorted = holes.map((hole) => ({ hole, far: apart(hole, centre) })).toSorted((a, b) => a.far - b.far);
  const width = RING_WIDTH * (sorted.at(-1)?.far ?? 0);
  const rings: PlacedHole[][] = [];
  let inner = Number.NEGATIVE_INFINITY;
  for (const { hole, far } of sorted) {
    if (far > inner + width) {
      rings.push([]);
      inner = far;
    }
    rings.at(-1)?.push(hole);
  }
  return rings;
}

/** One ring in the cross pattern, begun far from the hole visited last. */
function acrossRing(ring: PlacedHole[], centre: { x: number; y: number }, last: PlacedHole | undefined): PlacedHole[] {
  const angle = (hole: PlacedHole) => Math.atan2(hole.y - centre.y, hole.x - centre.x);
  const round = ring.toSorted((a, b) => angle(a) - angle(b) || byPlace(a, b));
  const start = round.indexOf(farthestFrom(last, ring.toSorted(byPlace)));
  return crossPattern(round.length).map((place) => round[(start + place - 1) % round.length]!);
}

/** The first of the farthest; without a last hole the first by place. Rounding noise must not decide. */
function farthestFrom(last: PlacedHole | undefined, ring: readonly PlacedHole[]): PlacedHole {
  let best = ring[0] as PlacedHole;
  if (last === undefined) return best;
  for (const hole of ring) if (apart(hole, last) > apart(best, last) * (1 + 1e-9)) best = hole;
  return best;
}
