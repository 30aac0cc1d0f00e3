/** The best few of a ranking while the search goes on. */

import type { Bounds } from './bounds.js';
import { canMove, wholeMillionths } from './evaluate.js';
import type { Layout } from './layout.js';
import { ALL_MARGINS, type Combined, type CombineProblem, type Ranking, WORST_MARGIN } from './model.js';

/** Running sums of margins may be off by rounding; this much more never leaves out a combination that ties. */
const SLACK = 1e-10;

type Key = { readonly kind: 'worst' } | { readonly kind: 'all' } | { readonly kind: 'goal'; readonly at: number };

/** Goals of what is chosen so far, and the least that the levels below can add. */
export interface GoalSums {
  /** By level + 1, then goal. */
  readonly so: readonly Float64Array[];
  readonly rest: readonly Float64Array[];
}

interface Entry {
  readonly keys: readonly number[];
  readonly combined: Combined;
}

export class BestList {
  private readonly entries: Entry[] = [];
  private readonly problem: CombineProblem;
  private readonly keys: readonly Key[];
  private readonly moves: readonly boolean[];

  constructor(problem: CombineProblem, ranking: Ranking) {
    this.problem = problem;
    this.keys = ranking.by.map((name) => {
      if (name === WORST_MARGIN) return { kind: 'worst' };
      if (name === ALL_MARGINS) return { kind: 'all' };
      return { kind: 'goal', at: problem.goals.findIndex((goal) => goal.name === name) };
    });
    this.moves = problem.requirements.map(canMove);
  }

  get combinations(): readonly Combined[] {
    return this.entries.map(({ combined }) => combined);
  }

  /** Whether anything below a level could still enter; `index` is the least index below it. */
  mayEnter(bounds: Bounds, goals: GoalSums, level: number, index: number): boolean {
    if (this.entries.length < this.problem.keep) return true;
    const last = this.entries.at(-1)!;
    for (let each = 0; each < this.keys.length; each += 1) {
      const bound = this.boundOf(this.keys[each]!, bounds, goals, level);
      const held = last.keys[each]!;
      if (bound !== held) return bound < held;
    }
    return index < last.combined.index;
  }

  private boundOf(key: Key, bounds: Bounds, { so, rest }: GoalSums, level: number): number {
    switch (key.kind) {
      case 'worst':
        return -wholeMillionths(bounds.worst[level + 1]!);
      case 'all':
        return -wholeMillionths(bounds.all[level + 1]! + SLACK);
      case 'goal':
        return so[level + 1]![key.at]! + rest[level + 1]![key.at]!;
    }
  }

  /** Puts a combination in its place; one that is worse than all that are kept falls out. */
  offer(combined: Combined): void {
    const keys = this.keys.map((key) => this.keyOf(key, combined));
    const entry = { keys, combined };
    let at = this.entries.length;
    while (at > 0 && before(entry, this.entries[at - 1]!)) at -= 1;
    this.entries.splice(at, 0, entry);
    if (this.entries.length > this.problem.keep) this.entries.pop();
  }

  private keyOf(key: Key, { worst, margins, goals }: Combined): number {
    switch (key.kind) {
      case 'worst':
        return -wholeMillionths(worst);
      case 'all':
        return -wholeMillionths(margins.reduce((sum, one, at) => (this.moves[at] ? sum + Math.min(1, one) : sum), 0));
      case 'goal':
        return goals[key.at]!;
    }
  }
}

function before(one: Entry, other: Entry): boolean {
  for (let each = 0; each < one.keys.length; each += 1)
    if (one.keys[each] !== other.keys[each]) return one.keys[each]! < other.keys[each]!;
  return one.combined.index < other.combined.index;
}

/** Sums of goals for a layout: nothing chosen yet, and the least that all levels from one on bring. */
export function goalSums({ problem, order }: Layout): GoalSums {
  const rows = () => Array.from({ length: order.length + 1 }, () => new Float64Array(problem.goals.length));
  const sums = { so: rows(), rest: rows() };
  for (let level = order.length - 1; level >= 0; level -= 1)
    for (const [at, { values }] of problem.goals.entries())
      sums.rest[level]![at] = sums.rest[level + 1]![at]! + Math.min(...values[order[level]!]!);
  return sums;
}
