/** The outside diameter of a thread, read off the designation that a sheet prints. */
import { inch, type Length, mm } from '../quantity/index.js';

const METRIC = /^M\s*(\d+(?:\.\d+)?)/i;
const FRACTION = /^(?:(\d+)[ -])?(\d+)\/(\d+)(?![\d.])/;

/**
 * Nominal diameter [m] of a thread such as "M11x1.5", "7/16-14 UNC" or "1 1/8-7". The pitch may be left out: it is not
 * needed here. Undefined where the text does not say a diameter ("not stated", a numbered size, a plain decimal).
 * Source: designations of ISO 261 and ASME B1.1 (from memory).
 */
export function threadDiameter(thread: string): Length | undefined {
  const text = thread.trim();
  const metric = METRIC.exec(text);
  if (metric !== null) return positive(mm(Number(metric[1])));
  const fraction = FRACTION.exec(text);
  if (fraction === null) return undefined;
  const [, whole = '0', over, under] = fraction;
  return positive(inch(Number(whole) + Number(over) / Number(under)));
}

const positive = (length: Length): Length | undefined => (Number.isFinite(length) && length > 0 ? length : undefined);
