import { done, type Length, type Outcome, refused } from '../../quantity/index.js';
import { toNm } from './nanometres.js';

/** Which way the liners' heights step along the bank; a bank of equal heights goes any way. */
export type Way = 'any' | 'falling' | 'rising';

export interface LinerRules {
  /** Protrusions accepted, ends included. */
  readonly low?: Length;
  readonly high: Length;
  /** Largest difference between neighbours. */
  readonly stepLimit?: Length;
  /** Whether the steps must all run one way along the bank. */
  readonly oneWay: boolean;
}
export interface LinerInput extends LinerRules {
  /** Protrusion of each liner without seal, in the order of the bank; below zero it is sunk. */
  readonly bare: readonly Length[];
  /** Thicknesses to be had, each as often as needed. */
  readonly seals: readonly Length[];
  readonly choice: 'same-for-all' | 'one-each';
}
export interface LinerPlan {
  /** Seal of each liner, counted from 0. */
  readonly sealOf: readonly number[];
  readonly protrusions: readonly Length[];
  /** Largest difference between neighbours. */
  readonly step: Length;
  /** How far all liners together stay below the highest protrusion allowed. */
  readonly total: Length;
  /** The same with each liner decided alone, without the rules between neighbours: no plan has less. */
  readonly bound: Length;
}
export interface NoSeals {
  readonly code: 'no-seals';
  /** Why: no seal brings this liner (from 0) into the window, or the rules between neighbours cannot all be kept. */
  readonly liner?: number;
}

/** A seal that a liner may get, its protrusion with it, and how far that is below the highest allowed. */
interface Fitting {
  readonly seal: number;
  readonly nm: number;
  readonly cost: number;
}
/** Cheapest row of seals up to one liner, by the seal of that liner. */
interface Reached {
  readonly cost: number;
  readonly way: Way;
  readonly seals: readonly number[];
}

const linerStep = (protrusions: readonly Length[]): Length =>
  Math.max(0, ...protrusions.slice(1).map((one, at) => Math.abs(one - protrusions[at]!))) as Length;

/** Whether a bank keeps the rules between neighbours: those next to each other in the list; a step at the limit is kept. */
export function linersKeep(protrusions: readonly Length[], rules: LinerRules) {
  const nm = protrusions.map(toNm);
  const steps = nm.slice(1).map((one, at) => one - nm[at]!);
  const limit = rules.stepLimit === undefined ? Number.POSITIVE_INFINITY : toNm(rules.stepLimit);
  return {
    step: linerStep(protrusions),
    stepKept: steps.every((one) => Math.abs(one) <= limit),
    runsOneWay: steps.every((one) => one <= 0) || steps.every((one) => one >= 0),
  };
}

/** The way after one more step, or undefined when it may not be taken. */
function wayAfter(way: Way, step: number, oneWay: boolean): Way | undefined {
  if (!oneWay || step === 0) return way;
  const next = step > 0 ? 'rising' : 'falling';
  return way === 'any' || way === next ? next : undefined;
}

function cheaper(rows: readonly Reached[]): readonly Reached[] {
  return (['any', 'falling', 'rising'] as const).flatMap((way) => {
    const alike = rows.filter((row) => row.way === way).toSorted((a, b) => a.cost - b.cost);
    return alike.slice(0, 1);
  });
}

/** Seals that bring a liner into the window, and how far below the highest protrusion each leaves it. */
function fitting(input: LinerInput, bare: Length): readonly Fitting[] {
  return [...input.seals.entries()].flatMap(([seal, thickness]) => {
    const nm = toNm(bare + thickness);
    const kept = nm <= toNm(input.high) && (input.low === undefined || nm >= toNm(input.low));
    return kept ? [{ seal, nm, cost: toNm(input.high) - nm }] : [];
  });
}

