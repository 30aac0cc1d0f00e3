/** What is measured, as the log holds it: what stands, what came before, with which gauge and how warm. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { engineOf } from '../plan/engine.suite.js';
import { celsius, inch } from '../quantity/index.js';
import type { EntryData } from './entry.js';
import { foldMeasuring, type Measuring, placeOfSlot } from './measuring.js';
import { chainOf, idOf, SAMPLES_V1, type Wish } from './samples.suite.js';
import { foldEntries, refold } from './state.js';

const read = (slot: string, digits: string, over: Partial<EntryData['measured']> = {}): Wish => ({
  kind: 'measured',
  data: {
    slot,
    occasion: 1,
    reading: { text: `${digits} in`, value: inch(Number(digits)), unit: 'm' },
    repeat: false,
    source: 'keyed',
    ...over,
  } satisfies EntryData['measured'],
});
const strike = (number: number): Wish => ({ kind: 'struck-out', data: { entry: idOf(number), reason: 'misread' } });
const returned = (...places: string[]): Wish => ({
  kind: 'work-returned',
  data: { feature: 'cylinder-bore', places, why: 'bored' },
});
const warm = (over: { room?: number; part?: number; about?: string }): Wish => ({
  kind: 'temperature-noted',
  data: Object.fromEntries(
    Object.entries(over).map(([key, value]) => [
      key,
      typeof value === 'number' ? { text: `${value} °C`, value: celsius(value), unit: 'K' } : value,
    ]),
  ),
});
const testEngine = engineOf();
const fold = (...wishes: readonly Wish[]) => foldMeasuring(foldEntries(chainOf(wishes)));
/** A measuring as text, its maps in the order of their keys. */
const plain = (held: unknown): string =>
  JSON.stringify(held, (_, value: unknown) => (value instanceof Map ? [...value].sort() : value));
const texts = (readings: readonly { readonly text: string }[] | undefined) => readings?.map((one) => one.text);
const A = 'cylinder-bore/1/top-thrust';
const B = 'cylinder-bore/1/top-axial';
const OTHER = 'cylinder-bore/2/top-thrust';

describe('readings in the log', () => {
  it('stand in order, a second reading beside the first, with who, when and which entry', () => {
    const { bySlot } = fold(read(A, '4.0302'), read(B, '4.0300'), read(A, '4.0303', { repeat: true }));
    expect(texts(bySlot.get(A))).toEqual(['4.0302 in', '4.0303 in']);
    expect(bySlot.get(B)?.[0]).toEqual({
      slot: B,
      entry: idOf(2),
      text: '4.0300 in',
      value: inch(4.03),
      occasion: 1,
      at: '2026-03-01T18:20:00+01:00',
      by: 'A. Fitter',
    });
  });
  it('that were struck out count for nothing, and come back when the strike is struck out', () => {
    expect(fold(read(A, '4.0302'), strike(1)).bySlot.has(A)).toBe(false);
    expect(texts(fold(read(A, '4.0302'), strike(1), strike(2)).bySlot.get(A))).toEqual(['4.0302 in']);
  });
  it('of a place that came back from work are of an earlier occasion, those of other places stay', () => {
    const held = fold(read(A, '4.0002'), read(OTHER, '4.0004'), returned('1'));
    expect(held.bySlot.has(A)).toBe(false);
    expect(texts(held.before.get(A))).toEqual(['4.0002 in']);
    expect(texts(held.bySlot.get(OTHER))).toEqual(['4.0004 in']);
    expect(held.occasions.get('cylinder-bore/1')).toBe(2);
    const after = fold(read(A, '4.0002'), returned('1', '1'), read(A, '4.0302', { occasion: 2 }));
    expect(texts(after.bySlot.get(A))).toEqual(['4.0302 in']);
    expect(texts(after.before.get(A))).toEqual(['4.0002 in']);
  });
  it('taken after a return that was struck out are still the newest, and the next return opens one more occasion', () => {
    const wishes = [read(A, '4.0002'), returned('1'), read(A, '4.0302', { occasion: 2 }), strike(2)];
    expect(texts(fold(...wishes).bySlot.get(A))).toEqual(['4.0302 in']);
    expect(fold(...wishes, returned('1')).occasions.get('cylinder-bore/1')).toBe(3);
  });
  it('have the temperature noted with them, else of the part, else of the room, as it held then', () => {
    const held = fold(
      read(A, '4.0300'),
      warm({ room: 18 }),
      read(B, '4.0300'),
      warm({ part: 25, about: 'cylinder-bore' }),
      read(OTHER, '4.0300', { temperature: { text: '30 °C', value: celsius(30), unit: 'K' } }),
      read('cylinder-bore/2/top-axial', '4.0300'),
      read('main-journal/1/front-a', '2.4980'),
      warm({ room: 21 }),
      read('cylinder-bore/3/top-axial', '4.0300'),
    );
    const kelvin = (slot: string) => held.bySlot.get(slot)?.[0]?.temperature;
    expect(kelvin(A)).toBeUndefined();
    expect(kelvin(B)).toBe(celsius(18));
    expect(kelvin(OTHER)).toBe(celsius(30));
    expect(kelvin('cylinder-bore/2/top-axial')).toBe(celsius(25));
    expect(kelvin('main-journal/1/front-a')).toBe(celsius(18));
    expect(kelvin('cylinder-bore/3/top-axial')).toBe(celsius(21));
    const room = (slot: string) => held.bySlot.get(slot)?.[0]?.room;
    expect([B, OTHER, 'cylinder-bore/3/top-axial'].map(room)).toEqual([undefined, celsius(18), undefined]);
  });
});

