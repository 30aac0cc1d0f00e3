/** Each value that occurs more than once, once. */
export function repeated<T>(values: readonly T[]): readonly T[] {
  return [...new Set(values.filter((value, index) => values.indexOf(value) !== index))];
}
