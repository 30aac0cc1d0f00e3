/** One value for all places, or one a place; undefined for a list of another length. */
export function spread<T>(values: readonly T[], count: number): readonly T[] | undefined {
  if (values.length === count) return values;
  return values.length === 1 ? Array.from({ length: count }, () => values[0]!) : undefined;
}

/** Places of a list as people count, from 1. */
export const fromOne = (places: readonly number[]): readonly number[] => places.map((place) => place + 1);
