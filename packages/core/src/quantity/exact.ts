/**
 * Exact fractions of whole numbers. Typed text is decimal and the units are exact by definition, so a typed value is
 * carried as a fraction and rounded to a floating-point number once, at the end: 4.030 in and 102.362 mm are then the
 * very same number, and a reading that sits on a limit is on it in either unit.
 */
export interface Exact {
  readonly top: bigint;
  readonly bottom: bigint;
}

/** Decimal digits with at most one point, e.g. `0.0254`. The caller has checked the form. */
export function exactDecimal(digits: string): Exact {
  const [whole = '', after = ''] = digits.split('.');
  return { top: BigInt(whole + after), bottom: 10n ** BigInt(after.length) };
}

export const exactProduct = (a: Exact, b: Exact): Exact => ({ top: a.top * b.top, bottom: a.bottom * b.bottom });

export const exactQuotient = (a: Exact, b: Exact): Exact => ({ top: a.top * b.bottom, bottom: a.bottom * b.top });

export const exactSum = (a: Exact, b: Exact): Exact => ({
  top: a.top * b.bottom + b.top * a.bottom,
  bottom: a.bottom * b.bottom,
});

export const exactNegative = (a: Exact): Exact => ({ top: -a.top, bottom: a.bottom });

const PLACES = 60;
const SHIFT = 10n ** BigInt(PLACES);

/** Nearest floating-point number, by way of sixty decimal places. */
export const toNumber = (a: Exact): number => Number(`${(a.top * SHIFT) / a.bottom}e-${PLACES}`);
