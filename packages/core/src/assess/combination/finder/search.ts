/** The search for a combination, begun, carried on a few steps at a time, and asked at any time for what it has found. */
import {
  type CombineProblem,
  groupsOf,
  LoosenSearch,
  RankSearch,
  ReachSearch,
  rawCount,
} from '../../../calc/selection/index.js';
import { degrees, done, type Outcome, refused } from '../../../quantity/index.js';
import { additionsOf, type Candidates, candidatesOf } from './candidates.js';
import { choicesOf } from './choices.js';
import { foundCombination, foundRelaxation, type Posed } from './found.js';
import { inputFault } from './input-faults.js';
import { lobeCurve } from './lobe-motion.js';
import type { FinderAnswer, FinderFault, FinderInput, FoundAddition, RankingName } from './model.js';
import type { Need } from './need.js';
import { missingOf, needsOf } from './needs.js';
import { distinct, groupOf, problemOf, RANKING_NAMES } from './problem.js';
import { roomByMotion } from './room-need.js';
import { words } from './words.js';

/** A search under way. Changed by `advance` only. */
export interface FinderSearch {
  readonly posed: Posed;
  readonly rank: RankSearch;
  loosen: LoosenSearch | undefined;
  /** What could be added, still to be looked at; the one that is looked at now. */
  readonly waiting: Candidates[];
  reach: { readonly candidates: Candidates; readonly search: ReachSearch } | undefined;
  readonly additions: FoundAddition[];
  readonly tried: number;
  phase: FinderPhase;
}
export type FinderPhase = 'combinations' | 'loosening' | 'additions' | 'done';
export interface FinderProgress {
  readonly phase: FinderPhase;
  /** Share of this phase that is dealt with, 0 to 1. */
  readonly share: number;
  readonly feasible: number;
  readonly done: boolean;
}

/** Checks an input and lays its problem out; refuses what cannot be searched, by name. */
export function poseProblem(input: FinderInput): Outcome<Posed, FinderFault> {
  const fault = inputFault(input);
  if (fault) return refused(fault);
  const choices = choicesOf(input);
  if (!choices.ok) return choices;
  const all = needsOf(input);
  const missing = missingOf(all);
  if (missing.length > 0 && input.lacking !== 'leave-out') return refused({ code: 'missing', missing });
  const needs = all.filter((one) => one.missing.length === 0);
  const motion = motionFault(input, needs);
  if (motion) return refused(motion);
  const problem = problemOf(input, needs, choices.value);
  if (!problem.ok) return problem;
  return done({ input, choices: choices.value, missing, ...distinct(needs, problem.value) });
}

/** Motion that cannot be computed: a lobe that is none, a crank that cannot turn. */
function motionFault({ fixed }: FinderInput, needs: readonly Need[]): FinderFault | undefined {
  for (const side of ['intake', 'exhaust'] as const) {
    if (!needs.some(({ key }) => key.startsWith(`${side}-room@`))) continue;
    const lobe = fixed[side]?.lobe;
    if (lobe === undefined || lobeCurve(lobe, side) === undefined) return { code: 'lobe-unusable', valve: side };
    if (Number.isNaN(roomByMotion(fixed, side, degrees(0), 1))) return { code: 'crank-cannot-turn' };
  }
  return undefined;
}

/**
 * Begins a search: nothing is looked at yet. The same input gives the same answer, however the steps are divided.
 *
 * Every combination of the choices is dealt with, one by one or as part of a set that is proven to break or keep all; what is counted
 * and ranked is what a complete enumeration would bring. Where nothing fits, the search goes on to what could be loosened and
 * what could be added. Source: `RankSearch`, `LoosenSearch`, `ReachSearch`.
 */
export function beginSearch(input: FinderInput): Outcome<FinderSearch, FinderFault> {
  const posed = poseProblem(input);
  if (!posed.ok) return posed;
  const waiting = candidatesOf(posed.value.choices);
  return done({
    posed: posed.value,
    rank: new RankSearch(posed.value.problem),
    loosen: undefined,
    waiting: [...waiting],
    reach: undefined,
    additions: [],
    tried: waiting.length,
    phase: 'combinations',
  });
}

