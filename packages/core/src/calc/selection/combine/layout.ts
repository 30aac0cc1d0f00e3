/** A problem laid out for the search: dimensions in the order of the search, and how each option narrows each figure. */
import { rawCount } from './check.js';
import { canMove } from './evaluate.js';
import type { CombineProblem, Requirement, Term } from './model.js';

/** What one option more brings to the ends between which a term lies. */
export interface Narrowing {
  /** By the options chosen so far in the term's dimensions. */
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** Levels of the search whose options make the place in the tables, and what each counts for. */
  readonly levels: readonly number[];
  readonly strides: readonly number[];
}
/** A requirement at a level that narrows it. */
export interface Slot {
  readonly requirement: number;
  /** Slot that holds its ends before this level. */
  readonly before: number;
  readonly narrowings: readonly Narrowing[];
}
export interface Layout {
  readonly problem: CombineProblem;
  /** Dimension of each level. */
  readonly order: readonly number[];
  readonly sizes: readonly number[];
  /** Combinations below one option of each level. */
  readonly below: readonly number[];
  /** What one option counts for in the index of a combination, by level. */
  readonly strides: readonly number[];
  /** Slots of the root, one for each requirement in order, then of each level. */
  readonly slots: readonly Slot[];
  /** First slot of each level; one more at the end. */
  readonly firstSlot: readonly number[];
  /** Ends of the sums before anything is chosen. */
  readonly rootLow: Float64Array;
  readonly rootHigh: Float64Array;
  /** More than rounding can move a sum, by requirement. */
  readonly rounding: Float64Array;
  readonly moves: readonly boolean[];
}

/** Additions on the way to a sum are few; this many units of the last place are more than they can lose. */
const ROUNDING_STEPS = 128;

const extreme = (table: ArrayLike<number>, pick: (a: number, b: number) => number): number => {
  let found = table[0]!;
  for (let at = 1; at < table.length; at += 1) found = pick(found, table[at]!);
  return found;
};
const leastOf = (table: ArrayLike<number>): number => extreme(table, Math.min);
const mostOf = (table: ArrayLike<number>): number => extreme(table, Math.max);

/** How far the options of a dimension can move any figure, in shares of its scale: what moves most is chosen first. */
function weightOf({ requirements }: CombineProblem, dimension: number): number {
  const spans = requirements.flatMap((one) =>
    one.terms
      .filter(({ of }) => of.includes(dimension))
      .map(({ table }) => Math.abs(shownSpan(one, leastOf(table), mostOf(table))) / one.scale),
  );
  return Math.max(0, ...spans.filter((span) => Number.isFinite(span)));
}
const shownSpan = ({ base, shown }: Requirement, low: number, high: number): number =>
  shown ? shown.of(base + high) - shown.of(base + low) : high - low;

/** Levels of the search; `first` names a dimension that comes before all others. */
function orderOf(problem: CombineProblem, first: number | undefined): readonly number[] {
  const weights = problem.dimensions.map((_, at) => (at === first ? Number.POSITIVE_INFINITY : weightOf(problem, at)));
  return problem.dimensions
    .map((_, at) => at)
    .toSorted((a, b) => (weights[a] === weights[b] ? a - b : weights[b]! - weights[a]!));
}

/**
 * A term seen level by level: with some of its dimensions chosen it lies between the least and the most of what is left.
 * Answers, for each of its levels, what the choice there adds to the low and to the high end.
 */
function narrowingsOf(term: Term, levelOf: readonly number[], sizeOf: readonly number[]): readonly Narrowing[] {
  const places = term.of.map((_, at) => at).toSorted((a, b) => levelOf[term.of[a]!]! - levelOf[term.of[b]!]!);
  const levels = places.map((at) => levelOf[term.of[at]!]!);
  const sizes = places.map((at) => sizeOf[term.of[at]!]!);
  let low: Float64Array = Float64Array.from(
    { length: term.table.length },
    (_, at) => term.table[origin(at, places, term, sizeOf)]!,
  );
  let high = low;
  const found: Narrowing[] = [];
  for (let depth = places.length; depth > 0; depth -= 1) {
    const size = sizes[depth - 1]!;
    const [before, above] = [gathered(low, size, Math.min), gathered(high, size, Math.max)];
    const strides = strideOf(sizes.slice(0, depth));
    found.push({
      low: low.map((value, at) => value - before[Math.floor(at / size)]!),
      high: high.map((value, at) => value - above[Math.floor(at / size)]!),
      levels: levels.slice(0, depth),
      strides,
    });
    [low, high] = [before, above];
  }
  return found.reverse();
}

