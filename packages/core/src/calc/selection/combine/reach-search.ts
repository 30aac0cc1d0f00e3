/** Which options of one dimension lead to a combination that keeps everything, with what the others have on offer. */
import { Bounds } from './bounds.js';
import { figureOf, marginOf, SAME } from './evaluate.js';
import { type Layout, layOut } from './layout.js';
import type { CombineProblem } from './model.js';
import { Walk } from './walk.js';

/**
 * Searches for every option of a dimension that belongs to at least one combination which keeps all requirements. The dimension is
 * chosen first, and what lies below an option is left as soon as one combination was found there.
 * Source: branch and bound, own implementation.
 */
export class ReachSearch {
  readonly walk: Walk;
  /** 1 for each option that was found to serve. */
  readonly serves: Uint8Array;
  private readonly problem: CombineProblem;
  private readonly layout: Layout;
  private readonly bounds: Bounds;
  private readonly inOrder: Int32Array;

  constructor(problem: CombineProblem, dimension: number) {
    this.problem = problem;
    this.layout = layOut(problem, dimension);
    this.bounds = new Bounds(this.layout);
    this.serves = new Uint8Array(problem.dimensions[dimension]!.size);
    this.inOrder = new Int32Array(this.layout.order.length);
    this.walk = new Walk(this.layout, (level, option) => this.visit(level, option));
    if (this.bounds.broken[0]! > 0) this.walk.stop();
  }

  private visit(level: number, option: number): boolean {
    if (level > 0 && this.serves[this.bounds.options[0]!] === 1) return false;
    if (!this.bounds.choose(level, option, true)) return false;
    const last = level + 1 === this.layout.order.length;
    if (this.bounds.open[level + 1] === 0 || (last && this.keeps())) {
      this.serves[this.bounds.options[0]!] = 1;
      return false;
    }
    return true;
  }

  private keeps(): boolean {
    for (const [level, dimension] of this.layout.order.entries()) this.inOrder[dimension] = this.bounds.options[level]!;
    return this.problem.requirements.every((one) => marginOf(one, figureOf(this.problem, one, this.inOrder)) >= -SAME);
  }
}
