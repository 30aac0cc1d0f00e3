import type { QuantityKind } from './kinds.js';
import { findUnit } from './units.js';

/** How a tidied text is put together; each part is still the text of a number with or without a unit. */
export type Form =
  | { readonly form: 'one'; readonly at: string }
  | { readonly form: 'bound'; readonly side: 'low' | 'high'; readonly at: string }
  | { readonly form: 'range'; readonly low: string; readonly high: string }
  | { readonly form: 'tolerance'; readonly centre: string; readonly plus: string; readonly minus: string };

const BEFORE = /^(<=?|>=?|(?:max|min)(?:imum)?\.?(?=[ \d+-])) ?(.*)$/i;
const AFTER = /^(.*?) ?\b(max|min)(?:imum)?\.?$/i;
const HYPHEN = /^([^-]*?[^- ].*?) ?- ?(?=[\d.])(.*)$/;
const UNEQUAL = /^([^+]*[^+ ]) ?\+ ?(.+?) ?\/? ?- ?(?=[\d.])(.*)$/;

function splitBound(kind: QuantityKind, text: string): Form | undefined {
  const before = BEFORE.exec(text);
  if (before !== null) return { form: 'bound', side: /^(>|min)/i.test(before[1]!) ? 'low' : 'high', at: before[2]! };
  const after = AFTER.exec(text);
  // "5 min" of a time is five minutes; "0.5 mm min" is a lower limit.
  if (after === null || findUnit(kind, text.replace(/^[-+\d.,/ ]+/, '')) !== undefined) return undefined;
  return { form: 'bound', side: /min/i.test(after[2]!) ? 'low' : 'high', at: after[1]! };
}

function splitTolerance(text: string): Form | undefined {
  const at = text.indexOf('±');
  if (at >= 0) {
    const spread = text.slice(at + 1).trim();
    return { form: 'tolerance', centre: text.slice(0, at).trim(), plus: spread, minus: spread };
  }
  const unequal = UNEQUAL.exec(text);
  if (unequal === null) return undefined;
  return { form: 'tolerance', centre: unequal[1]!, plus: unequal[2]!, minus: unequal[3]! };
}

function splitRange(text: string): Form | undefined {
  const between = /^(.*?) ?(?:\.\.| to ) ?(.*)$/i.exec(text);
  if (between !== null) return { form: 'range', low: between[1]!, high: between[2]! };
  const hyphen = HYPHEN.exec(text);
  if (hyphen === null) return undefined;
  const [, low = '', high = ''] = hyphen;
  // "1-1/2" may be one and a half; the reader of the part asks.
  return /^\d+$/.test(low) && /^\d+ ?\//.test(high) ? undefined : { form: 'range', low, high };
}

/** Splits a tidied text at its range, tolerance or limit sign. A text with none of them is one value. */
export const splitForm = (kind: QuantityKind, text: string): Form =>
  splitBound(kind, text) ?? splitTolerance(text) ?? splitRange(text) ?? { form: 'one', at: text };
