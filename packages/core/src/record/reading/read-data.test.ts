import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { EntryKind } from '../entry.js';
import { chainOf, SAMPLES_V1 } from '../samples.suite.js';
import { ENTRY_KINDS, readEntryData, readEnvelope } from './index.js';

const samples = Object.entries(SAMPLES_V1) as [EntryKind, Record<string, unknown>][];

describe('reading the data of an entry', () => {
  it.each(samples)('%s: takes its sample of version 1', (kind, data) => {
    expect(readEntryData(kind, data)).toEqual({ ok: true, value: data });
  });

  it.each(samples)('%s: refuses a field that nobody knows, and names it', (kind, data) => {
    expect(readEntryData(kind, { ...data, extra: 1 })).toMatchObject({
      ok: false,
      fault: { code: 'wrong-shape', at: 'extra' },
    });
  });

  it.each(samples)('%s: names the first field that is wrong', (kind, data) => {
    for (const field of Object.keys(data)) {
      const wrong = readEntryData(kind, { ...data, [field]: [null] });
      expect(wrong, field).toMatchObject({ ok: false });
      if (!wrong.ok && 'at' in wrong.fault) expect(wrong.fault.at.startsWith(field)).toBe(true);
    }
  });

  it('says where, what is valid and what was given', () => {
    const fault = readEntryData('valve-rechecked', {
      ...SAMPLES_V1['valve-rechecked'],
      valve: { cylinder: 0, kind: 'intake', index: 1 },
    });
    expect(fault).toEqual({
      ok: false,
      fault: { code: 'wrong-shape', at: 'valve.cylinder', expected: 'a whole number from 1', given: '0' },
    });
  });

  it('leaves out what may be left out, and misses what may not', () => {
    const { reading: _, ...act } = SAMPLES_V1['act-done'];
    expect(readEntryData('act-done', act).ok).toBe(true);
    const { hole: __, ...noHole } = SAMPLES_V1['act-done'];
    expect(readEntryData('act-done', noHole)).toMatchObject({ fault: { at: 'hole', given: 'nothing' } });
  });

  it('does not take inherited fields for its own', () => {
    const hidden = Object.create(SAMPLES_V1.note) as unknown;
    expect(readEntryData('note', hidden).ok).toBe(false);
    expect(readEntryData('toString', {})).toMatchObject({ fault: { code: 'unknown-kind' } });
    expect(readEntryData('note', JSON.parse('{"about":"a","text":"b","__proto__":{"x":1}}')).ok).toBe(false);
  });

  it('refuses numbers that are not finite and texts without end', () => {
    const wild = { ...SAMPLES_V1['shim-measured'], lash: { text: 'x', value: Number.NaN, unit: 'm' } };
    expect(readEntryData('shim-measured', wild)).toMatchObject({ fault: { at: 'lash.value' } });
    expect(readEntryData('note', { about: 'x', text: 'y'.repeat(4_001) })).toMatchObject({ fault: { at: 'text' } });
  });

  it('answers for any value whatever, and shows at most a line of it', () => {
    fc.assert(
      fc.property(fc.constantFrom(...ENTRY_KINDS), fc.anything(), (kind, value) => {
        const read = readEntryData(kind, value);
        if (read.ok || read.fault.code === 'unknown-kind') return;
        expect(read.fault.given.length).toBeLessThan(60);
      }),
    );
  });
});

describe('reading an envelope', () => {
  const [entry] = chainOf([{ kind: 'kind-of-tomorrow', data: { anything: [1, 2] }, version: 7 }]);
  const { sequence: _, receivedAt: __, ...envelope } = entry!;

  it('keeps a kind that nobody knows yet', () => {
    expect(readEnvelope(envelope)).toEqual({ ok: true, value: envelope });
  });

  it.each([
    ['id', 'not-a-uuid'],
    ['id', '01890000-0000-4000-8000-000000000001'],
    ['counter', 0],
    ['counter', 1.5],
    ['at', 'yesterday'],
    ['at', '2026-03-01T18:20:00'],
    ['person', '  '],
    ['hash', 'ABC'],
    ['data', undefined],
  ])('refuses %s = %j', (field, value) => {
    expect(readEnvelope({ ...envelope, [field]: value })).toMatchObject({ ok: false, fault: { at: field } });
  });
});
