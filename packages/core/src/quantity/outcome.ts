/**
 * An answer or an expected refusal. Three kinds of trouble have three shapes here: an expected refusal is returned as
 * an `Outcome`, a caution travels beside a valid answer, and a defect in our own code throws.
 */
export type Outcome<T, F> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: F };

/** Wraps a valid answer. */
export const done = <T>(value: T) => ({ ok: true, value }) as const;

/** Wraps an expected refusal. `fault` is data; the sentence for a reader is made at the edge. */
export const refused = <F>(fault: F) => ({ ok: false, fault }) as const;
