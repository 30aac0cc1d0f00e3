/** Given a record, when somebody wants a reading, a gauge, work that came back or a decision recorded. */
import { describe, expect, it } from 'vitest';
import { inch } from '../../quantity/index.js';
import type { EntryData, EntryKind } from '../entry.js';
import { chainOf, idOf, SAMPLES_V1, type Wish } from '../samples.suite.js';
import { foldEntries } from '../state.js';
import { type Command, decide } from './index.js';

const command = <K extends EntryKind>(kind: K, over: Partial<EntryData[K]> = {}): Command =>
  ({ kind, data: { ...SAMPLES_V1[kind], ...over } }) as Command;
const given = (...wishes: readonly Wish[]) => foldEntries(chainOf(wishes));
const fault = (state: ReturnType<typeof given>, wish: Command) => {
  const decision = decide(state, wish);
  return decision.ok ? undefined : decision.fault;
};
const records = (state: ReturnType<typeof given>, wish: Command) =>
  expect(decide(state, wish)).toEqual({ ok: true, value: [wish] });
const addsNothing = (state: ReturnType<typeof given>, wish: Command) =>
  expect(decide(state, wish)).toEqual({ ok: true, value: [] });

const gauge = command('instrument-kept');
const first = command('measured');
const length = (text: string) => ({ text, value: inch(Number.parseFloat(text)), unit: 'm' }) as const;
const grams = { text: '12 g', value: 0.012, unit: 'kg' } as const;

describe('recording a reading', () => {
  it('records it, and adds nothing for the same figure again', () => {
    records(given(gauge), first);
    addsNothing(given(gauge, first), first);
  });
  it('refuses another figure of the same slot until the first is struck out', () => {
    const other = command('measured', { reading: length('4.0310 in') });
    expect(fault(given(gauge, first), other)).toEqual({
      code: 'read-already',
      slot: 'cylinder-bore/3/top-thrust',
      reading: '4.0302 in',
    });
    records(given(gauge, first, { kind: 'struck-out', data: { entry: idOf(2), reason: 'misread' } }), other);
  });
  it('takes a second reading as a check, the same figure or another, but not before the first', () => {
    const again = command('measured', { repeat: true });
    records(given(gauge, first), again);
    records(given(gauge, first, again), command('measured', { repeat: true, reading: length('4.0304 in') }));
    expect(fault(given(gauge), again)).toMatchObject({ code: 'nothing-to-repeat' });
  });
  it('wants the occasion that counts now', () => {
    const back = command('work-returned');
    expect(fault(given(gauge, first, back), command('measured', { reading: length('4.0310 in') }))).toEqual({
      code: 'other-occasion',
      slot: 'cylinder-bore/3/top-thrust',
      given: 1,
      expected: 2,
    });
    records(given(gauge, first, back), command('measured', { occasion: 2 }));
  });
  it('wants a gauge that it knows, or none, and a unit of what the gauge measures', () => {
    expect(fault(given(), first)).toEqual({ code: 'unknown-instrument', instrument: 'bore-gauge-1', valid: [] });
    expect(fault(given(gauge), command('measured', { instrument: 'other' }))).toMatchObject({
      valid: ['bore-gauge-1'],
    });
    expect(fault(given(gauge), command('measured', { reading: grams }))).toMatchObject({ code: 'other-unit' });
    expect(fault(given(gauge), command('measured', { temperature: grams }))).toMatchObject({
      code: 'other-unit',
      measured: 'temperature',
    });
    const { instrument: _, ...free } = SAMPLES_V1.measured;
    records(given(), { kind: 'measured', data: free });
  });
  it('wants a slot of three parts', () => {
    expect(fault(given(gauge), command('measured', { slot: 'bore 3' }))).toEqual({
      code: 'not-a-slot',
      slot: 'bore 3',
    });
  });
});

describe('recording a gauge', () => {
  it('records it, adds nothing for the same again, and takes other figures under the same name', () => {
    records(given(), gauge);
    addsNothing(given(gauge), gauge);
    records(given(gauge), command('instrument-kept', { name: 'the new one' }));
  });
  it('refuses units that do not belong, no step at all and a range that is turned round', () => {
    expect(fault(given(), command('instrument-kept', { unit: 'cm3' }))).toMatchObject({ code: 'other-unit' });
    expect(fault(given(), command('instrument-kept', { resolution: grams }))).toMatchObject({ code: 'other-unit' });
    expect(fault(given(), command('instrument-kept', { resolution: length('0 in') }))).toMatchObject({
      code: 'no-resolution',
    });
    expect(fault(given(), command('instrument-kept', { low: length('6 in'), high: length('2 in') }))).toEqual({
      code: 'range-turned',
      low: '6 in',
      high: '2 in',
    });
  });
  it('checks only a gauge that is there, in its own unit, as often as wanted', () => {
    const check = command('instrument-checked');
    expect(fault(given(), check)).toMatchObject({ code: 'unknown-instrument' });
    expect(fault(given(gauge), command('instrument-checked', { standard: grams }))).toMatchObject({
      code: 'other-unit',
    });
    records(given(gauge), check);
    records(given(gauge, check), check);
  });
  it('notes a temperature, in kelvin, of the room or of the part', () => {
    records(given(), command('temperature-noted'));
    expect(fault(given(), { kind: 'temperature-noted', data: {} })).toEqual({ code: 'no-temperature' });
    expect(fault(given(), { kind: 'temperature-noted', data: { room: grams } })).toMatchObject({ code: 'other-unit' });
  });
});

describe('work that came back', () => {
  const back = command('work-returned');
  it('opens the next occasion, once until something is measured', () => {
    records(given(), back);
    addsNothing(given(back), back);
    records(given(gauge, first, back, command('measured', { occasion: 2 })), back);
    records(given(back), command('work-returned', { places: ['1', '2'] }));
  });
  it('names its places and why', () => {
    expect(fault(given(), command('work-returned', { places: [] }))).toMatchObject({ code: 'no-places' });
    expect(fault(given(), command('work-returned', { why: ' ' }))).toMatchObject({ code: 'wrong-shape', at: 'why' });
  });
});

describe('a decision', () => {
  const decided = command('decided');
  it('is recorded with the numbers seen, once; another alternative or reason is another decision', () => {
    records(given(), decided);
    addsNothing(given(decided), decided);
    records(given(decided), command('decided', { alternative: 'oversize-0040' }));
    records(given(decided, command('decided', { alternative: 'oversize-0040' })), decided);
    records(given(decided), command('decided', { scope: 'left' }));
  });
  it('needs a reason, and has limits to how much it holds', () => {
    expect(fault(given(), command('decided', { reason: ' ' }))).toEqual({ code: 'reason-needed' });
    const figures = Array.from({ length: 101 }, (_, k) => ({ name: `${k}`, text: 'x' }));
    expect(fault(given(), command('decided', { figures }))).toMatchObject({ code: 'wrong-shape', at: 'figures' });
  });
});
