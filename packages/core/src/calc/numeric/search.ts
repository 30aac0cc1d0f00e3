/** One-dimensional searches that many subjects need. */

const HALVINGS = 200;

/**
 * Place between `low` and `high` at which a function changes sign, to the last digit, by halving.
 *
 * The function must have unlike signs at the two ends; with like signs one of the ends comes back. Source: bisection.
 */
export function signChange(f: (x: number) => number, low: number, high: number): number {
  const start = Math.sign(f(low));
  let [a, b] = [low, high];
  for (let turn = 0; turn < HALVINGS; turn += 1) {
    const middle = (a + b) / 2;
    if (middle === a || middle === b) break;
    if (Math.sign(f(middle)) === start) a = middle;
    else b = middle;
  }
  return b;
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;
const SECTIONS = 45;

export interface Lowest {
  readonly at: number;
  readonly value: number;
  /** The lowest place is the first or the last of those that were looked at: it may go on lower beyond. */
  readonly atEnd: boolean;
}

/**
 * Lowest value of a function over places in ascending order (at least 2): the lowest of the places, then golden
 * section between its neighbours. Finds the lowest valley that the places are dense enough to show.
 * Source: golden section search (J. Kiefer, 1953, from memory).
 */
export function lowest(f: (x: number) => number, places: readonly number[]): Lowest {
  const values = places.map(f);
  const best = values.reduce((found, value, at) => (value < values[found]! ? at : found), 0);
  const [first, last] = [Math.max(0, best - 1), Math.min(places.length - 1, best + 1)];
  const found = goldenSection(f, places[first]!, places[last]!);
  const end = best === 0 || best === places.length - 1;
  if (found.value < values[best]!) return { ...found, atEnd: false };
  return { at: places[best]!, value: values[best]!, atEnd: end };
}

function goldenSection(f: (x: number) => number, low: number, high: number): { at: number; value: number } {
  let [a, b] = [low, high];
  let [c, d] = [b - GOLDEN * (b - a), a + GOLDEN * (b - a)];
  let [fc, fd] = [f(c), f(d)];
  for (let turn = 0; turn < SECTIONS; turn += 1) {
    if (fc < fd) {
      [b, d, fd] = [d, c, fc];
      c = b - GOLDEN * (b - a);
      fc = f(c);
    } else {
      [a, c, fc] = [c, d, fd];
      d = a + GOLDEN * (b - a);
      fd = f(d);
    }
  }
  const at = (a + b) / 2;
  return { at, value: f(at) };
}