describe('gauges and decisions in the log', () => {
  it('keep the last word about a gauge, and every check of it', () => {
    const kept = SAMPLES_V1['instrument-kept'];
    const check = SAMPLES_V1['instrument-checked'];
    const held = fold(
      { kind: 'instrument-kept', data: kept },
      { kind: 'instrument-kept', data: { ...kept, name: 'new name' } },
      { kind: 'instrument-checked', data: check },
      { kind: 'instrument-checked', data: { ...check, moment: 'end' } },
    );
    expect([...held.instruments.values()]).toEqual([
      {
        id: 'bore-gauge-1',
        name: 'new name',
        kind: 'bore-gauge',
        measured: 'length',
        unit: 'in',
        resolution: inch(0.0001),
        range: { low: 0.0508, high: 0.1524 },
        expanded: 0.00000762,
      },
    ]);
    expect(held.checks.map((one) => [one.moment, one.read, one.entry])).toEqual([
      ['start', 0.10160254, idOf(3)],
      ['end', 0.10160254, idOf(4)],
    ]);
  });
  it('keep the newest decision of each kind and scope, the last taken last', () => {
    const decided = (decision: string, scope: string, alternative: string): Wish => ({
      kind: 'decided',
      data: { ...SAMPLES_V1.decided, decision, scope, alternative },
    });
    const wishes = [decided('bore', 'all', 'a'), decided('shells', 'main', 'b'), decided('bore', 'all', 'c')];
    expect(fold(...wishes).choices.map((one) => one.alternative)).toEqual(['b', 'c']);
    expect(fold(...wishes, strike(3)).choices.map((one) => one.alternative)).toEqual(['a', 'b']);
  });
});

describe('the name of a reading', () => {
  it('has three parts: feature, place and station', () => {
    expect(placeOfSlot(A)).toBe('cylinder-bore/1');
    for (const text of ['cylinder-bore/1', 'a/b/c/d', '//', 'a//b', '']) expect(placeOfSlot(text)).toBeUndefined();
  });
});

describe('a log that grows', () => {
  const places = ['1', '2'];
  const wishes = fc.oneof(
    { weight: 6, arbitrary: fc.tuple(fc.constantFrom(...places), fc.constantFrom('a', 'b'), fc.constantFrom(1, 2, 3)) },
    { weight: 1, arbitrary: fc.constantFrom('returned' as const, 'warm' as const) },
    { weight: 1, arbitrary: fc.integer({ min: 1, max: 12 }) },
  );
  const wishOf = (one: readonly [string, string, number] | 'returned' | 'warm' | number): Wish => {
    if (one === 'returned') return returned('1');
    if (one === 'warm') return warm({ room: 22 });
    if (typeof one === 'number') return strike(one);
    return read(`cylinder-bore/${one[0]}/${one[1]}`, '4.0302', { occasion: one[2] });
  };
  /** Slots with other readings than before that are not named as such. */
  const readElsewhere = ({ bySlot, slots }: NonNullable<Measuring['grewFrom']>, now: Measuring['bySlot']) =>
    [...new Set([...bySlot.keys(), ...now.keys()])].filter(
      (slot) => bySlot.get(slot) !== now.get(slot) && !slots.includes(slot),
    );
  it('gives the same answer entry by entry as all at once, and leaves earlier answers alone', () => {
    fc.assert(
      fc.property(fc.array(wishes, { maxLength: 14 }), fc.integer({ min: 0, max: 3 }), (some, waiting) => {
        const all = chainOf(some.map(wishOf)).map((entry, i) => ({ ...entry, sequence: i + 1, receivedAt: entry.at }));
        const grownUp = { ...testEngine };
        let state = foldEntries([], grownUp);
        const seen: { readonly now: unknown; readonly text: string }[] = [];
        for (let count = 1; count <= all.length; count += 1) {
          // Entries that wait for the server stand behind the others with a place of their own until it has confirmed them.
          const log = all.slice(0, count).map((one, i) => (i < count - waiting ? { ...one, receivedAt: 'then' } : one));
          state = refold(state, log, grownUp);
          expect(state).toEqual(foldEntries(log, grownUp));
          const { grewFrom, ...now } = foldMeasuring(state);
          expect(now).toEqual(foldMeasuring(foldEntries(log, { ...testEngine })));
          if (grewFrom !== undefined) expect(readElsewhere(grewFrom, now.bySlot)).toEqual([]);
          seen.push({ now, text: plain(now) });
        }
        for (const { now, text } of seen) expect(plain(now)).toBe(text);
      }),
      { numRuns: 200 },
    );
  });
  it('reads nothing again that it knows', () => {
    const all = chainOf([read(A, '4.0302'), read(B, '4.0301'), read(OTHER, '4.0303')]).map((entry, i) => ({
      ...entry,
      sequence: i + 1,
    }));
    const before = foldEntries(all.slice(0, 2), testEngine);
    const known = foldMeasuring(before).bySlot.get(A);
    const after = refold(before, all, testEngine);
    expect(after.entries[0]).toBe(before.entries[0]);
    expect(foldMeasuring(after).bySlot.get(A)).toBe(known);
  });
  it('is not taken for one where a device had sent its entries in another order', () => {
    const [first, second] = chainOf([read(A, '4.0302'), read(B, '4.0301')]);
    const before = foldEntries([{ ...second!, sequence: 1 }], testEngine);
    const log = [
      { ...second!, sequence: 1 },
      { ...first!, sequence: 2 },
    ];
    expect(refold(before, log, testEngine)).toEqual(foldEntries(log, testEngine));
  });
});
