/** One way to serve a place. */
export interface Option {
  /** Whole number of 0 or more. */
  readonly cost: number;
  /** Kinds of parts it takes, one entry for each part. */
  readonly uses: readonly number[];
}
export interface OptionSearch {
  /** Ways of each place; at least one of them uses nothing ("left without"), so that a plan always exists. */
  readonly places: readonly (readonly Option[])[];
  /** Parts on hand of each kind. */
  readonly stock: readonly number[];
  /** Cost of a part beyond the stock, one for all kinds or one each; infinite: there is none to be had. */
  readonly beyond: number | readonly number[];
}
export interface OptionPlan {
  /** Way of each place, counted from 0. */
  readonly chosen: readonly number[];
  readonly cost: number;
  /** No plan costs less. Equal to `cost`: the plan is proven best. */
  readonly bound: number;
  /** Partial plans looked at. */
  readonly steps: number;
}

/** Enough for a dozen places with a dozen kinds; a search that would go on for minutes ends here with its bound. */
const MOST_STEPS = 200_000;

interface Search extends OptionSearch {
  /** One for each kind. */
  readonly beyond: readonly number[];
  /** Least cost of this place and all after it, with stock enough. */
  readonly ahead: readonly number[];
  /** By kind of part: the most that this place and all after it could use. */
  readonly needs: readonly (readonly number[])[];
  readonly most: number;
  /** Least cost with which each state was reached. */
  readonly seen: Map<string, number>;
  readonly chosen: number[];
  best: readonly number[];
  cost: number;
  /** Least bound among the partial plans that were left because the steps ran out. */
  open: number;
  steps: number;
}

/** Sums of a value and all after it; the last one, after all values, is 0. */
function sumsFromEnd(values: readonly number[]): readonly number[] {
  const sums = [0];
  for (const value of values.toReversed()) sums.push(sums.at(-1)! + value);
  return sums.reverse();
}

const mostUsed = (options: readonly Option[], kind: number): number =>
  Math.max(...options.map(({ uses }) => uses.filter((one) => one === kind).length));

/** For each kind of part: the most that a place and all after it could use. */
const needsOf = ({ places, stock }: OptionSearch): readonly (readonly number[])[] =>
  stock.map((_, kind) => sumsFromEnd(places.map((options) => mostUsed(options, kind))));

/** Cost of one way with what is left; infinite when a part is missing that cannot be had. */
function costOf({ cost, uses }: Option, left: readonly number[], beyond: readonly number[]): number {
  let sum = cost;
  for (let at = 0; at < uses.length; at += 1) {
    const kind = uses[at]!;
    let taken = 0;
    for (let before = 0; before < at; before += 1) if (uses[before] === kind) taken += 1;
    if (left[kind]! <= taken) sum += beyond[kind]!;
  }
  return sum;
}
function leftAfter({ uses }: Option, left: readonly number[]): readonly number[] {
  if (uses.length === 0) return left;
  const after = left.slice();
  for (const kind of uses) if (after[kind]! > 0) after[kind]! -= 1;
  return after;
}

/** Two partial plans with the same parts left are alike; more parts than could be used count as just enough. */
const stateOf = (search: Search, place: number, left: readonly number[]): string =>
  `${place}:${left.map((count, kind) => Math.min(count, search.needs[kind]![place]!)).join()}`;

/** Ways of a place that cost no more than `most`, cheapest first. */
function waysOf({ places, beyond }: Search, place: number, left: readonly number[], most: number) {
  const ways: { readonly index: number; readonly option: Option; readonly cost: number }[] = [];
  for (const [index, option] of places[place]!.entries()) {
    const cost = costOf(option, left, beyond);
    if (cost <= most) ways.push({ index, option, cost });
  }
  return ways.sort((a, b) => a.cost - b.cost);
}

function explore(search: Search, place: number, left: readonly number[], cost: number): void {
  const bound = cost + search.ahead[place]!;
  if (bound >= search.cost) return;
  if (place === search.places.length) {
    search.best = [...search.chosen];
    search.cost = cost;
    return;
  }
  const state = stateOf(search, place, left);
  if ((search.seen.get(state) ?? Number.POSITIVE_INFINITY) <= cost) return;
  if (search.steps >= search.most) {
    search.open = Math.min(search.open, bound);
    return;
  }
  search.seen.set(state, cost);
  search.steps += 1;
  const ahead = search.ahead[place + 1]!;
  for (const way of waysOf(search, place, left, search.cost - cost - ahead)) {
    if (cost + way.cost + ahead >= search.cost) break;
    search.chosen[place] = way.index;
    explore(search, place + 1, leftAfter(way.option, left), cost + way.cost);
  }
}

/**
 * One way for each place at the least total cost, when all take from one stock.
 *
 * Branch and bound: places in turn, cheapest way first; a partial plan is given up when its cost and the least that the
 * places after it could cost reach the best plan, or when the same place was reached with the same parts left for no more.
 * The answer is exact; when `mostSteps` partial plans have been looked at, the search ends with the best plan found and a
 * lower bound of the cost of every other. Source: textbook method, own implementation.
 */
export function searchOptions(input: OptionSearch, mostSteps: number = MOST_STEPS): OptionPlan {
  const search: Search = {
    ...input,
    beyond: typeof input.beyond === 'number' ? input.stock.map(() => input.beyond as number) : input.beyond,
    ahead: sumsFromEnd(input.places.map((options) => Math.min(...options.map(({ cost }) => cost)))),
    needs: needsOf(input),
    most: mostSteps,
    seen: new Map(),
    chosen: [],
    best: [],
    cost: Number.POSITIVE_INFINITY,
    open: Number.POSITIVE_INFINITY,
    steps: 0,
  };
  greedy(search);
  explore(search, 0, input.stock, 0);
  return { chosen: search.best, cost: search.cost, bound: Math.min(search.cost, search.open), steps: search.steps };
}

/** A first plan, so that a search that ends early has one: the cheapest way of each place in turn. */
function greedy(search: Search): void {
  let left: readonly number[] = search.stock;
  let cost = 0;
  const chosen = search.places.map((_, place) => {
    const way = waysOf(search, place, left, Number.POSITIVE_INFINITY)[0]!;
    left = leftAfter(way.option, left);
    cost += way.cost;
    return way.index;
  });
  search.best = chosen;
  search.cost = cost;
}
