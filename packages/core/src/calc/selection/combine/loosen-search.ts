/** What must give way where no combination keeps everything: the least set of requirements, and each one alone. */
import { Bounds } from './bounds.js';
import { combinedOf, groupsOf, HOPELESS, SAME, wholeMillionths } from './evaluate.js';
import { type Layout, layOut } from './layout.js';
import type { Combined, CombineProblem, Loosening, Relaxation } from './model.js';
import { Walk } from './walk.js';

const SLACK = 1e-10;

interface Found {
  readonly broken: number;
  /** Sum of the shares in millionths. */
  readonly share: number;
  readonly combined: Combined;
}

/**
 * Searches all combinations for the least that must be loosened, to be asked only where none keeps everything.
 *
 * Best is what breaks the fewest groups of requirements, of those by the least sum of shares (in millionths; of a group its largest
 * share), of those the one of least index; and for each group the combination that breaks it alone, by the least share. A set of options is
 * given up when neither could become better below it. Source: branch and bound, own implementation.
 */
export class LoosenSearch {
  readonly walk: Walk;
  private readonly problem: CombineProblem;
  private readonly layout: Layout;
  private readonly bounds: Bounds;
  private least: Found | undefined;
  private readonly single: (Found | undefined)[];
  private readonly groupOf: readonly number[];
  /** Least index below what is chosen, by level + 1. */
  private readonly index: Float64Array;
  private readonly inOrder: Int32Array;

  constructor(problem: CombineProblem) {
    this.problem = problem;
    this.layout = layOut(problem);
    this.bounds = new Bounds(this.layout);
    this.groupOf = groupsOf(problem);
    this.single = Array.from({ length: 1 + Math.max(-1, ...this.groupOf) }, () => undefined);
    this.index = new Float64Array(this.layout.order.length + 1);
    this.inOrder = new Int32Array(this.layout.order.length);
    this.walk = new Walk(this.layout, (level, option) => this.visit(level, option));
  }

  /** The fewest groups of requirements that must give way together; undefined while none was found that could. */
  get together(): Relaxation | undefined {
    return this.least === undefined ? undefined : relaxationOf(this.problem, this.least.combined);
  }

  /** For each group, in the order of `groupsOf`, what it must give when all others are kept; undefined: no loosening of it alone helps. */
  get alone(): readonly (Relaxation | undefined)[] {
    return this.single.map((found) => found && relaxationOf(this.problem, found.combined));
  }

  private visit(level: number, option: number): boolean {
    this.bounds.choose(level, option, false);
    const index = this.index[level]! + option * this.layout.strides[level]!;
    this.index[level + 1] = index;
    const broken = this.bounds.broken[level + 1]!;
    const share = wholeMillionths(this.bounds.missing[level + 1]! - SLACK);
    if (!this.mayGain(broken, share, index, this.bounds.which[level + 1]!)) return false;
    if (level + 1 < this.layout.order.length) return true;
    this.take();
    return true;
  }

  private mayGain(broken: number, share: number, index: number, which: number): boolean {
    if (better(broken, share, index, this.least)) return true;
    if (broken > 1) return false;
    return broken === 0 || better(1, share, index, this.single[which]);
  }

  private take(): void {
    for (const [level, dimension] of this.layout.order.entries()) this.inOrder[dimension] = this.bounds.options[level]!;
    const combined = combinedOf(this.problem, this.inOrder);
    if (combined.margins.some((margin) => margin <= HOPELESS)) return;
    const shares = groupShares(combined, this.groupOf, this.single.length);
    const broken = shares.filter((one) => one > 0).length;
    const share = wholeMillionths(shares.reduce((sum, one) => sum + one, 0));
    const found = { broken, share, combined };
    if (better(broken, share, combined.index, this.least)) this.least = found;
    const which = shares.findIndex((one) => one > 0);
    if (broken === 1 && better(1, share, combined.index, this.single[which])) this.single[which] = found;
  }
}

/** Largest share by which each group is broken; 0: it is kept. */
function groupShares({ margins }: Combined, groupOf: readonly number[], groups: number): readonly number[] {
  const shares = Array.from({ length: groups }, () => 0);
  for (const [at, margin] of margins.entries())
    if (margin < -SAME) shares[groupOf[at]!] = Math.max(shares[groupOf[at]!]!, -margin);
  return shares;
}

function better(broken: number, share: number, index: number, held: Found | undefined): boolean {
  if (held === undefined) return true;
  if (broken !== held.broken) return broken < held.broken;
  if (share !== held.share) return share < held.share;
  return index < held.combined.index;
}

function relaxationOf(problem: CombineProblem, combined: Combined): Relaxation {
  const groupOf = groupsOf(problem);
  const worst = new Map<string, Loosening>();
  for (const [requirement, margin] of combined.margins.entries()) {
    if (margin >= -SAME) continue;
    const { low } = problem.requirements[requirement]!;
    const to = combined.figures[requirement]!;
    const end = low !== undefined && to < low ? 'low' : 'high';
    const key = `${groupOf[requirement]} ${end}`;
    if ((worst.get(key)?.share ?? 0) < -margin) worst.set(key, { requirement, end, to, share: -margin });
  }
  const shares = groupShares(combined, groupOf, 1 + Math.max(-1, ...groupOf));
  return { loosened: [...worst.values()], share: shares.reduce((sum, one) => sum + one, 0), combined };
}
