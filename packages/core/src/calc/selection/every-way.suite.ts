/** For tests: every way there is, one after the other, so that an optimum can be told from the whole list. */

/** Every way to give `rows` rows different columns out of `columns`. */
export function* everyAssignment(
  rows: number,
  columns: number,
  taken: readonly number[] = [],
): Generator<readonly number[]> {
  if (taken.length === rows) {
    yield taken;
    return;
  }
  for (let column = 0; column < columns; column += 1) {
    if (!taken.includes(column)) yield* everyAssignment(rows, columns, [...taken, column]);
  }
}

/** Every way to take one out of each of several lists, by their places. */
export function* everyChoice(lengths: readonly number[], taken: readonly number[] = []): Generator<readonly number[]> {
  const length = lengths[taken.length];
  if (length === undefined) {
    yield taken;
    return;
  }
  for (let one = 0; one < length; one += 1) yield* everyChoice(lengths, [...taken, one]);
}

export const sum = (values: readonly number[]): number => values.reduce((total, one) => total + one, 0);
