import { describe, expect, it } from 'vitest';
import { engineOf } from '../../plan/engine.suite.js';
import { runningFacts } from '../running.js';
import { chainOf, type Wish } from '../samples.suite.js';
import { foldEntries } from '../state.js';
import { type Command, decide } from './index.js';

const pa = (value: number, text = `${value} Pa`) => ({ text, value, unit: 'Pa' }) as const;
const kelvin = (value: number) => ({ text: `${value} K`, value, unit: 'K' }) as const;
const after = (...wishes: readonly Wish[]) => foldEntries(chainOf(wishes), engineOf());
const answer = (command: Command, ...before: readonly Wish[]) => {
  const decision = decide(after(...before), command);
  return decision.ok ? decision.value.length : decision.fault.code;
};
const intake = { cylinder: 1, kind: 'intake', index: 1 } as const;
const begun = { kind: 'run-in-begun', data: { step: 1 } } as const;
const dryRead = { kind: 'compression-read', data: { cylinder: 1, reading: pa(1e6), wet: false } } as const;

describe('what may be recorded while the engine is primed, started and run in', () => {
  it('oil is seen at a valve once, and only at one that the engine has', () => {
    const seen = { kind: 'oil-seen', data: { valve: intake } } as const;
    expect(answer(seen)).toBe(1);
    expect(answer(seen, seen)).toBe(0);
    expect(answer({ kind: 'oil-seen', data: { valve: { ...intake, cylinder: 9 } } })).toBe('unknown-valve');
  });
  it('a go at the starter has seconds that can be, and no pressure below zero', () => {
    const start = (data: object) =>
      answer({ kind: 'start-tried', data: { crankedSeconds: 5, outcome: 'runs', ...data } } as Command);
    expect(start({})).toBe(1);
    expect(start({ crankedSeconds: -1 })).toBe('number-out-of-range');
    expect(start({ pressureAfterSeconds: 900 })).toBe('number-out-of-range');
    expect(start({ pressure: pa(-1) })).toBe('reading-out-of-range');
    expect(start({ pressure: kelvin(300) })).toBe('other-unit');
  });
  it('the clock begins a step that the schedule has, once, and stops only where it runs', () => {
    expect(answer(begun)).toBe(1);
    expect(answer(begun, begun)).toBe(0);
    expect(answer({ kind: 'run-in-begun', data: { step: 2 } }, begun)).toBe(1);
    expect(answer({ kind: 'run-in-begun', data: { step: 7 } })).toBe('unknown-step');
    const stop = { kind: 'run-in-stopped', data: { why: 'knock' } } as const;
    expect(answer(stop)).toBe('not-running');
    expect(answer(stop, begun)).toBe(1);
    expect(answer(stop, begun, stop)).toBe('not-running');
  });
  it('a gauge gives a figure of its own kind, the load is told in words', () => {
    const read = (data: object) => answer({ kind: 'running-read', data } as Command);
    expect(read({ what: 'oil-pressure', reading: pa(3e5) })).toBe(1);
    expect(read({ what: 'load-words', words: 'half' })).toBe(1);
    expect(read({ what: 'load-words', reading: pa(3e5) })).toBe('one-answer');
    expect(read({ what: 'oil-pressure', words: 'fine' })).toBe('one-answer');
    expect(read({ what: 'oil-pressure', reading: pa(3e5), words: 'fine' })).toBe('one-answer');
    expect(read({ what: 'oil-temperature', reading: pa(3e5) })).toBe('other-unit');
    expect(read({ what: 'oil-temperature', reading: kelvin(-2) })).toBe('reading-out-of-range');
    expect(read({ what: 'speed', reading: { text: '90000 rpm', value: 9424, unit: 'rad/s' } })).toBe(
      'reading-out-of-range',
    );
  });
  it('knows who read it and when', () => {
    const [fact] = runningFacts(after(begun));
    expect(fact).toMatchObject({ kind: 'run-in-begun', by: 'A. Fitter', at: '2026-03-01T18:20:00+01:00' });
  });
  it('what was struck out counts for nothing', () => {
    const strike = { kind: 'struck-out', data: { entry: '01890000-0000-7000-8000-000000000001', reason: 'slip' } };
    expect(runningFacts(after(begun, strike))).toEqual([]);
  });
});

describe('what may be recorded of compression, leakage and service', () => {
  it('a wet reading comes after a dry one of the same cylinder', () => {
    const wet = { kind: 'compression-read', data: { cylinder: 1, reading: pa(1e6), wet: true } } as const;
    expect(answer(wet)).toBe('dry-first');
    expect(answer(wet, dryRead)).toBe(1);
    expect(answer({ ...wet, data: { ...wet.data, cylinder: 2 } }, dryRead)).toBe('dry-first');
  });
  it('a cylinder that the engine has not, and a pressure below zero, are refused', () => {
    const read = (over: object) => answer({ ...dryRead, data: { ...dryRead.data, ...over } } as Command);
    expect(read({ cylinder: 5 })).toBe('unknown-cylinder');
    expect(read({ reading: pa(-5) })).toBe('reading-out-of-range');
    expect(read({ reading: pa(0) })).toBe(1);
  });
  it('no cylinder holds more than it is given', () => {
    const leak = (supply: number, held: number) =>
      answer({ kind: 'leakage-read', data: { cylinder: 1, supply: pa(supply), held: pa(held) } });
    expect(leak(5e5, 4e5)).toBe(1);
    expect(leak(5e5, 5e5)).toBe(1);
    expect(leak(4e5, 5e5)).toBe('holds-more');
    expect(leak(0, 0)).toBe('reading-out-of-range');
  });
  it('service is due at hours or on a day that the calendar has', () => {
    const plan = (data: object) =>
      answer({ kind: 'service-planned', data: { what: 'oil', from: 'own rule', ...data } } as Command);
    expect(plan({})).toBe('never-due');
    expect(plan({ dueHours: 50 })).toBe(1);
    expect(plan({ dueHours: -1 })).toBe('number-out-of-range');
    expect(plan({ dueDate: '2028-02-29' })).toBe(1);
    expect(plan({ dueDate: '2027-02-29' })).toBe('not-a-day');
    expect(plan({ dueDate: 'in spring' })).toBe('not-a-day');
  });
  it('done is what was planned', () => {
    const done = { kind: 'service-done', data: { what: 'oil' } } as const;
    expect(answer(done)).toBe('unknown-service');
    expect(answer(done, { kind: 'service-planned', data: { what: 'oil', dueHours: 50, from: 'own rule' } })).toBe(1);
  });
  it('a counter of hours does not run backward', () => {
    const hours = (count: number) => ({ kind: 'hours-noted', data: { hours: count } }) as const;
    expect(answer(hours(5), hours(4))).toBe(1);
    expect(answer(hours(4), hours(4))).toBe(1);
    expect(answer(hours(3), hours(4))).toBe('hours-back');
  });
});
