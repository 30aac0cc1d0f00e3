/** `{ [name]: value }`, or nothing where the value is unknown: unknown keys are absent. */
export function given<N extends string, V>(name: N, value: V | undefined): { readonly [key in N]?: V } {
  return value === undefined ? {} : ({ [name]: value } as { readonly [key in N]?: V });
}
