/** Given a record, when somebody wants the cam as it was read, or a figure of the combination, recorded. */
import { describe, expect, it } from 'vitest';
import { engineOf } from '../../plan/engine.suite.js';
import type { EntryData, EntryKind } from '../entry.js';
import { chainOf, idOf, SAMPLES_V1, type Wish } from '../samples.suite.js';
import { foldEntries } from '../state.js';
import { type Command, decide } from './index.js';

const command = <K extends EntryKind>(kind: K, over: Partial<EntryData[K]> = {}): Command =>
  ({ kind, data: { ...SAMPLES_V1[kind], ...over } }) as Command;
const given = (...wishes: readonly Wish[]) => foldEntries(chainOf(wishes), engineOf());
const fault = (wish: Command, ...before: readonly Wish[]) => {
  const decision = decide(given(...before), wish);
  return decision.ok ? undefined : decision.fault;
};
const radians = (text: string, value: number) => ({ text, value, unit: 'rad' }) as const;
const metres = (text: string, value: number) => ({ text, value, unit: 'm' }) as const;

describe('recording a dead centre', () => {
  const stop = command('dead-centre-read');
  it('records a pair of stop readings, and a repeat of the same pair too', () => {
    expect(decide(given(), stop)).toEqual({ ok: true, value: [stop] });
    expect(decide(given(stop), stop)).toEqual({ ok: true, value: [stop] });
  });
  it('refuses a cylinder that the engine does not have, and names those it has', () => {
    expect(fault(command('dead-centre-read', { cylinder: 9 }))).toMatchObject({
      code: 'unknown-cylinder',
      cylinder: 9,
    });
  });
  it('refuses two readings of one side of the stop, and what no wheel shows', () => {
    const same = radians('36 deg', 0.6283);
    expect(fault(command('dead-centre-read', { first: same, second: same }))).toMatchObject({ code: 'same-stop' });
    expect(fault(command('dead-centre-read', { first: radians('900 deg', 15.7) }))).toMatchObject({
      code: 'reading-out-of-range',
    });
    expect(fault(command('dead-centre-read', { first: metres('1 mm', 0.001) }))).toMatchObject({ code: 'other-unit' });
  });
});

describe('recording a reading of a lobe', () => {
  const read = command('cam-read');
  it('records it, and a repeat as one more', () => {
    expect(decide(given(read), read)).toEqual({ ok: true, value: [read] });
  });
  it('refuses a lobe that the engine does not have, and a lift that no valve has', () => {
    const lobe = { cylinder: 8, kind: 'intake', index: 1 } as const;
    expect(fault(command('cam-read', { lobe }))).toMatchObject({ code: 'unknown-valve' });
    expect(fault(command('cam-read', { lift: metres('80 mm', 0.08) }))).toMatchObject({ code: 'reading-out-of-range' });
    expect(fault(command('cam-read', { lift: radians('3 deg', 0.05) }))).toMatchObject({ code: 'other-unit' });
  });
  it('wants the engine of a sheet', () => {
    expect(decide(foldEntries([]), read)).toMatchObject({ ok: false, fault: { code: 'no-sheet' } });
  });
});

describe('recording a pushrod that was tried', () => {
  const tried = command('pushrod-tried');
  it('records length, width and place of the mark, and the same length again as a better look', () => {
    expect(decide(given(), tried)).toEqual({ ok: true, value: [tried] });
    expect(decide(given(tried), tried)).toEqual({ ok: true, value: [tried] });
  });
  it('refuses what no pushrod and no stem can be', () => {
    expect(fault(command('pushrod-tried', { length: metres('1980 mm', 1.98) }))).toMatchObject({
      code: 'reading-out-of-range',
      valid: 'above 0 to 500 mm for a pushrod length',
    });
    expect(fault(command('pushrod-tried', { width: metres('0 mm', 0) }))).toMatchObject({
      code: 'reading-out-of-range',
    });
    expect(fault(command('pushrod-tried', { offset: metres('-40 mm', -0.04) }))).toMatchObject({
      valid: '-30 mm to 30 mm for the place of a mark',
    });
    expect(fault(command('pushrod-tried', { length: radians('3 deg', 0.05) }))).toMatchObject({ code: 'other-unit' });
  });
  it('refuses a valve that the engine does not have', () => {
    const valve = { cylinder: 8, kind: 'intake', index: 1 } as const;
    expect(fault(command('pushrod-tried', { valve }))).toMatchObject({ code: 'unknown-valve' });
  });
});

