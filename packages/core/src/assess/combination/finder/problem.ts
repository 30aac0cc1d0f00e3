/** The engine's question as a problem of choices and sums. */
import {
  ALL_MARGINS,
  type CombineGoal,
  type CombineProblem,
  describeCombineFault,
  faultOf,
  keepsAll,
  marginOf,
  type Requirement,
  type Term,
  WORST_MARGIN,
} from '../../../calc/selection/index.js';
import { done, mm, type Outcome, refused } from '../../../quantity/index.js';
import { sizeValue } from './choices.js';
import type { Choice, FinderFault, FinderInput, Option, RankingName } from './model.js';
import type { Need, Scale } from './need.js';
import type { World } from './world.js';

export const RANKINGS: Readonly<Record<RankingName, readonly string[]>> = {
  'least-metal': ['metal', 'unpriced', 'cost', WORST_MARGIN, ALL_MARGINS],
  'least-cost': ['unpriced', 'cost', 'metal', WORST_MARGIN, ALL_MARGINS],
  'most-margin': [WORST_MARGIN, ALL_MARGINS, 'metal', 'unpriced', 'cost'],
};
export const RANKING_NAMES = Object.keys(RANKINGS) as readonly RankingName[];

/** What counts as one share of margin: its own scale, half of a window, or a limit alone by its own size. */
export function scaleOf({ low, high, quantity, scale }: Need): Scale {
  if (scale !== undefined) return scale;
  if (low !== undefined && high !== undefined && high > low)
    return { value: (high - low) / 2, of: 'half of the window' };
  if (quantity === 'ratio') return { value: 1, of: 'one whole' };
  const limit = Math.abs(low ?? high ?? 0);
  return limit > 0 ? { value: limit, of: 'the limit' } : { value: mm(1), of: 'a millimetre' };
}

/** Whether a figure keeps its limits, as the search has it. */
export const keepsLimit = (need: Need, figure: number): boolean =>
  keepsAll({ margins: [marginOf({ ...ends(need), scale: scaleOf(need).value }, figure)] });
const ends = ({ low, high }: Need) => ({ ...(low !== undefined && { low }), ...(high !== undefined && { high }) });

/** The engine with the first option of each choice, some replaced. */
const worldWith = (base: World, changes: readonly (readonly [string, Option])[]): World => ({
  fixed: base.fixed,
  picked: new Map([...base.picked, ...changes]),
});

/** Each kind of a need has one choice, or one for each bank: those of other banks bring nothing and are left out. */
function termOf(
  need: Need,
  base: World,
  at: number,
  group: readonly number[],
  choices: readonly Choice[],
): Term | undefined {
  const table = [];
  const rows = group.reduce<readonly (readonly (readonly [string, Option])[])[]>(
    (sets, place) => {
      const { key, options } = choices[place]!;
      return sets.flatMap((set) => options.map((option) => [...set, [key, option] as const]));
    },
    [[]],
  );
  for (const changes of rows) table.push(need.amount(worldWith(base, changes)) - at);
  return table.every((one) => one === 0) ? undefined : { of: group, table };
}

/** One window for all cylinders or both banks is one thing that is wanted. */
export const groupOf = ({ key, place }: Need): string => (place === undefined ? key : key.split('@')[0]!);

function requirementOf(need: Need, base: World, choices: readonly Choice[]): Requirement {
  const { key, shown } = need;
  const at = need.amount(base);
  const placesOf = (kinds: readonly string[]) =>
    choices.flatMap(({ kind }, place) => (kinds.includes(kind) ? [place] : []));
  // A list of several kinds acts together; the choices of one kind, one for each bank, add up.
  const groups = need.by.flatMap((kinds) =>
    kinds.length > 1 ? [placesOf(kinds)] : placesOf(kinds).map((one) => [one]),
  );
  return {
    name: key,
    group: groupOf(need),
    base: at,
    terms: groups.flatMap((group) => (group.length === 0 ? [] : (termOf(need, base, at, group, choices) ?? []))),
    ...(shown && { shown: { of: (sum) => shown.of(sum, base), falling: shown.falling } }),
    ...ends(need),
    scale: scaleOf(need).value,
  };
}

const NANOMETRE = 1e-9;
const THOUSANDTHS = 1000;
const CUTS = new Set(['deck-cut', 'head-cut']);

const metalOf = ({ kind, faces }: Choice, { sizes }: Option): number =>
  CUTS.has(kind) ? Math.round((sizeValue(sizes.value ?? 0) * faces) / NANOMETRE) : 0;

const goalsOf = (choices: readonly Choice[]): readonly CombineGoal[] => {
  const goal = (name: string, value: (choice: Choice, option: Option) => number): CombineGoal => ({
    name,
    values: choices.map((choice) => choice.options.map((option) => value(choice, option))),
  });
  return [
    goal('metal', metalOf),
    goal('unpriced', (_, { price, asIs }) => (price === undefined && asIs !== true ? 1 : 0)),
    goal('cost', (_, { price }) => Math.round((price ?? 0) * THOUSANDTHS)),
  ];
};
export const METRES_OF_METAL = NANOMETRE;
export const WHOLE_PRICES = THOUSANDTHS;

/**
 * Problem whose combinations are those of the choices. A requirement's tables are differences of its own amount, computed by calc
 * with one choice changed at a time (or those together that act together), so that there is no second formula.
 */
export function problemOf(
  input: FinderInput,
  needs: readonly Need[],
  choices: readonly Choice[],
): Outcome<CombineProblem, FinderFault> {
  const base: World = {
    fixed: input.fixed,
    picked: new Map(choices.map(({ key, options }) => [key, options[0]!])),
  };
  const problem: CombineProblem = {
    dimensions: choices.map(({ title, options }) => ({ name: title, size: options.length })),
    requirements: needs.map((need) => requirementOf(need, base, choices)),
    goals: goalsOf(choices),
    rankings: RANKING_NAMES.map((name) => ({ name, by: RANKINGS[name] })),
    keep: input.keep,
  };
  const fault = faultOf(problem);
  return fault ? refused({ code: 'unsearchable', text: describeCombineFault(fault) }) : done(problem);
}

/** Needs that are alike to the last digit, once: cylinders of one bank with the same sizes. Their places are put together. */
export function distinct(
  needs: readonly Need[],
  problem: CombineProblem,
): { readonly needs: readonly Need[]; readonly problem: CombineProblem } {
  const groups = new Map<string, number[]>();
  for (const [at, { key, place }] of needs.entries()) {
    const { base, terms, low, high, shown } = problem.requirements[at]!;
    const tables = terms.map(({ of, table }) => [of, Array.from(table)]);
    const id = JSON.stringify([place?.title ?? key, base, tables, low, high, shown?.of(base)]);
    groups.set(id, [...(groups.get(id) ?? []), at]);
  }
  const kept = [...groups.values()];
  return {
    needs: kept.map((places) => mergedNeed(places.map((at) => needs[at]!))),
    problem: { ...problem, requirements: kept.map(([first]) => problem.requirements[first!]!) },
  };
}

function mergedNeed(alike: readonly Need[]): Need {
  const first = alike[0]!;
  if (alike.length === 1 || first.place === undefined) return first;
  const { title, word } = first.place;
  return { ...first, name: `${title}, ${word}s ${alike.map(({ place }) => place!.of).join(', ')}` };
}
