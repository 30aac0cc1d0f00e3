/** Small systems of linear equations. */

/** Below this share of the largest pivot a system is taken as having no single answer. */
const SINGULAR = 1e-12;

/**
 * Solves a square system by elimination with row pivoting; undefined when it has no single answer. For the few unknowns of
 * a line, a plane or a circle. Source: textbook.
 */
export function solve(matrix: readonly (readonly number[])[], right: readonly number[]): readonly number[] | undefined {
  const size = right.length;
  const rows = matrix.map((row, at) => [...row, right[at]!]);
  const scale = Math.max(...matrix.flat().map(Math.abs));
  for (let column = 0; column < size; column += 1) {
    const best = rows.slice(column).reduce((top, row, at) => {
      return Math.abs(row[column]!) > Math.abs(rows[top]![column]!) ? column + at : top;
    }, column);
    const pivot = rows[best]!;
    if (!(Math.abs(pivot[column]!) > SINGULAR * scale)) return undefined;
    rows[best] = rows[column]!;
    rows[column] = pivot;
    for (const row of rows.slice(column + 1)) {
      const factor = row[column]! / pivot[column]!;
      for (let k = column; k <= size; k += 1) row[k] = row[k]! - factor * pivot[k]!;
    }
  }
  return backSubstitute(rows, size);
}

function backSubstitute(rows: readonly (readonly number[])[], size: number): readonly number[] {
  const found = new Array<number>(size).fill(0);
  for (let at = size - 1; at >= 0; at -= 1) {
    const known = found.reduce((sum, one, k) => sum + (k > at ? one * rows[at]![k]! : 0), 0);
    found[at] = (rows[at]![size]! - known) / rows[at]![at]!;
  }
  return found;
}
