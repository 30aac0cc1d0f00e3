import { describe, expect, it } from 'vitest';
import { emptyBuffer, takeText } from './key-buffer.js';
import { barrierFor } from './number-gate.js';

const keyed = (text: string) => takeText(emptyBuffer, text).buffer;
const none = new Set<string>();

// Gates: the project's bench ergonomics section 6 (common practice, no source); slips counted there.
describe('between the key and the record', () => {
  it('asks about fewer places than the gauge reads', () => {
    expect(barrierFor(keyed('4.03'), { unit: 'in', places: 4 }, none)).toMatchObject({ kind: 'ask', about: 'places' });
    expect(barrierFor(keyed('4.0300'), { unit: 'in', places: 4 }, none)).toBeUndefined();
  });

  it('refuses a unit that the gauge sends and this place does not hold', () => {
    expect(barrierFor(keyed('102.36mm'), { unit: 'in' }, none)?.kind).toBe('refuse');
    expect(barrierFor(keyed('4.0300in'), { unit: 'in' }, none)).toBeUndefined();
  });

  it('lets an unlikely value through once it is confirmed, and an impossible one never', () => {
    const unlikely = { unit: 'in', check: () => ({ level: 'unlikely', expected: 'about 4.030 in' }) as const };
    expect(barrierFor(keyed('4.3'), unlikely, none)).toMatchObject({ kind: 'ask', expected: 'about 4.030 in' });
    expect(barrierFor(keyed('4.3'), unlikely, new Set(['unlikely']))).toBeUndefined();
    const impossible = { unit: 'in', check: () => ({ level: 'impossible', reason: 'no' }) as const };
    expect(barrierFor(keyed('43'), impossible, new Set(['unlikely']))).toEqual({ kind: 'refuse', words: 'no' });
  });

  it('has nothing to record before a digit is keyed', () => {
    expect(barrierFor(emptyBuffer, { unit: 'in' }, none)?.kind).toBe('refuse');
  });
});
