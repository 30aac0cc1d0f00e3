/** One text for one value, whatever order its fields were written in, so that a hash can be taken of it. */

/** Deeper nesting than any entry needs; a bound so that hostile input cannot exhaust the stack. */
const DEEPEST = 64;

/**
 * Canonical JSON text: no white space, fields of objects in order of their UTF-16 code units, numbers and strings as
 * ECMAScript prints them. Fields that are undefined are left out.
 *
 * Throws on anything that JSON cannot hold (not finite, function, symbol) and on nesting deeper than 64.
 * Source: RFC 8785, JSON Canonicalization Scheme, section 3.2 (recalled).
 */
export function canonicalText(value: unknown): string {
  return written(value, 0);
}

function written(value: unknown, depth: number): string {
  if (depth > DEEPEST) throw new TypeError('canonicalText: nested too deep');
  if (Array.isArray(value)) return `[${value.map((one) => written(one, depth + 1)).join(',')}]`;
  if (typeof value === 'object' && value !== null) return writtenObject(value as Record<string, unknown>, depth);
  if (typeof value === 'number' && !Number.isFinite(value)) throw new TypeError('canonicalText: number not finite');
  if (value === null || ['string', 'number', 'boolean'].includes(typeof value)) return JSON.stringify(value);
  throw new TypeError(`canonicalText: cannot write a ${typeof value}`);
}

function writtenObject(value: Readonly<Record<string, unknown>>, depth: number): string {
  const fields = Object.keys(value)
    .filter((name) => value[name] !== undefined)
    .sort()
    .map((name) => `${JSON.stringify(name)}:${written(value[name], depth + 1)}`);
  return `{${fields.join(',')}}`;
}
