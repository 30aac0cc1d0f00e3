/** Ends between which every figure lies when the options of some levels are chosen, and what follows for the margins. */
import { groupsOf, HOPELESS, SAME } from './evaluate.js';
import type { Layout } from './layout.js';

/**
 * The state of a search by level. Entry 0 of `worst`, `all`, `open`, `broken` and `missing` is for nothing chosen; entry
 * level + 1 for the levels up to this one. Ends are widened by what rounding can do, so that nothing is left out wrongly.
 */
export class Bounds {
  readonly options: Int32Array;
  /** The smallest margin that counts can be no better. */
  readonly worst: Float64Array;
  /** The sum of the margins that count can be no better. */
  readonly all: Float64Array;
  /** Requirements that some of what is left may break. */
  readonly open: Int32Array;
  /** Groups that all of what is left breaks, the shares by which it does at least, and one of them; kept where not strict. */
  readonly broken: Int32Array;
  readonly missing: Float64Array;
  readonly which: Int32Array;
  /** Least share by which each group is broken, by level + 1 and group. */
  private readonly shares: Float64Array;
  private readonly groupOf: readonly number[];
  private readonly groups: number;
  private readonly layout: Layout;
  private readonly low: Float64Array;
  private readonly high: Float64Array;
  /** Best margin that can still be reached, by slot; whether the worst still keeps. */
  private readonly best: Float64Array;
  private readonly sure: Uint8Array;

  constructor(layout: Layout) {
    this.layout = layout;
    const levels = layout.order.length;
    const slots = layout.slots.length;
    this.options = new Int32Array(levels);
    this.worst = new Float64Array(levels + 1);
    this.all = new Float64Array(levels + 1);
    this.open = new Int32Array(levels + 1);
    this.broken = new Int32Array(levels + 1);
    this.missing = new Float64Array(levels + 1);
    this.which = new Int32Array(levels + 1);
    this.groupOf = groupsOf(layout.problem);
    this.groups = Math.max(0, ...this.groupOf.map((one) => one + 1));
    this.shares = new Float64Array((levels + 1) * this.groups);
    this.low = new Float64Array(slots);
    this.high = new Float64Array(slots);
    this.best = new Float64Array(slots);
    this.sure = new Uint8Array(slots);
    this.root();
  }

  private root(): void {
    const { rootLow, rootHigh, moves } = this.layout;
    this.worst[0] = 1;
    for (let at = 0; at < rootLow.length; at += 1) {
      this.low[at] = rootLow[at]!;
      this.high[at] = rootHigh[at]!;
      this.judge(at, at);
      const best = this.best[at]!;
      if (moves[at]) {
        this.worst[0] = Math.min(this.worst[0]!, best);
        this.all[0]! += Math.min(1, best);
      }
      if (!this.sure[at]) this.open[0]! += 1;
      if (best < -SAME) this.breakGroup(0, at, best);
    }
    this.addUp(0);
  }

  private breakGroup(row: number, requirement: number, best: number): void {
    const at = row * this.groups + this.groupOf[requirement]!;
    if (-best > this.shares[at]!) this.shares[at] = -best;
  }

  /** Groups of a row that are broken, and by how much together. */
  private addUp(row: number): void {
    let [broken, missing, which] = [0, 0, 0];
    for (let group = 0; group < this.groups; group += 1) {
      const share = this.shares[row * this.groups + group]!;
      if (share === 0) continue;
      broken += 1;
      missing += share;
      which = group;
    }
    this.broken[row] = broken;
    this.missing[row] = missing;
    this.which[row] = which;
  }

  /** Best margin and sureness of a slot whose ends are known. */
  private judge(slot: number, requirement: number): void {
    const { shown, low, high, scale } = this.layout.problem.requirements[requirement]!;
    const rounding = this.layout.rounding[requirement]!;
    let least = this.low[slot]! - rounding;
    let most = this.high[slot]! + rounding;
    if (shown !== undefined) {
      const [a, b] = [shown.of(least), shown.of(most)];
      least = shown.falling ? b : a;
      most = shown.falling ? a : b;
    }
    let best = Number.POSITIVE_INFINITY;
    let sure = Number.isFinite(least) && Number.isFinite(most);
    if (low !== undefined) {
      best = (most - low) / scale;
      sure &&= least >= low;
    }
    if (high !== undefined) {
      best = Math.min(best, (high - least) / scale);
      sure &&= most <= high;
    }
    if (low !== undefined && high !== undefined) best = Math.min(best, (high - low) / 2 / scale + SAME);
    this.best[slot] = Math.max(best, HOPELESS);
    this.sure[slot] = sure ? 1 : 0;
  }

  /** Chooses an option at a level. With `strict`, stops and answers false as soon as a requirement is broken for sure. */
  choose(level: number, option: number, strict: boolean): boolean {
    const { slots, firstSlot, moves } = this.layout;
    this.options[level] = option;
    let worst = this.worst[level]!;
    let all = this.all[level]!;
    let open = this.open[level]!;
    const row = level + 1;
    if (!strict) this.shares.copyWithin(row * this.groups, level * this.groups, row * this.groups);
    const end = firstSlot[level + 1]!;
    for (let slot = firstSlot[level]!; slot < end; slot += 1) {
      const { requirement, before } = slots[slot]!;
      this.narrow(slot, before);
      this.judge(slot, requirement);
      const best = this.best[slot]!;
      const was = this.best[before]!;
      if (best < -SAME) {
        if (strict) return false;
        this.breakGroup(row, requirement, best);
      }
      if (moves[requirement]) {
        if (best < worst) worst = best;
        all += Math.min(1, best) - Math.min(1, was);
      }
      if (this.sure[slot] && !this.sure[before]) open -= 1;
    }
    this.worst[row] = worst;
    this.all[row] = all;
    this.open[row] = open;
    if (!strict) this.addUp(row);
    return true;
  }

  private narrow(slot: number, before: number): void {
    let low = this.low[before]!;
    let high = this.high[before]!;
    const { narrowings } = this.layout.slots[slot]!;
    for (let each = 0; each < narrowings.length; each += 1) {
      const one = narrowings[each]!;
      let at = 0;
      for (let place = 0; place < one.levels.length; place += 1)
        at += this.options[one.levels[place]!]! * one.strides[place]!;
      low += one.low[at]!;
      high += one.high[at]!;
    }
    this.low[slot] = low;
    this.high[slot] = high;
  }
}