/** Place in the term's own table of a place in the table by level. */
function origin(at: number, places: readonly number[], term: Term, sizeOf: readonly number[]): number {
  const options: number[] = [];
  let rest = at;
  for (const place of places.toReversed()) {
    const size = sizeOf[term.of[place]!]!;
    options[place] = rest % size;
    rest = Math.floor(rest / size);
  }
  return term.of.reduce((index, dimension, place) => index * sizeOf[dimension]! + options[place]!, 0);
}

function gathered(values: Float64Array, size: number, pick: (a: number, b: number) => number): Float64Array {
  return Float64Array.from({ length: values.length / size }, (_, row) =>
    extreme(values.subarray(row * size, (row + 1) * size), pick),
  );
}

/** What a place counts for with the last one changing fastest. */
function strideOf(sizes: readonly number[]): readonly number[] {
  const strides: number[] = [];
  let stride = 1;
  for (const size of sizes.toReversed()) {
    strides.push(stride);
    stride *= size;
  }
  return strides.reverse();
}

/** Terms of the same single dimension as one table. */
function merged(terms: readonly Term[]): readonly Term[] {
  const single = new Map<number, Float64Array>();
  const others: Term[] = [];
  for (const term of terms) {
    const [dimension] = term.of;
    if (term.of.length !== 1 || dimension === undefined) others.push(term);
    else {
      const held = single.get(dimension);
      single.set(
        dimension,
        Float64Array.from(term.table, (value, at) => value + (held?.[at] ?? 0)),
      );
    }
  }
  return [...[...single].map(([dimension, table]) => ({ of: [dimension], table })), ...others];
}

/** Lays a valid problem out for the search. */
export function layOut(problem: CombineProblem, first?: number): Layout {
  const { dimensions, requirements } = problem;
  const order = orderOf(problem, first);
  const levelOf = dimensions.map((_, at) => order.indexOf(at));
  const sizeOf = dimensions.map(({ size }) => size);
  const sums = requirements.map(({ base, terms }) => ({ base, terms: merged(terms) }));
  const narrowings = sums.map(({ terms }) => terms.flatMap((term) => narrowingsOf(term, levelOf, sizeOf)));
  const slots: Slot[] = requirements.map((_, requirement) => ({ requirement, before: -1, narrowings: [] }));
  const latest = requirements.map((_, at) => at);
  const firstSlot: number[] = [];
  for (let level = 0; level < order.length; level += 1) {
    firstSlot.push(slots.length);
    for (const [requirement, own] of narrowings.entries()) {
      const here = own.filter(({ levels }) => levels.at(-1) === level);
      if (here.length === 0) continue;
      slots.push({ requirement, before: latest[requirement]!, narrowings: here });
      latest[requirement] = slots.length - 1;
    }
  }
  firstSlot.push(slots.length);
  const raw = strideOf(sizeOf);
  const sizes = order.map((dimension) => sizeOf[dimension]!);
  let left = rawCount(problem);
  return {
    problem,
    order,
    sizes,
    below: sizes.map((size) => (left /= size)),
    strides: order.map((dimension) => raw[dimension]!),
    slots,
    firstSlot,
    rootLow: Float64Array.from(sums, ({ base, terms }) => endOf(base, terms, leastOf)),
    rootHigh: Float64Array.from(sums, ({ base, terms }) => endOf(base, terms, mostOf)),
    rounding: Float64Array.from(sums, ({ base, terms }) => roundingOf(base, terms)),
    moves: requirements.map(canMove),
  };
}

const endOf = (base: number, terms: readonly Term[], end: (table: ArrayLike<number>) => number): number =>
  terms.reduce((sum, { table }) => sum + end(table), base);
const roundingOf = (base: number, terms: readonly Term[]): number =>
  terms.reduce((sum, { table }) => sum + Math.max(-leastOf(table), mostOf(table), 0), Math.abs(base)) *
  Number.EPSILON *
  ROUNDING_STEPS;
