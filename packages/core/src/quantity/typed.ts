/** A value that a person typed or a manual printed: the text untouched, and what it means. */
export interface Typed<Q = number> {
  readonly text: string;
  /** In the SI unit of the kind. */
  readonly value: Q;
  /** The unit's own spelling, whichever spelling was typed. */
  readonly unit: string;
  /** Decimal places as typed, in `unit`: the resolution. A fraction has the fewest that print it exactly, at most six. */
  readonly places: number;
  /** Half width of a symmetric tolerance `a ±b`, in the SI unit. */
  readonly plusMinus?: number;
}

/** A window; either end may be open, both ends count as inside. */
export interface TypedWindow<Q = number> {
  readonly text: string;
  readonly low?: Q;
  readonly high?: Q;
  readonly unit: string;
  readonly places: number;
}

export interface ReadOptions {
  /**
   * The decimal mark that the project has fixed; the point when not given. The other mark is read where it can only be a
   * decimal mark (`1,5`), and asked about where it could group thousands (`1,250`).
   */
  readonly decimalMark?: '.' | ',';
}
