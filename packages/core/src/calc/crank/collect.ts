import { done, type Outcome } from '../../quantity/index.js';

type ValueOf<O> = O extends { readonly ok: true; readonly value: infer T } ? T : never;
type FaultOf<O> = O extends { readonly ok: false; readonly fault: infer F } ? F : never;
type Parts = Readonly<Record<string, Outcome<unknown, unknown>>>;

/** Several outcomes as one: all values by name, or the first refusal. */
export function collect<P extends Parts>(
  parts: P,
): Outcome<{ readonly [K in keyof P]: ValueOf<P[K]> }, FaultOf<P[keyof P]>> {
  const values: Record<string, unknown> = {};
  for (const [name, part] of Object.entries(parts)) {
    if (!part.ok) return part as Outcome<never, FaultOf<P[keyof P]>>;
    values[name] = part.value;
  }
  return done(values as { readonly [K in keyof P]: ValueOf<P[K]> });
}
