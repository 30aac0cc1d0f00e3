import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inch, mm } from '../../quantity/index.js';
import { type GateQuestion, readingGate } from './index.js';

// Invented figures: a bore of 4.0300 in with five cylinders read.
const bores = [4.0302, 4.0301, 4.0303, 4.0302, 4.0304].map(inch);
const bore = (text: string, over: Partial<GateQuestion> = {}): GateQuestion => ({
  text,
  what: 'bore of cylinder 6',
  measured: 'length',
  kind: 'bore-gauge',
  step: inch(0.0001),
  gauge: {
    name: 'bore gauge',
    unit: 'in',
    resolution: inch(0.0001),
    range: { low: inch(2), high: inch(6) },
  },
  expected: {
    nominal: inch(4.03),
    usual: { low: inch(3.998), high: inch(4.065) },
    possible: { low: inch(3.6), high: inch(4.4) },
    why: 'sheet, bore 4.000 in',
  },
  sisters: [{ words: 'the other cylinders', values: bores }],
  ...over,
});
const gate = (text: string, over: Partial<GateQuestion> = {}) => readingGate(bore(text, over));

describe('a keyed bore', () => {
  it('like its sisters goes through', () => {
    expect(gate('4.0303 in')).toEqual({ level: 'fine' });
  });
  it('with a second point, no unit or words is refused with what is valid', () => {
    for (const text of ['4..0303 in', '4.0303', 'about four', '4.0303 kg']) {
      const verdict = gate(text);
      expect(verdict.level, text).toBe('impossible');
      if (verdict.level === 'impossible') expect(verdict.reason.length).toBeGreaterThan(10);
    }
  });
  it('with a mark that could group thousands is asked about, never guessed', () => {
    expect(gate('1,250 in')).toMatchObject({ level: 'impossible', reason: expect.stringContaining('1.250') });
  });
  it('in another unit than the gauge reads is refused', () => {
    expect(gate('102.37 mm')).toEqual({ level: 'impossible', reason: 'bore gauge reads in; this is in mm.' });
  });
  it('that the gauge cannot reach is refused', () => {
    expect(gate('1.9000 in')).toEqual({
      level: 'impossible',
      reason: '1.9000 in: bore gauge reads 2.0000 in to 6.0000 in.',
    });
  });
  it('that no such part can have is refused, with the slip that would explain it', () => {
    const reach = { gauge: { name: 'bore gauge', unit: 'in', resolution: inch(0.0001) } };
    expect(gate('40.302 in', reach)).toEqual({
      level: 'impossible',
      reason:
        '40.302 in cannot be: bore of cylinder 6 is 3.6000 in to 4.4000 in (sheet, bore 4.000 in). Was it the point in another place? 4.0302 in would fit.',
    });
  });
  it('below nothing is refused, but a piston may stand below its deck', () => {
    expect(gate('-4.0303 in', { gauge: { name: 'g', unit: 'in', resolution: inch(0.0001) } })).toMatchObject({
      level: 'impossible',
      reason: expect.stringContaining('less than nothing'),
    });
    const deck = { nominal: 0, usual: { low: mm(-1), high: mm(1) }, possible: { low: mm(-5), high: mm(5) }, why: 'w' };
    const { gauge: _, ...question } = bore('-0.25 mm', { expected: deck, sisters: [] });
    expect(readingGate(question)).toEqual({ level: 'fine' });
    expect(readingGate({ ...question, measured: 'mass', text: '-2 g' }).level).toBe('impossible');
  });
  // "4.30? expected about 4.030" of the bench notes.
  it('with a place too few and far from its sisters is asked about once, with both reasons in one line', () => {
    expect(gate('4.3002 in')).toEqual({
      level: 'unlikely',
      expected: 'about 4.0302 in, as the other cylinders',
      hint: 'two digits swapped? 4.0302 in would fit.',
    });
    expect(gate('4.032 in')).toMatchObject({ level: 'unlikely', hint: 'a digit left out? 4.0302 in would fit.' });
  });
  it('with other places than the gauge gives is asked about even where the figure fits', () => {
    expect(gate('4.030 in')).toMatchObject({ level: 'unlikely', expected: '4 decimal places, as bore gauge' });
    expect(gate('4.03022 in')).toMatchObject({ level: 'unlikely' });
  });
  it('is held against the places of its sisters where no gauge is chosen, and against none where none was read', () => {
    const { gauge: _, ...question } = bore('4.030 in');
    expect(readingGate(question)).toEqual({ level: 'fine' });
    expect(readingGate({ ...question, written: '4.0302 in' })).toMatchObject({
      expected: '4 decimal places, as the readings before it',
    });
    expect(readingGate({ ...question, text: '102.37 mm', written: '4.0302 in' })).toEqual({ level: 'fine' });
  });
  it('of a worn cylinder is not asked about at each reading: being like one group is enough', () => {
    const worn = [4.0361, 4.0358].map(inch);
    expect(gate('4.0359 in')).toMatchObject({ level: 'unlikely' });
    const groups = [...bore('').sisters, { words: 'the other readings here', values: worn }];
    expect(gate('4.0359 in', { sisters: groups })).toEqual({ level: 'fine' });
  });
  it('with one sister only, or with nothing expected, is judged by what is known', () => {
    const one = { sisters: [{ words: 'the other cylinders', values: [inch(4.02)] }] };
    expect(gate('4.0303 in', one)).toEqual({ level: 'fine' });
    const { expected: _, ...question } = bore('4.5000 in', { sisters: [] });
    expect(readingGate(question)).toEqual({ level: 'fine' });
  });
  it('outside of what such a part usually is, is asked about with the usual range', () => {
    expect(gate('4.2000 in', { sisters: [] })).toMatchObject({
      level: 'unlikely',
      expected: '3.9980 in to 4.0650 in (sheet, bore 4.000 in)',
    });
  });
  it('one odd sister does not hide the next slip', () => {
    const odd = [{ words: 'the other cylinders', values: [...bores, inch(4.3002)] }];
    expect(gate('4.0320 in', { sisters: odd })).toMatchObject({ level: 'unlikely' });
    expect(gate('4.0302 in', { sisters: odd })).toEqual({ level: 'fine' });
  });
});

describe('the gate', () => {
  it('answers for any text in one line and never throws', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 80 }), (text) => {
        const verdict = gate(text);
        if (verdict.level === 'impossible') expect(verdict.reason).not.toMatch(/\n/);
      }),
    );
  });
  it('does not care about the order in which sisters were read', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(bores, { minLength: 5 }), fc.integer({ min: 40_250, max: 40_350 }), (all, n) => {
        const text = `${(n / 10_000).toFixed(4)} in`;
        expect(gate(text, { sisters: [{ words: 'w', values: all }] }).level).toBe(
          gate(text, { sisters: [{ words: 'w', values: bores }] }).level,
        );
      }),
    );
  });
});
