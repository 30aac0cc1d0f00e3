import type { QuantityFault } from './fault.js';
import type { QuantityKind } from './kinds.js';
import { type ReadNumber, readNumber } from './number.js';
import { done, type Outcome, refused } from './outcome.js';
import type { ReadOptions } from './typed.js';
import { findUnit, kindsOfUnit, type Unit } from './units.js';

/** A number with its unit. */
export interface Term extends ReadNumber {
  readonly unit: Unit;
}

function wrongUnit(kind: QuantityKind, text: string, unit: string): QuantityFault {
  if (unit === '') return { code: 'unit-missing', kind, given: text };
  if (/^- ?[\d.]/.test(unit)) return { code: 'hyphen-question', given: text };
  if (/^[^\p{L}"″°%]/u.test(unit)) return { code: 'not-a-number', given: text };
  const of = kindsOfUnit(unit);
  return of.length > 0
    ? { code: 'unit-of-other-kind', kind, given: unit, of }
    : { code: 'unit-unknown', kind, given: unit };
}

/** As many terms as parts. */
type TermsOf<P extends readonly string[]> = { readonly [I in keyof P]: Term };

/**
 * Reads the parts of one form. A part without a unit takes that of the last part (`0.0010..0.0025 in`); when
 * that has none either, the text is refused.
 */
export function readTerms<const P extends readonly string[]>(
  kind: QuantityKind,
  parts: P,
  options: ReadOptions,
): Outcome<TermsOf<P>, QuantityFault> {
  const numbers: ReadNumber[] = [];
  for (const part of parts) {
    if (part === '') return refused({ code: 'empty' });
    const read = readNumber(part, options);
    if (!read.ok) return read;
    numbers.push(read.value);
  }
  const shared = numbers.at(-1)!.rest.trim();
  const terms: Term[] = [];
  for (const [at, number] of numbers.entries()) {
    const word = number.rest.trim() || shared;
    const unit = findUnit(kind, word);
    if (unit === undefined) return refused(wrongUnit(kind, parts[at]!, word));
    terms.push({ ...number, unit });
  }
  return done(terms as unknown as TermsOf<P>);
}