describe('a room between valve and piston', () => {
  const { wheel: _, ...withoutWheel } = SAMPLES_V1['valve-room-read'];
  it('is taken pressed down with its wheel, and by clay without', () => {
    const drop = command('valve-room-read');
    expect(decide(given(), drop)).toEqual({ ok: true, value: [drop] });
    const clay = { ...withoutWheel, method: 'clay' } as const;
    expect(decide(given(), { kind: 'valve-room-read', data: clay }).ok).toBe(true);
  });
  it('is refused without the wheel, for a valve that is not there, and beyond what can be', () => {
    expect(fault({ kind: 'valve-room-read', data: withoutWheel })).toMatchObject({ code: 'no-wheel' });
    expect(fault(command('valve-room-read', { room: metres('60 mm', 0.06) }))).toMatchObject({
      code: 'reading-out-of-range',
    });
    expect(fault(command('valve-room-read', { valve: { cylinder: 99, kind: 'intake', index: 1 } }))).toMatchObject({
      code: expect.stringMatching(/valve|cylinder/),
    });
  });
});

describe('stating a figure of the combination', () => {
  const stated = command('figure-stated');
  it('records it, adds nothing for the same again, and takes another value as the newer one', () => {
    expect(decide(given(), stated)).toEqual({ ok: true, value: [stated] });
    expect(decide(given(stated), stated)).toEqual({ ok: true, value: [] });
    const newer = command('figure-stated', { reading: metres('4.8 mm', 0.0048) });
    expect(decide(given(stated), newer)).toEqual({ ok: true, value: [newer] });
    // The older one again is a change of mind, not a repeat.
    expect(decide(given(stated, newer), stated)).toEqual({ ok: true, value: [stated] });
    expect(decide(given(stated, { kind: 'struck-out', data: { entry: idOf(1), reason: 'slip' } }), stated)).toEqual({
      ok: true,
      value: [stated],
    });
  });
  it('refuses a word that is no figure, and a place that the figure cannot have', () => {
    expect(fault(command('figure-stated', { key: 'valve-drip' }))).toMatchObject({ code: 'unknown-figure' });
    expect(fault(command('figure-stated', { key: 'valve-drop@9' }))).toMatchObject({ code: 'unknown-figure' });
    expect(fault(command('figure-stated', { key: 'stroke@intake' }))).toMatchObject({ code: 'unknown-figure' });
  });
  it('refuses a value that the figure cannot have, and another unit', () => {
    const drop = (text: string, value: number) =>
      command('figure-stated', { key: 'gasket-bore', reading: metres(text, value) });
    expect(fault(drop('0 mm', 0))).toMatchObject({ code: 'not-a-figure', valid: 'above 0' });
    expect(fault(drop('-1 mm', -0.001))).toMatchObject({ code: 'not-a-figure' });
    expect(fault(command('figure-stated', { key: 'valve-angle', reading: metres('1 mm', 0.001) }))).toMatchObject({
      code: 'other-unit',
      expected: 'rad',
    });
    const crown = (value: number) =>
      command('figure-stated', { key: 'crown', reading: { text: 'flat-crown', value, unit: '1' } });
    expect(decide(given(), crown(1)).ok).toBe(true);
    expect(fault(crown(2))).toMatchObject({ code: 'not-a-figure', valid: 'parallel-pocket, flat-crown' });
  });
});
