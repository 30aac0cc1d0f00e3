/** Columns that each row may take. */
export type Allowed = readonly (readonly number[])[];

/** Rows that together may take fewer columns than they are: no assignment can serve them all (P. Hall, 1935). */
export interface HallSet {
  readonly rows: readonly number[];
  readonly columns: readonly number[];
}
export interface Matching {
  /** Column of each row, -1 for a row without one. */
  readonly columnOf: readonly number[];
  readonly size: number;
  /** Why no larger matching exists; absent when every row has a column. */
  readonly short?: HallSet;
}

interface State {
  readonly allowed: Allowed;
  readonly columnOf: number[];
  readonly rowOf: number[];
}

/** Distance of each row from the rows without a column, along changes of place; undefined where none leads there. */
function layersOf({ allowed, columnOf, rowOf }: State): (number | undefined)[] {
  const layer: (number | undefined)[] = columnOf.map((column) => (column < 0 ? 0 : undefined));
  const queue = [...columnOf.keys()].filter((row) => columnOf[row]! < 0);
  for (const row of queue) {
    for (const column of allowed[row]!) {
      const next = rowOf[column]!;
      if (next < 0 || layer[next] !== undefined) continue;
      layer[next] = layer[row]! + 1;
      queue.push(next);
    }
  }
  return layer;
}

/** Gives `row` a column, moving rows of the next layers out of the way. A row that failed is not tried again. */
function serve(state: State, layer: (number | undefined)[], row: number): boolean {
  const next = layer[row]! + 1;
  layer[row] = undefined;
  for (const column of state.allowed[row]!) {
    const holder = state.rowOf[column]!;
    if (holder >= 0 && (layer[holder] !== next || !serve(state, layer, holder))) continue;
    state.columnOf[row] = column;
    state.rowOf[column] = row;
    return true;
  }
  return false;
}

/** Rows that can be reached from one without a column hold every column that any of them may take: one too few. */
function shortOf(state: State): HallSet | undefined {
  const first = state.columnOf.indexOf(-1);
  if (first < 0) return undefined;
  const rows = [first];
  const columns = new Set<number>();
  for (const row of rows) {
    for (const column of state.allowed[row]!) {
      if (columns.has(column)) continue;
      columns.add(column);
      rows.push(state.rowOf[column]!);
    }
  }
  const rising = (a: number, b: number) => a - b;
  return { rows: rows.toSorted(rising), columns: [...columns].toSorted(rising) };
}

/**
 * Gives as many rows as possible a column of their own among those that each may take.
 *
 * `allowed[row]` lists columns from 0 to `columns` - 1. Where some row is left without, `short` names rows that together
 * may take fewer columns than they are, which anyone can check. About √rows passes over the table.
 * Source: J. E. Hopcroft and R. M. Karp, 1973 (from memory); own implementation.
 */
export function largestMatching(allowed: Allowed, columns: number): Matching {
  const state = { allowed, columnOf: allowed.map(() => -1), rowOf: new Array<number>(columns).fill(-1) };
  for (let grown = true; grown; ) {
    const layer = layersOf(state);
    const free = [...state.columnOf.keys()].filter((row) => state.columnOf[row]! < 0);
    grown = free.filter((row) => serve(state, layer, row)).length > 0;
  }
  const short = shortOf(state);
  const size = state.columnOf.filter((column) => column >= 0).length;
  return { columnOf: state.columnOf, size, ...(short && { short }) };
}

/** Checks the reason without trusting the search: those rows may take those columns only, and there are too few. */
export function provesShort(allowed: Allowed, { rows, columns }: HallSet): boolean {
  return columns.length < rows.length && rows.every((row) => allowed[row]!.every((one) => columns.includes(one)));
}