/** Carries a search on by up to `budget` steps (an option looked at is a step; some 10⁵ take a few hundredths of a second). */
export function advance(search: FinderSearch, budget: number): FinderProgress {
  let left = budget;
  while (left > 0 && search.phase !== 'done') left = step(search, left);
  return progressOf(search);
}

function step(search: FinderSearch, budget: number): number {
  switch (search.phase) {
    case 'combinations': {
      const left = search.rank.walk.go(budget);
      if (!search.rank.walk.done) return left;
      if (search.rank.count > 0) search.phase = 'done';
      else {
        search.loosen = new LoosenSearch(search.posed.problem);
        search.phase = 'loosening';
      }
      return left;
    }
    case 'loosening': {
      const left = search.loosen!.walk.go(budget);
      if (search.loosen!.walk.done) search.phase = 'additions';
      return left;
    }
    case 'additions':
      return addStep(search, budget);
    case 'done':
      return 0;
  }
}

function addStep(search: FinderSearch, budget: number): number {
  if (search.reach === undefined) {
    const candidates = search.waiting.shift();
    if (candidates === undefined) {
      search.phase = 'done';
      return budget;
    }
    const problem = extended(search.posed, candidates);
    if (problem === undefined) return budget;
    search.reach = { candidates, search: new ReachSearch(problem, candidates.choice) };
  }
  const { candidates, search: reach } = search.reach;
  const left = reach.walk.go(budget);
  if (reach.walk.done) {
    search.additions.push(...additionsOf(candidates, search.posed.choices, reach.serves));
    search.reach = undefined;
  }
  return left;
}

/** The problem with the options of one choice replaced by what could be added to it. */
function extended({ input, needs, choices }: Posed, { choice, options }: Candidates): CombineProblem | undefined {
  const replaced = choices.map((one, at) => (at === choice ? { ...one, options } : one));
  const problem = problemOf(input, needs, replaced);
  return problem.ok ? problem.value : undefined;
}

/** How far a search has come. */
export function progressOf(search: FinderSearch): FinderProgress {
  return { phase: search.phase, share: shareOf(search), feasible: search.rank.count, done: search.phase === 'done' };
}
function shareOf({ phase, rank, loosen, reach, waiting, tried }: FinderSearch): number {
  switch (phase) {
    case 'combinations':
      return rank.walk.progress;
    case 'loosening':
      return loosen?.walk.progress ?? 0;
    case 'additions': {
      const finished = tried - waiting.length - (reach ? 1 : 0);
      return tried === 0 ? 1 : (finished + (reach?.search.walk.progress ?? 0)) / tried;
    }
    case 'done':
      return 1;
  }
}

/** What a search has found so far; final once it is done. */
export function answerOf(search: FinderSearch): FinderAnswer {
  const { posed, rank, loosen, additions } = search;
  const listOf = (name: RankingName) =>
    rank.best[RANKING_NAMES.indexOf(name)]!.map((one) => foundCombination(posed, one));
  const together = loosen?.together && foundRelaxation(posed, loosen.together);
  const answer = {
    raw: rawCount(posed.problem),
    feasible: rank.count,
    best: {
      'least-metal': listOf('least-metal'),
      'least-cost': listOf('least-cost'),
      'most-margin': listOf('most-margin'),
    },
    ...(together && { together }),
    alone: loosen === undefined ? [] : aloneOf(posed, loosen),
    additions,
    missing: posed.missing,
  };
  return { ...answer, words: words(answer, search.phase === 'done') };
}

/** Each thing that is wanted, by itself. */
function aloneOf(posed: Posed, loosen: LoosenSearch): FinderAnswer['alone'] {
  const groups = groupsOf(posed.problem);
  return loosen.alone.map((one, group) => {
    const need = posed.needs[groups.indexOf(group)]!;
    return one
      ? foundRelaxation(posed, one)
      : ({ key: groupOf(need), name: need.place?.title ?? need.name, helps: false } as const);
  });
}
