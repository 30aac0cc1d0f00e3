/** Linear least squares by orthogonal columns. */

export interface LinearFit {
  readonly coefficients: readonly number[];
  /** Measured minus fitted. */
  readonly residuals: readonly number[];
  /** Sum of the squared residuals. */
  readonly sum: number;
  /** (AᵀA)⁻¹: times the variance of one reading it is the covariance of the coefficients. */
  readonly cofactor: readonly (readonly number[])[];
}

/** A column that keeps less than this share of its length beside the others says nothing of its own. */
const DEPENDENT = 1e-10;

/**
 * Coefficients c for which Σ (y − Σ c·column)² is least.
 *
 * `columns` lists of one length, at most as many as there are readings `y`. Solved by modified Gram-Schmidt on the
 * columns and the readings together, which loses no digits to squaring. Undefined when the columns depend on each
 * other or are more than the readings: the readings do not tell the coefficients apart.
 * Source: Å. Björck, Numerical Methods for Least Squares Problems, section 2.4 (from memory).
 */
export function leastSquares(columns: readonly (readonly number[])[], y: readonly number[]): LinearFit | undefined {
  if (columns.length > y.length) return undefined;
  const upper: number[][] = [];
  const orthogonal: number[][] = [];
  for (const column of columns) {
    const { rest, shares } = takeOut(orthogonal, column);
    const length = Math.hypot(...rest);
    if (!(length > DEPENDENT * Math.hypot(...column))) return undefined;
    orthogonal.push(rest.map((one) => one / length));
    upper.push([...shares, length]);
  }
  const { rest, shares } = takeOut(orthogonal, y);
  const inverse = invertUpper(upper);
  const row = (at: number) => inverse.map((column) => column[at] ?? 0);
  return {
    coefficients: columns.map((_, at) => dot(row(at), shares)),
    residuals: rest,
    sum: dot(rest, rest),
    cofactor: columns.map((_, at) => columns.map((__, other) => dot(row(at), row(other)))),
  };
}

const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, one, at) => sum + one * b[at]!, 0);

/** A column without its parts along orthogonal unit columns, and how much lay along each. */
function takeOut(orthogonal: readonly (readonly number[])[], column: readonly number[]) {
  let rest = [...column];
  const shares: number[] = [];
  for (const one of orthogonal) {
    const share = dot(one, rest);
    rest = rest.map((value, at) => value - share * one[at]!);
    shares.push(share);
  }
  return { rest, shares };
}

/** Inverse of an upper triangle given by columns, again by columns. */
function invertUpper(upper: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const inverse: number[][] = [];
  for (const [at, column] of upper.entries()) {
    const own = 1 / column[at]!;
    const above = column.slice(0, at).map((_, row) => {
      const sum = column.slice(0, at).reduce((total, value, k) => total + (inverse[k]![row] ?? 0) * value, 0);
      return -own * sum;
    });
    inverse.push([...above, own]);
  }
  return inverse;
}
