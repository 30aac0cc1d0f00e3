/** Given a record, when somebody wants a photo recorded. */
import { describe, expect, it } from 'vitest';
import { engineOf } from '../../plan/engine.suite.js';
import type { EntryData } from '../entry.js';
import { readEntryData } from '../reading/index.js';
import { chainOf, idOf, SAMPLES_V1, type Wish } from '../samples.suite.js';
import { foldEntries } from '../state.js';
import { type Command, decide } from './index.js';

const sample = SAMPLES_V1['photo-taken'];
const photo = (over: Partial<EntryData['photo-taken']> = {}): Command => ({
  kind: 'photo-taken',
  data: { ...sample, ...over },
});
const given = (...wishes: readonly Wish[]) => foldEntries(chainOf(wishes), engineOf());

describe('recording a photo', () => {
  it('records it of any place, with or without words, before there is a sheet', () => {
    expect(decide(given(), photo())).toEqual({ ok: true, value: [photo()] });
    expect(decide(foldEntries([]), photo({ about: 'the oil pan', words: '' })).ok).toBe(true);
  });

  it('has nothing to add when the same picture of the same place is said in the same words', () => {
    expect(decide(given(photo()), photo())).toEqual({ ok: true, value: [] });
    const other = photo({ about: 'hole:head/1' });
    expect(decide(given(photo()), other)).toEqual({ ok: true, value: [other] });
  });

  it('is struck out like any entry, and may be recorded again afterwards', () => {
    const strike = { kind: 'struck-out', data: { entry: idOf(1), reason: 'another hole' } };
    const state = given(photo(), strike);
    expect(state.entries[0]?.struck?.reason).toBe('another hole');
    expect(decide(state, photo())).toEqual({ ok: true, value: [photo()] });
  });

  it('refuses a picture of more than 8 MB', () => {
    expect(decide(given(), photo({ bytes: 8 * 1024 * 1024 })).ok).toBe(true);
    expect(decide(given(), photo({ bytes: 8 * 1024 * 1024 + 1 }))).toEqual({
      ok: false,
      fault: { code: 'photo-too-large', bytes: 8_388_609, most: 8_388_608 },
    });
  });

  it.each([
    ['photo', 'ABC'],
    ['photo', sample.photo.toUpperCase()],
    ['type', 'image/svg+xml'],
    ['bytes', 0],
    ['width', -1],
    ['height', 0.5],
    ['about', ' '],
    ['about', 'x'.repeat(201)],
  ])('refuses %s = %j', (field, value) => {
    expect(readEntryData('photo-taken', { ...sample, [field]: value })).toMatchObject({
      ok: false,
      fault: { code: 'wrong-shape', at: field },
    });
  });

  it('leaves the plans of joints and valves alone', () => {
    expect(given(photo()).facts).toEqual([]);
  });
});
