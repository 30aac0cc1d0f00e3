/** The narrowest band about a line, plane or (linearised) circle that holds every point: a linear programme, solved exactly. */
import { solve } from './linear-solve.js';

export interface SmallestZone {
  readonly coefficients: readonly number[];
  /** Half width of the band. */
  readonly half: number;
}

/** A point used from above (+1) or from below (−1). */
interface Contact {
  readonly point: number;
  readonly sign: 1 | -1;
}

/** Small and unequal, so that no two contacts tie and the search cannot go round in a circle. */
const NUDGES = [3.1e-10, 1.9e-10, 2.7e-10] as const;
const OPTIMAL = 1e-11;
const MOST_STEPS = 5000;

/**
 * Coefficients c with the smallest largest |z − row·c|, and that largest distance.
 *
 * `rows` n by p with p 1 to 3, scaled to about −1 to 1; `z` scaled to about 1. Undefined when the rows leave a coefficient open
 * (all points on one line, for a plane). The simplex method on the dual: its basis is the p + 1 points that touch.
 * Error: below 1e-9 of the scale. Source: linear programming textbook (exchange of contacts).
 */
export function smallestZone(rows: readonly (readonly number[])[], z: readonly number[]): SmallestZone | undefined {
  const start = independentRows(rows);
  if (!start) return undefined;
  const right = [1, ...NUDGES.slice(0, start.length)];
  let contacts = startingContacts(rows, start, right);
  let found = touching(rows, z, contacts);
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const entering = farthest(rows, z, found);
    if (!entering) break;
    contacts = exchange(rows, contacts, entering, right);
    found = touching(rows, z, contacts);
  }
  return found;
}

const columnOf = (rows: readonly (readonly number[])[], { point, sign }: Contact): readonly number[] => [
  1,
  ...rows[point]!.map((one) => sign * one),
];

/** Plane through the contacts with all of them at one distance. A basis is never singular. */
function touching(
  rows: readonly (readonly number[])[],
  z: readonly number[],
  contacts: readonly Contact[],
): SmallestZone {
  const matrix = contacts.map((contact) => columnOf(rows, contact));
  const [half, ...coefficients] = solve(
    matrix,
    contacts.map(({ point, sign }) => sign * z[point]!),
  )! as [number, ...number[]];
  return { half, coefficients };
}

/** The point farthest outside the band, or undefined when all are inside. */
function farthest(
  rows: readonly (readonly number[])[],
  z: readonly number[],
  { coefficients, half }: SmallestZone,
): Contact | undefined {
  const off = rows.map((row, at) => z[at]! - row.reduce((sum, one, k) => sum + one * coefficients[k]!, 0));
  const point = off.reduce((best, one, at) => (Math.abs(one) > Math.abs(off[best]!) ? at : best), 0);
  const distance = off[point]!;
  return Math.abs(distance) > half + OPTIMAL ? { point, sign: distance > 0 ? 1 : -1 } : undefined;
}

/** Weights of the contacts that balance to `right`. */
const weights = (rows: readonly (readonly number[])[], contacts: readonly Contact[], right: readonly number[]) => {
  const columns = contacts.map((contact) => columnOf(rows, contact));
  return solve(
    right.map((_, k) => columns.map((column) => column[k]!)),
    right,
  )!;
};

/** Lets a point in for the contact whose weight reaches 0 first. */
function exchange(
  rows: readonly (readonly number[])[],
  contacts: readonly Contact[],
  entering: Contact,
  right: readonly number[],
): readonly Contact[] {
  const held = weights(rows, contacts, right);
  const pulled = weights(rows, contacts, columnOf(rows, entering));
  const rate = (at: number) => (pulled[at]! > OPTIMAL ? held[at]! / pulled[at]! : Number.POSITIVE_INFINITY);
  const leaving = contacts.reduce((best, _, at) => (rate(at) < rate(best) ? at : best), 0);
  return contacts.map((contact, at) => (at === leaving ? entering : contact));
}

/** One point held from both sides, and others whose weights start near 0 with the sign that makes them positive. */
function startingContacts(
  rows: readonly (readonly number[])[],
  start: readonly number[],
  right: readonly number[],
): readonly Contact[] {
  const [first, ...others] = start as [number, ...number[]];
  const contacts: Contact[] = [
    { point: first, sign: 1 },
    { point: first, sign: -1 },
    ...others.map((point): Contact => ({ point, sign: 1 })),
  ];
  const held = weights(rows, contacts, right);
  return contacts.map((contact, at): Contact => (held[at]! < 0 ? { ...contact, sign: -1 } : contact));
}

const INDEPENDENT = 1e-9;

/** As many points as there are coefficients, whose rows are independent; undefined when there are none. */
function independentRows(rows: readonly (readonly number[])[]): readonly number[] | undefined {
  const left = rows.map((row) => [...row]);
  const chosen: number[] = [];
  for (let k = 0; k < rows[0]!.length; k += 1) {
    const lengths = left.map((row) => Math.hypot(...row));
    const best = lengths.reduce((top, one, at) => (one > lengths[top]! ? at : top), 0);
    if (!(lengths[best]! > INDEPENDENT)) return undefined;
    chosen.push(best);
    const unit = left[best]!.map((one) => one / lengths[best]!);
    for (const row of left) {
      const along = row.reduce((sum, one, j) => sum + one * unit[j]!, 0);
      row.forEach((one, j) => {
        row[j] = one - along * unit[j]!;
      });
    }
  }
  return chosen;
}
