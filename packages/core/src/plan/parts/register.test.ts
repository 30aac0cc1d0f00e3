import { describe, expect, it } from 'vitest';
import type { ValveId } from '../../engine/model.js';
import { engineOf, pushrodGear } from '../engine.suite.js';
import type { Fact, FactData } from '../facts.js';
import { judgePart, partsOf, registerOf, valveRecord } from './index.js';

// Rules of this file: common practice, no source.
const engine = engineOf();
const valve = (cylinder: number, kind: 'intake' | 'exhaust' = 'intake'): ValveId => ({ cylinder, kind, index: 1 });
const fitting = (over: Partial<FactData['part-fitted']>): FactData['part-fitted'] => ({
  part: 'lifter',
  to: valve(1),
  from: valve(1),
  ...over,
});
const tagged = (over: Partial<FactData['part-tagged']> = {}): Fact => ({
  kind: 'part-tagged',
  data: { part: 'lifter', valve: valve(1), condition: 'good', ...over },
});

describe('parts that go back to their places', () => {
  it('are lifters, pushrods and rockers in a pushrod engine, one of each a valve', () => {
    const { parts, places } = registerOf(engine, []);
    expect(parts).toEqual(['lifter', 'pushrod', 'rocker']);
    expect(places).toHaveLength(3 * 4);
  });

  it('are followers and their shims where the cam is overhead', () => {
    const bucket = { ...pushrodGear, kind: 'overhead-bucket', adjuster: { place: 'shim-under-bucket' } } as const;
    expect(partsOf(engineOf({ valveGear: bucket }))).toEqual(['follower', 'shim']);
    const finger = { ...pushrodGear, kind: 'overhead-finger', adjuster: { place: 'finger-pivot' } } as const;
    expect(partsOf(engineOf({ valveGear: finger }))).toEqual(['follower']);
    expect(partsOf(engineOf({ valveGear: { ...finger, adjustment: 'hydraulic' } }))).toEqual(['lifter', 'follower']);
    expect(partsOf(engineOf({ valveGear: { ...pushrodGear, kind: 'overhead-rocker' } }))).toEqual(['rocker']);
  });

  it('are unknown where the sheet does not describe the valve gear', () => {
    const { valveGear: _, ...bare } = engine;
    expect(registerOf(bare, [])).toMatchObject({ parts: [], places: [], notes: [] });
  });

  it('come with the note that a new cam takes new flat followers', () => {
    expect(registerOf(engine, []).notes.join(' ')).toMatch(/new cam takes new flat followers/i);
    const roller = registerOf(engineOf({ valveGear: { ...pushrodGear, follower: 'roller' } }), []);
    expect(roller.notes.join(' ')).not.toMatch(/new cam/i);
  });

  it('goes back to its own place when it is used', () => {
    expect(judgePart(engine, [tagged()], fitting({}))).toEqual({ ok: true, value: { tagged: true } });
  });

  it('goes to no other place when it is used, and the refusal names both', () => {
    expect(judgePart(engine, [], fitting({ to: valve(2), from: valve(1) }))).toEqual({
      ok: false,
      fault: { code: 'used-part-elsewhere', part: 'lifter', from: valve(1), to: valve(2) },
    });
    expect(judgePart(engine, [], fitting({ to: valve(1, 'exhaust') })).ok).toBe(false);
  });

  it('goes anywhere that is free when it is new', () => {
    expect(judgePart(engine, [tagged()], fitting({ to: valve(2), from: 'new' })).ok).toBe(true);
    const taken: Fact = { kind: 'part-fitted', data: fitting({}) };
    expect(judgePart(engine, [taken], fitting({ from: 'new' }))).toMatchObject({ fault: { code: 'place-taken' } });
  });

  it('goes back the same end up and the same face to the front', () => {
    const rod = tagged({ part: 'pushrod', end: 'cup end up', face: 'dot to the front' });
    const back = fitting({ part: 'pushrod', end: 'cup end up', face: 'dot to the front' });
    expect(judgePart(engine, [rod], back).ok).toBe(true);
    expect(judgePart(engine, [rod], { ...back, end: 'ball end up' })).toMatchObject({
      fault: { code: 'other-end', tagged: 'cup end up', given: 'ball end up' },
    });
    expect(judgePart(engine, [rod], { ...back, face: 'dot to the rear' })).toMatchObject({
      fault: { code: 'other-face' },
    });
  });

  it('is taken at the word of the person where nobody tagged it, and the answer says so', () => {
    expect(judgePart(engine, [], fitting({}))).toEqual({ ok: true, value: { tagged: false } });
  });

  it('is not fitted at a valve or in a kind that the engine does not have', () => {
    expect(judgePart(engine, [], fitting({ to: valve(9), from: 'new' }))).toMatchObject({
      fault: { code: 'unknown-valve' },
    });
    expect(judgePart(engine, [], fitting({ part: 'shim' }))).toMatchObject({ fault: { code: 'unknown-part' } });
  });

  it('shows wrong when the record holds a used part from another place', () => {
    const swapped: Fact = { kind: 'part-fitted', data: fitting({ to: valve(2), from: valve(1) }) };
    const place = registerOf(engine, [swapped]).places.find((one) => one.part === 'lifter' && one.valve.cylinder === 2);
    expect(place?.state).toBe('wrong');
    expect(registerOf(engine, [swapped]).finished).toBe(false);
  });

  it('are all back when every place is filled', () => {
    const { places } = registerOf(engine, []);
    const back = places.map(({ part, valve: to }): Fact => ({ kind: 'part-fitted', data: { part, to, from: 'new' } }));
    expect(registerOf(engine, back).finished).toBe(true);
    expect(registerOf(engine, back.slice(1)).finished).toBe(false);
  });
});

describe('record of valve setting', () => {
  const set = (which: ValveId): Fact => ({
    kind: 'valve-set',
    data: { valve: which, method: 'stop', adjustment: 'lash', condition: 'cold' },
  });
  const again = (which: ValveId, result: 'good' | 'bad'): Fact => ({
    kind: 'valve-rechecked',
    data: { valve: which, result, seen: 'feeler drags' },
  });
  const stateOf = (...facts: Fact[]) => valveRecord(engine, facts).valves[0]?.state;

  it('has one line for every valve, open until it is set', () => {
    const { valves, allSet } = valveRecord(engine, []);
    expect(valves.map((one) => one.state)).toEqual(['open', 'open', 'open', 'open']);
    expect(allSet).toBe(false);
  });

  it('follows a valve from set to checked, and back to set when it is set again', () => {
    expect(stateOf(set(valve(1)))).toBe('set');
    expect(stateOf(set(valve(1)), again(valve(1), 'good'))).toBe('checked');
    expect(stateOf(set(valve(1)), again(valve(1), 'bad'))).toBe('bad');
    expect(stateOf(set(valve(1)), again(valve(1), 'bad'), set(valve(1)))).toBe('set');
  });

  it('does not count a look at a valve that was never set', () => {
    expect(stateOf(again(valve(1), 'good'))).toBe('open');
  });

  it('is all set, and all checked, only when every valve is', () => {
    const valves = valveRecord(engine, []).valves.map((one) => one.valve);
    const sets = valves.map(set);
    expect(valveRecord(engine, sets)).toMatchObject({ allSet: true, allChecked: false });
    const looked = valves.map((one) => again(one, 'good'));
    expect(valveRecord(engine, [...sets, ...looked])).toMatchObject({ allSet: true, allChecked: true });
    expect(valveRecord(engine, [...sets, again(valves[2]!, 'bad')]).allSet).toBe(false);
  });
});
