import { readFileSync } from 'node:fs';
import { type Engine, jointsOfHead } from '@gudgeon/core/engine';
import { loadSheet } from '@gudgeon/core/engine/load';
import { gasketChecks, registerOf, walk } from '@gudgeon/core/plan';
import { foldEntries, readEntryData, verifyChain } from '@gudgeon/core/record';
import { emptyShelf, openMemoryStore } from '@gudgeon/store/memory';
import { describe, expect, it } from 'vitest';
import { readSheetLibrary } from '../sheets/library.js';
import { DEMONSTRATION_JOB, demonstrationEntries, writeDemonstration } from './index.js';

const folder = new URL('../../../../sheets', import.meta.url).pathname;
const sheets = readSheetLibrary(folder);
const text = readFileSync(`${folder}/quernside-51-v8.yaml`, 'utf8');
const entries = demonstrationEntries(text);
const { facts, sheet } = foldEntries(entries);

function engineOf(): Engine {
  const loaded = loadSheet(text);
  if (!loaded.ok) throw new Error(loaded.fault[0]?.message);
  return loaded.value;
}
const engine = engineOf();
const walkOf = (head: number) => {
  const [joint] = jointsOfHead(engine, engine.heads[head]!.id);
  return walk(joint!, facts);
};

describe('the demonstration', () => {
  it('is a sealed chain of entries that this program understands, and says that it is invented', () => {
    expect(verifyChain(entries)).toMatchObject({ ok: true });
    for (const { kind, data } of entries) expect(readEntryData(kind, data), kind).toMatchObject({ ok: true });
    expect(sheet?.text).toBe(text);
    expect(engine.invented).toBe(true);
    expect(new Set(entries.map((entry) => entry.person))).toEqual(new Set(['Invented Person']));
  });

  it('is the same on every computer', () => {
    expect(demonstrationEntries(text)).toEqual(entries);
  });

  it('has the left head checked and tightened through every stage', () => {
    expect(gasketChecks(engine, 'left', facts)?.finished).toBe(true);
    expect(walkOf(0)).toMatchObject({ finished: true, skipped: [] });
  });

  it('has the right head in its second stage with the sixth fastener next', () => {
    const { progress, current, finished } = walkOf(1);
    expect([finished, progress.stage, progress.at]).toEqual([false, 2, 6]);
    expect(current?.kind).toBe('act');
  });

  it('has some lifters back in their own places and others still out', () => {
    const lifters = registerOf(engine, facts).places.filter((place) => place.part === 'lifter');
    expect(lifters.every((place) => place.tag !== undefined)).toBe(true);
    const states = new Set(lifters.map((place) => place.state));
    expect(states).toEqual(new Set(['fitted', 'open']));
  });

  it('is written into an empty log only', async () => {
    const store = openMemoryStore(emptyShelf(), () => '2030-05-04T08:00:00Z');
    await writeDemonstration(store, sheets);
    await writeDemonstration(store, sheets);
    expect(await store.jobs()).toMatchObject([{ job: DEMONSTRATION_JOB, count: entries.length }]);
  });
});
