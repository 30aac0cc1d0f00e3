import { type Exact, exactDecimal, exactNegative, exactQuotient, exactSum } from './exact.js';
import type { QuantityFault } from './fault.js';
import { done, type Outcome, refused } from './outcome.js';
import type { ReadOptions } from './typed.js';

/** A number at the start of a text, and what follows it. */
export interface ReadNumber {
  readonly exact: Exact;
  readonly places: number;
  readonly signed: boolean;
  readonly rest: string;
}
type Result<T> = Outcome<T, QuantityFault>;

const MIXED = /^([+-]?)(?:(\d+) +)?(\d+) ?\/ ?(\d+)(?![\d.,/])/;
const DECIMAL = /^([+-]?)([\d.,]+)/;
const LIMIT_OF_FRACTION_PLACES = 6;

/** Fewest decimal places that print a fraction exactly, at most six. */
function placesOf({ top, bottom }: Exact): number {
  let places = 0;
  for (let scale = 1n; places < LIMIT_OF_FRACTION_PLACES && (top * scale) % bottom !== 0n; scale *= 10n) places += 1;
  return places;
}

/** `13/8` is thirteen eighths, or 1 3/8 with its space left out; `1 11/8` is neither a mixed number nor a fraction. */
function askAboutSpace(
  given: string,
  sign: string,
  whole: string,
  top: string,
  bottom: string,
): QuantityFault | undefined {
  if (BigInt(top) < BigInt(bottom)) return undefined;
  if (whole !== '') return { code: 'not-a-number', given };
  for (let at = 1; at < top.length; at += 1) {
    const [head, rest] = [top.slice(0, at), top.slice(at)];
    if (/^[1-9]/.test(rest) && BigInt(rest) < BigInt(bottom)) {
      const [full, left] = [BigInt(top) / BigInt(bottom), BigInt(top) % BigInt(bottom)];
      return {
        code: 'space-question',
        given,
        asMixed: `${sign}${head} ${rest}/${bottom}`,
        asFraction: `${sign}${full} ${left}/${bottom}`,
      };
    }
  }
  return undefined;
}

function readFraction(
  [given, sign = '', whole = '', top = '', bottom = '']: RegExpExecArray,
  rest: string,
): Result<ReadNumber> {
  if (/^0+$/.test(bottom)) return refused({ code: 'zero-denominator', given });
  const question = askAboutSpace(given, sign, whole, top, bottom);
  if (question !== undefined) return refused(question);
  const magnitude = exactSum(exactDecimal(whole || '0'), exactQuotient(exactDecimal(top), exactDecimal(bottom)));
  const exact = sign === '-' ? exactNegative(magnitude) : magnitude;
  return done({ exact, places: placesOf(exact), signed: sign !== '', rest });
}

/** `1,250` and, where the comma is the decimal mark, `1.250`: could be one and a quarter or twelve hundred and fifty. */
function settleMarks(given: string, decimalMark: '.' | ','): Result<string> {
  const marks = given.replace(/\d/g, '');
  if (marks.length > 1) return refused({ code: 'second-mark', given });
  if (marks !== decimalMark && /^[1-9]\d{0,2}[.,]\d{3}$/.test(given)) {
    const asDecimal = given.replace(marks, decimalMark);
    return refused({ code: 'mark-question', given, asDecimal, asThousands: given.replace(marks, '') });
  }
  return done(given.replace(',', '.'));
}

function readDecimal(sign: string, given: string, rest: string, options: ReadOptions): Result<ReadNumber> {
  const settled = settleMarks(given, options.decimalMark ?? '.');
  if (!settled.ok) return settled;
  const digits = settled.value;
  if (!/^\d*(?:\.\d+)?$/.test(digits)) return refused({ code: 'not-a-number', given });
  if (/^0\d/.test(digits)) return refused({ code: 'leading-zero', given });
  const magnitude = exactDecimal(digits);
  const exact = sign === '-' ? exactNegative(magnitude) : magnitude;
  return done({ exact, places: digits.split('.')[1]?.length ?? 0, signed: sign !== '', rest });
}

/**
 * Reads the number at the start of a tidied text (`parse.ts` tidies): digits with one decimal mark, a fraction `3/8`, or a
 * mixed number `1 1/2`, with an optional sign. The number of places is kept. Exponents and grouped digits are not
 * read: a slip in them is a factor ten.
 */
export function readNumber(text: string, options: ReadOptions): Result<ReadNumber> {
  const fraction = MIXED.exec(text);
  if (fraction !== null) return readFraction(fraction, text.slice(fraction[0].length));
  const decimal = DECIMAL.exec(text);
  if (decimal === null) return refused({ code: 'not-a-number', given: text });
  const [whole, sign = '', digits = ''] = decimal;
  return readDecimal(sign, digits, text.slice(whole.length), options);
}
