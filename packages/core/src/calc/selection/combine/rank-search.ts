/** Counts every combination that keeps all requirements and keeps the best of each ranking. */
import { BestList, type GoalSums, goalSums } from './best-list.js';
import { Bounds } from './bounds.js';
import { combinedOf, figureOf, marginOf, SAME } from './evaluate.js';
import { type Layout, layOut } from './layout.js';
import type { Combined, CombineProblem } from './model.js';
import { Walk } from './walk.js';

/**
 * The search through all combinations of a problem without fault.
 *
 * A set of options chosen so far is given up when a requirement is broken whatever comes after; it is counted as a whole when all
 * are kept whatever comes after, and then only looked into where it could still enter a ranking. So count and lists are those of
 * a complete enumeration. Source: branch and bound on sums with interval bounds, textbook method, own implementation.
 */
export class RankSearch {
  /** Combinations found so far that keep everything. */
  count = 0;
  readonly walk: Walk;
  private readonly problem: CombineProblem;
  private readonly layout: Layout;
  private readonly bounds: Bounds;
  private readonly goals: GoalSums;
  private readonly lists: readonly BestList[];
  /** Whether what lies below a level has been counted as a whole; index of the options chosen so far. Both by level + 1. */
  private readonly counted: Uint8Array;
  private readonly index: Float64Array;
  private readonly inOrder: Int32Array;

  constructor(problem: CombineProblem) {
    this.problem = problem;
    this.layout = layOut(problem);
    this.bounds = new Bounds(this.layout);
    this.goals = goalSums(this.layout);
    this.lists = problem.rankings.map((ranking) => new BestList(problem, ranking));
    const levels = this.layout.order.length;
    this.counted = new Uint8Array(levels + 1);
    this.index = new Float64Array(levels + 1);
    this.inOrder = new Int32Array(levels);
    this.walk = new Walk(this.layout, (level, option) => this.visit(level, option));
    if (this.bounds.broken[0]! > 0) this.walk.stop();
  }

  /** Best combinations of each ranking so far, best first. */
  get best(): readonly (readonly Combined[])[] {
    return this.lists.map((list) => list.combinations);
  }

  private visit(level: number, option: number): boolean {
    const { layout, bounds } = this;
    if (!bounds.choose(level, option, true)) return false;
    const last = level + 1 === layout.order.length;
    const sure = bounds.open[level + 1] === 0;
    if (last && !sure && !this.keeps()) return false;
    let counted = this.counted[level]!;
    if (counted === 0 && (sure || last)) {
      this.count += layout.below[level]!;
      counted = 1;
    }
    this.counted[level + 1] = counted;
    const index = this.index[level]! + option * layout.strides[level]!;
    this.index[level + 1] = index;
    this.addGoals(level, option);
    const enters = this.lists.some((list) => list.mayEnter(bounds, this.goals, level, index));
    if (last && enters) this.offer(index);
    return counted === 0 || enters;
  }

  private addGoals(level: number, option: number): void {
    const dimension = this.layout.order[level]!;
    const [from, to] = [this.goals.so[level]!, this.goals.so[level + 1]!];
    for (let at = 0; at < to.length; at += 1) to[at] = from[at]! + this.problem.goals[at]!.values[dimension]![option]!;
  }

  /** Whether the options of all levels keep every requirement, to the last digit. */
  private keeps(): boolean {
    const options = this.chosen();
    return this.problem.requirements.every((one) => marginOf(one, figureOf(this.problem, one, options)) >= -SAME);
  }

  private chosen(): Int32Array {
    for (const [level, dimension] of this.layout.order.entries()) this.inOrder[dimension] = this.bounds.options[level]!;
    return this.inOrder;
  }

  private offer(index: number): void {
    const combined = combinedOf(this.problem, this.chosen());
    for (const list of this.lists)
      if (list.mayEnter(this.bounds, this.goals, this.layout.order.length - 1, index)) list.offer(combined);
  }
}