/** Best row of seals along the bank: for each seal of the last liner and each way, the cheapest row so far. */
function alongBank(input: LinerInput, options: readonly (readonly Fitting[])[]): Reached | undefined {
  const limit = input.stepLimit === undefined ? Number.POSITIVE_INFINITY : toNm(input.stepLimit);
  let front = options[0]!.map(({ seal, nm, cost }) => ({
    nm,
    rows: [{ cost, way: 'any', seals: [seal] }] as readonly Reached[],
  }));
  for (const next of options.slice(1)) {
    const before = front;
    front = next.map(({ seal, nm, cost }) => {
      const rows = before.flatMap((from) => {
        if (Math.abs(nm - from.nm) > limit) return [];
        return from.rows.flatMap((row): readonly Reached[] => {
          const way = wayAfter(row.way, nm - from.nm, input.oneWay);
          return way ? [{ cost: row.cost + cost, way, seals: [...row.seals, seal] }] : [];
        });
      });
      return { nm, rows: cheaper(rows) };
    });
  }
  return front.flatMap(({ rows }) => rows).toSorted((a, b) => a.cost - b.cost)[0];
}

/** The thickest seal that every liner takes, when all get the same one. */
function oneForAll(input: LinerInput, options: readonly (readonly Fitting[])[]): readonly number[] | undefined {
  const shared = options[0]!.filter(({ seal }) => options.every((list) => list.some((one) => one.seal === seal)));
  const [best] = shared.toSorted((a, b) => a.cost - b.cost);
  return best && input.bare.map(() => best.seal);
}

function planOf(input: LinerInput, sealOf: readonly number[], options: readonly (readonly Fitting[])[]): LinerPlan {
  const protrusions = sealOf.map((seal, at) => (input.bare[at]! + input.seals[seal]!) as Length);
  const below = (at: number, seal: number) => input.high - input.bare[at]! - input.seals[seal]!;
  const alone = options.map((list, at) => Math.min(...list.map(({ seal }) => below(at, seal))));
  return {
    sealOf,
    protrusions,
    step: linerStep(protrusions),
    total: protrusions.reduce((sum, one) => sum + (input.high - one), 0) as Length,
    bound: alone.reduce((sum, one) => sum + one, 0) as Length,
  };
}

/**
 * Seal or shim under each wet liner so that the liners stand as high as they may, with steps between neighbours kept.
 *
 *   protrusion = bare + seal ≤ high;  |protrusion(i) - protrusion(i+1)| ≤ step limit;  least Σ(high - protrusion)
 *
 * | symbol | argument    | unit | meaning                                                        |
 * |--------|-------------|------|----------------------------------------------------------------|
 * |        | `bare`      | m    | protrusion without seal, along the bank                        |
 * |        | `seals`     | m    | thicknesses to be had                                          |
 * |        | `low`, `high` | m  | protrusions accepted                                           |
 * |        | `stepLimit` | m    | largest difference of neighbours                               |
 *
 * With one seal for all it is the thickest that keeps the highest liner within the window; the steps are then those of
 * the bare liners. With one each, the best row of seals is built along the bank, for each last seal and each way
 * (dynamic programming), so it is the exact optimum. Refuses with `no-seals`.
 * Example: bare 0.10 and 0.08, highest 0.23 mm, seals 0.102 and 0.122: 0.122 for both, 0.222 and 0.202.
 * Source: `liner-seal`; optimum after R. Bellman, textbook.
 */
export function linerSeals(input: LinerInput): Outcome<LinerPlan, NoSeals> {
  const options = input.bare.map((one) => fitting(input, one));
  const liner = options.findIndex((list) => list.length === 0);
  if (liner >= 0) return refused({ code: 'no-seals', liner });
  const sealOf = input.choice === 'one-each' ? alongBank(input, options)?.seals : oneForAll(input, options);
  if (!sealOf) return refused({ code: 'no-seals' });
  const found = planOf(input, sealOf, options);
  const kept = linersKeep(found.protrusions, input);
  return kept.stepKept && (kept.runsOneWay || !input.oneWay) ? done(found) : refused({ code: 'no-seals' });
}
