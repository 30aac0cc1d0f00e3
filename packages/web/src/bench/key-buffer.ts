/**
 * The digits of one reading while it is being keyed. What was keyed is kept to the letter in `raw`; `shownNumber` is
 * how it will stand in the record. Nothing is dropped or read in another way without a complaint.
 */
export interface KeyBuffer {
  /** Digits, at most one decimal mark (point or comma as keyed) and at most one leading minus. */
  readonly raw: string;
  /** Unit letters that a gauge typed after its digits. */
  readonly letters: string;
}
export type Complaint =
  | 'second-mark'
  | 'sign-not-first'
  | 'no-sign-here'
  | 'too-long'
  | 'not-a-digit'
  | 'digit-after-unit';
export interface Keyed {
  readonly buffer: KeyBuffer;
  readonly complaint?: Complaint;
}
export const emptyBuffer: KeyBuffer = { raw: '', letters: '' };
const longest = 12;

/** One key. `sign` says whether a minus makes sense for this reading. A refused key leaves the buffer as it was. */
export function pressKey(buffer: KeyBuffer, key: string, sign = false): Keyed {
  if (key === 'Backspace') return { buffer: withoutLast(buffer) };
  if (key === 'Clear') return { buffer: emptyBuffer };
  if (/^[\s+]$/.test(key)) return { buffer };
  const complaint = complaintFor(buffer, key, sign);
  if (complaint) return { buffer, complaint };
  if (/\p{L}|["″°]/u.test(key)) return { buffer: { ...buffer, letters: buffer.letters + key } };
  return { buffer: { ...buffer, raw: buffer.raw + key } };
}

function complaintFor(buffer: KeyBuffer, key: string, sign: boolean): Complaint | undefined {
  if (/^(\p{L}|["″°])$/u.test(key)) return buffer.raw === '' ? 'not-a-digit' : undefined;
  if (key === '-') return !sign ? 'no-sign-here' : buffer.raw === '' ? undefined : 'sign-not-first';
  if (buffer.letters !== '') return 'digit-after-unit';
  if (key === '.' || key === ',') return /[.,]/.test(buffer.raw) ? 'second-mark' : undefined;
  if (!/^\d$/.test(key)) return 'not-a-digit';
  return buffer.raw.length >= longest ? 'too-long' : undefined;
}

function withoutLast(buffer: KeyBuffer): KeyBuffer {
  if (buffer.letters !== '') return { ...buffer, letters: buffer.letters.slice(0, -1) };
  return { ...buffer, raw: buffer.raw.slice(0, -1) };
}

/** Takes in text that arrived at once (a gauge that types, a paste), key by key; the first complaint is reported. */
export function takeText(buffer: KeyBuffer, text: string, sign = false): Keyed {
  let now: Keyed = { buffer };
  let first: Complaint | undefined;
  for (const key of text) {
    now = pressKey(now.buffer, key, sign);
    first ??= now.complaint;
  }
  return first ? { buffer: now.buffer, complaint: first } : now;
}

/** As it will be stored: one decimal mark, a leading zero, and every keyed place kept. */
export function shownNumber(buffer: KeyBuffer): string {
  return buffer.raw.replace(',', '.').replace(/^(-?)\./, '$10.');
}

/** Places keyed after the decimal mark. */
export function placesKeyed(buffer: KeyBuffer): number {
  const mark = buffer.raw.search(/[.,]/);
  return mark < 0 ? 0 : buffer.raw.length - mark - 1;
}

/** `1,250` may mean one and a quarter or twelve hundred and fifty; only the person knows. */
export function commaIsUnsure(buffer: KeyBuffer): boolean {
  return /^-?[1-9]\d{0,2},\d{3}$/.test(buffer.raw);
}

/** True when there is a digit to record. */
export const hasDigits = (buffer: KeyBuffer): boolean => /\d/.test(buffer.raw);
