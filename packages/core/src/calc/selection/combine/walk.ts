/** Goes through all combinations level by level, as far as a budget of steps allows, and goes on from there. */
import type { Layout } from './layout.js';

/** Chooses an option at a level and answers whether what lies below must be looked at. */
export type Visit = (level: number, option: number) => boolean;

export class Walk {
  private readonly layout: Layout;
  private readonly visit: Visit;
  private level = 0;
  private readonly next: Int32Array;
  private ended = false;

  constructor(layout: Layout, visit: Visit) {
    this.layout = layout;
    this.visit = visit;
    this.next = new Int32Array(layout.sizes.length);
  }

  /** Share of the combinations that are dealt with, 0 to 1. */
  get progress(): number {
    if (this.ended) return 1;
    let share = 0;
    let whole = 1;
    for (let at = 0; at <= this.level; at += 1) {
      const size = this.layout.sizes[at]!;
      const dealtWith = at === this.level ? this.next[at]! : this.next[at]! - 1;
      share += (whole * dealtWith) / size;
      whole /= size;
    }
    return share;
  }

  /** Takes up to `budget` steps and answers how many are left of it; more than 0: the walk has ended. */
  go(budget: number): number {
    const { sizes } = this.layout;
    let left = budget;
    while (!this.ended && left > 0) {
      const level = this.level;
      const option = this.next[level]!;
      if (option === sizes[level]) {
        if (level === 0) this.ended = true;
        this.level -= 1;
        continue;
      }
      this.next[level] = option + 1;
      left -= 1;
      if (this.visit(level, option) && level + 1 < sizes.length) {
        this.level = level + 1;
        this.next[this.level] = 0;
      }
    }
    return left;
  }

  /** Ends the walk before everything is looked at. */
  stop(): void {
    this.ended = true;
  }

  get done(): boolean {
    return this.ended;
  }
}
