import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { commaIsUnsure, emptyBuffer, placesKeyed, pressKey, shownNumber, takeText } from './key-buffer.js';

// Rules: Thimbleby and Cairns, "Reducing number entry errors", J. R. Soc. Interface 7(51), 2010 (block at the key, keep what was keyed).
const typed = (text: string) => takeText(emptyBuffer, text);

describe('keying a reading', () => {
  it('keeps the trailing zero, which is resolution', () => {
    expect(shownNumber(typed('4.030').buffer)).toBe('4.030');
    expect(placesKeyed(typed('4.030').buffer)).toBe(3);
  });

  it('shows a leading zero but keeps what was keyed', () => {
    const { buffer } = typed('.0025');
    expect([buffer.raw, shownNumber(buffer)]).toEqual(['.0025', '0.0025']);
  });

  it('refuses a second decimal mark with a complaint and leaves the digits alone', () => {
    const once = typed('4.0').buffer;
    expect(pressKey(once, '.')).toEqual({ buffer: once, complaint: 'second-mark' });
    expect(pressKey(once, ',')).toEqual({ buffer: once, complaint: 'second-mark' });
  });

  it('does not guess what 1,250 means', () => {
    expect(['1,250', '0,250', '1,25', '1.250', '1250'].map((t) => commaIsUnsure(typed(t).buffer))).toEqual([
      true,
      false,
      false,
      false,
      false,
    ]);
  });

  it('takes a gauge that types sign, digits and unit', () => {
    expect(typed('+0012.345 mm').buffer).toEqual({ raw: '0012.345', letters: 'mm' });
  });

  it('refuses a minus where none makes sense', () => {
    expect(pressKey(emptyBuffer, '-').complaint).toBe('no-sign-here');
    expect(pressKey(emptyBuffer, '-', true).buffer.raw).toBe('-');
  });

  it('takes back one digit at a time', () => {
    expect(pressKey(typed('4.03').buffer, 'Backspace').buffer.raw).toBe('4.0');
  });

  it('never changes or loses a key without a complaint, whatever is hammered', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...'0123456789.,-'.split('')), { maxLength: 30 }), (keys) => {
        let buffer = emptyBuffer;
        let kept = '';
        for (const key of keys) {
          const next = pressKey(buffer, key, true);
          if (next.complaint === undefined) kept += key;
          buffer = next.buffer;
        }
        expect(buffer.raw).toBe(kept);
        expect(buffer.raw).toMatch(/^-?\d*[.,]?\d*$/);
      }),
      { numRuns: 10_000 },
    );
  });
});
