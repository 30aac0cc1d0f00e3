/** The chance that a chosen combination keeps each limit, and all together, with the doubts of its sizes. */
import { fillNormals, type RandomState, seeded } from '../../../calc/catalogue/index.js';
import { conformance } from '../../../calc/metrology/index.js';
import { type Propagated, propagateBy } from '../../../calc/numeric/index.js';
import { done, type Outcome, refused } from '../../../quantity/index.js';
import type { FinderFault, FinderInput } from './model.js';
import type { Need } from './need.js';
import { keepsLimit } from './problem.js';
import { poseProblem } from './search.js';
import { sizeWords } from './size-words.js';
import { movedTo, type Place, sizesIn } from './sizes-in.js';
import type { World } from './world.js';

export interface ChanceOfLimit {
  readonly key: string;
  readonly name: string;
  readonly value: number;
  /** Standard uncertainty by derivatives; left out where a derivative cannot be had. */
  readonly u?: number;
  /** Chance by derivatives and the normal distribution, and share of the trials that kept the limit. */
  readonly byDerivatives?: number;
  readonly byTrials: number;
}
export interface Chances {
  readonly limits: readonly ChanceOfLimit[];
  /** All limits at once. By derivatives: draws of the straight-line model, which keeps what the limits share. */
  readonly together: { readonly byDerivatives?: number; readonly byTrials: number };
  readonly trials: number;
  /** In words: sizes that move a figure and whose doubt nobody stated: the chances leave it out. */
  readonly unstated: readonly string[];
}
export interface ChanceOptions {
  /** Draws of all sizes; at least 100. */
  readonly trials?: number;
  readonly seed?: number;
}
const USUAL_TRIALS = 2000;
/** The straight-line model costs next to nothing: more draws. */
const LINE_DRAWS = 20_000;

interface Doubt {
  readonly name: string;
  readonly place: Place;
  readonly value: number;
  readonly standard: number | undefined;
}

/**
 * Chance of each limit and of all together for one combination of an input.
 *
 * `picked` the option of each choice, as a found combination has it. Every size is drawn from a normal distribution of its own,
 * independent of the others; readings of a lobe are taken as exact. First by derivatives (figures as straight lines in the sizes,
 * `propagateBy`), then, as a cross-check, by `trials` draws through the formulas themselves; the same seed gives the same shares. The
 * error of a share p of n trials is about √(p·(1 − p)/n). Refuses what `beginSearch` refuses.
 * Source: JCGM 100 and JCGM 101 (from memory).
 */
export function chancesOf(
  input: FinderInput,
  picked: readonly number[],
  { trials = USUAL_TRIALS, seed = 1 }: ChanceOptions = {},
): Outcome<Chances, FinderFault> {
  const posed = poseProblem(input);
  if (!posed.ok) return refused(posed.fault);
  const { choices, needs } = posed.value;
  const world: World = {
    fixed: input.fixed,
    picked: new Map(choices.map(({ key, options }, at) => [key, options[picked[at]!]!])),
  };
  const doubts: readonly Doubt[] = sizesIn(world).map((one) => ({ ...one, standard: one.u }));
  const centre = figuresOf(needs, world);
  const at = ({ place }: Doubt, to: number) => numbers(needs, movedTo(world, [place], [to]));
  const stated = doubts.filter(({ standard }) => standard !== undefined && standard > 0);
  const spreads = propagateBy(at, numbers(needs, world), stated);
  const drawn = trialsOf(needs, world, stated, Math.max(100, trials), seeded(seed));
  return done({
    limits: needs.map((need, place) => limitOf(need, centre[place]!, spreads.get(need.key), drawn.each[place]!)),
    together: { ...lineOf(needs, centre, spreads, stated.length, seeded(seed + 1)), byTrials: drawn.all },
    trials: Math.max(100, trials),
    unstated: unstatedOf(needs, world, doubts),
  });
}

const figuresOf = (needs: readonly Need[], world: World): readonly number[] =>
  needs.map(({ amount, shown }) => {
    const sum = amount(world);
    return shown ? shown.of(sum, world) : sum;
  });
const numbers = (needs: readonly Need[], world: World): ReadonlyMap<string, number> => {
  const figures = figuresOf(needs, world);
  return new Map(needs.map(({ key }, at) => [key, figures[at]!]));
};

function limitOf(need: Need, value: number, spread: Propagated | undefined, byTrials: number): ChanceOfLimit {
  const { key, name } = need;
  const u = spread?.standard;
  const byDerivatives = u === undefined ? undefined : insideOf(need, value, u);
  return {
    key,
    name,
    value,
    ...(u !== undefined && { u }),
    ...(byDerivatives !== undefined && { byDerivatives }),
    byTrials,
  };
}
/** Without any doubt it keeps or it does not. */
const insideOf = (need: Need, value: number, u: number): number =>
  u > 0 ? conformance(value, u, need).inside : Number(keepsLimit(need, value));

const keeps = (needs: readonly Need[], figures: ArrayLike<number>): readonly boolean[] =>
  needs.map((need, at) => keepsLimit(need, figures[at]!));

function trialsOf(needs: readonly Need[], world: World, doubts: readonly Doubt[], trials: number, random: RandomState) {
  const each = new Float64Array(needs.length);
  const normals = new Float64Array(doubts.length);
  const places = doubts.map(({ place }) => place);
  let all = 0;
  let state = random;
  for (let trial = 0; trial < trials; trial += 1) {
    if (normals.length > 0) state = fillNormals(state, normals);
    const values = doubts.map(({ value, standard }, at) => value + normals[at]! * standard!);
    const held = keeps(needs, figuresOf(needs, movedTo(world, places, values)));
    for (const [at, one] of held.entries()) if (one) each[at]! += 1;
    if (held.every((one) => one)) all += 1;
  }
  return { each: each.map((count) => count / trials), all: all / trials };
}

/** All limits at once with figures that are straight lines in the doubts. */
function lineOf(
  needs: readonly Need[],
  centre: readonly number[],
  spreads: ReadonlyMap<string, Propagated>,
  doubts: number,
  random: RandomState,
): { readonly byDerivatives?: number } {
  const effects = needs.map(({ key }) => spreads.get(key)?.contributions.map(({ effect }) => effect));
  if (effects.some((one) => one === undefined)) return {};
  const normals = new Float64Array(doubts);
  const figures = new Float64Array(needs.length);
  let state = random;
  let all = 0;
  for (let draw = 0; draw < LINE_DRAWS; draw += 1) {
    if (doubts > 0) state = fillNormals(state, normals);
    for (const [at, own] of effects.entries())
      figures[at] = own!.reduce((sum, effect, each) => sum + effect * normals[each]!, centre[at]!);
    if (keeps(needs, figures).every((one) => one)) all += 1;
  }
  return { byDerivatives: all / LINE_DRAWS };
}

/** Names of the sizes without a stated doubt that move any figure. */
function unstatedOf(needs: readonly Need[], world: World, doubts: readonly Doubt[]): readonly string[] {
  const centre = numbers(needs, world);
  return doubts.flatMap((one) => {
    if (one.standard !== undefined) return [];
    const moved = propagateBy(({ place }: Doubt, to) => numbers(needs, movedTo(world, [place], [to])), centre, [
      { ...one, standard: Math.max(Math.abs(one.value), 1e-3) * 1e-3 },
    ]);
    return [...moved.values()].some(({ standard }) => standard > 0) ? [sizeWords(one.place, world.fixed)] : [];
  });
}
