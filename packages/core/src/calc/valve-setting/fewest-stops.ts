/**
 * The fewest places on a circle that meet every arc, exactly.
 *
 * Places are numbered 0 to count - 1 around the circle. An arc is a run of neighbouring places. Once one stop is chosen
 * the circle may be cut there: arcs that hold the stop are met, the others lie on a line, and on a line taking the last
 * place of the arc that ends first is best possible (any solution needs a place in that arc, and none reaches further).
 * Trying every place of one arc as the first stop therefore finds the true minimum in about count x arcs steps.
 * Source: piercing of intervals by the earliest right end, a textbook exchange argument; derived here for a circle.
 */
export interface Arc {
  /** First place of the run. */
  readonly from: number;
  /** Number of places in the run, from 1 to count. */
  readonly length: number;
}

const holds = (arc: Arc, place: number, count: number) => (place - arc.from + count) % count < arc.length;

/** Best completion once `cut` is a stop: the last places of the arcs that end first, walking forward from `cut`. */
function complete(arcs: readonly Arc[], cut: number, count: number): number {
  const runs = arcs
    .filter((arc) => !holds(arc, cut, count))
    .map((arc) => ({ from: (arc.from - cut + count) % count, length: arc.length }))
    .sort((a, b) => a.from + a.length - (b.from + b.length));
  let stops = 0;
  let last = -1;
  for (const run of runs) {
    if (run.from <= last) continue;
    last = run.from + run.length - 1;
    stops += 1;
  }
  return stops;
}

/** How many stops are needed; 0 when there are no arcs. Every solution has a stop in the shortest arc, so only these are tried first. */
export function fewest(arcs: readonly Arc[], count: number): number {
  if (arcs.length === 0) return 0;
  const shortest = arcs.reduce((least, arc) => (arc.length < least.length ? arc : least));
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < shortest.length; i += 1) {
    best = Math.min(best, 1 + complete(arcs, (shortest.from + i) % count, count));
  }
  return best;
}

/**
 * The first set of `stops` places that meets every arc, reading forward from place 0: the lowest possible first place,
 * then the lowest possible second one, and so on. `stops` must be the minimum that `fewest` gives.
 */
export function firstSet(arcs: readonly Arc[], count: number, stops: number): number[] {
  const chosen: number[] = [];
  let left = arcs;
  for (let place = 0; place < count && chosen.length < stops; place += 1) {
    const after = left.filter((arc) => !holds(arc, place, count));
    const cut = chosen[0] ?? place;
    if (chosen.length + 1 + complete(after, cut, count) > stops) continue;
    chosen.push(place);
    left = after;
  }
  return chosen;
}
