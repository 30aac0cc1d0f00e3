import { readFileSync } from 'node:fs';
import { type Feature, inspectionPlan } from '@gudgeon/core/assess';
import { type Engine, jointsOfHead } from '@gudgeon/core/engine';
import { loadSheet } from '@gudgeon/core/engine/load';
import { gasketChecks, registerOf, walk } from '@gudgeon/core/plan';
import {
  type EntryData,
  foldEntries,
  foldMeasuring,
  type LogEntry,
  readEntryData,
  verifyChain,
} from '@gudgeon/core/record';
import { fitView, gateQuestion, judgeKeyed, openBench, workBenchView } from '@gudgeon/core/workbench';
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
const slotsOfFeature = ({ kind, places }: Feature) =>
  places.flatMap(({ id, stations }) => stations.map((station) => `${kind.id}/${id}/${station.id}`));
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

  // A V8 measured properly is 600 to 850 readings (trade map, section 3).
  it('has the engine measured with gauges that were held to a standard before and after', () => {
    const held = foldMeasuring(foldEntries(entries, engine));
    const slots = [...held.bySlot.keys()];
    expect(slots.length).toBeGreaterThan(600);
    expect(slots.length).toBeLessThan(850);
    const known = new Set(inspectionPlan(engine).features.flatMap(slotsOfFeature));
    expect(slots.filter((slot) => !known.has(slot))).toEqual([]);
    expect(new Set(held.checks.map(({ moment }) => moment))).toEqual(new Set(['start', 'end']));
    for (const { instrument, temperature } of [...held.bySlot.values()].flat()) {
      expect(held.instruments.has(instrument ?? '')).toBe(true);
      expect(temperature).toBeCloseTo(292.65, 6);
    }
  });

  it('shows every sort of verdict: a worn cylinder whose parts are each good, a tired main, a worn lobe, and sheets not read', () => {
    const view = fitView(openBench(engine, entries), { length: 'mm' });
    const rows = view.findings.flatMap(({ rows }) => rows);
    const found = (verdict: string) => rows.filter((one) => one.verdict === verdict).map(({ key }) => key);
    expect(found('near')).toEqual(['main-bearing.clearance@main-4', 'lifter-crown.height@6-intake-1']);
    expect(found('out')).toEqual(['piston.clearance@7', 'lobe-lift.lift@6-intake-1']);
    expect(rows.find(({ key }) => key === 'piston.clearance@7')?.words).toMatch(
      /^Every part is within its own wear limit/,
    );
    expect(view.counts.in).toBeGreaterThan(400);
    expect(view.counts['no data']).toBeGreaterThan(400);
    expect(view.again.map(({ feature }) => feature).sort()).toEqual(['lifter-crown', 'main-journal']);
  });

  it('keeps a slip struck out with the right reading beside it, and a second look at the tired main', () => {
    const struck = foldEntries(entries, engine).entries.filter((one) => one.struck !== undefined);
    expect(struck.map(({ entry }) => entry.kind)).toEqual(['measured']);
    const held = foldMeasuring(foldEntries(entries, engine));
    expect(held.bySlot.get('cylinder-bore/3/middle-thrust')).toHaveLength(1);
    expect(held.bySlot.get('main-journal/main-4/front-a')).toHaveLength(2);
  });

  it('has one decision taken, and it still stands as it was seen', () => {
    const { decisions } = fitView(openBench(engine, entries), { length: 'mm' });
    const taken = decisions.filter(({ decided }) => decided !== undefined);
    expect(taken.map(({ id, state }) => [id, state])).toEqual([['bore-oversize', 'decided']]);
  });

  it('holds no reading that the number gate would refuse or ask about without an answer', () => {
    let bench = openBench(engine, []);
    const before: LogEntry[] = [];
    const asked: string[] = [];
    for (const entry of entries) {
      const read = readEntryData(entry.kind, entry.data);
      if (entry.kind === 'measured' && read.ok) {
        const { slot, reading, instrument = '', answered = [] } = entry.data as EntryData['measured'];
        const gate = judgeKeyed(bench, slot, reading.text, { instrument });
        const question = gateQuestion(reading.text, gate);
        if (gate.level === 'impossible' || (question !== undefined && !answered.includes(question)))
          asked.push(`${slot} ${reading.text}: ${gate.level}`);
      }
      before.push(entry);
      bench = openBench(engine, before, bench);
    }
    expect(asked).toEqual([]);
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

  it('has its work begun at the heads, and goes on first with the joint that was left half tightened', () => {
    const view = workBenchView(openBench(engine, entries), { now: '2026-03-15T09:00:00+01:00' });
    expect(view.current?.act).toMatchObject({ operation: 'heads-on', opens: { place: 'tighten/head-right' } });
  });

  it('is written into an empty log only', async () => {
    const store = openMemoryStore(emptyShelf(), () => '2030-05-04T08:00:00Z');
    const told: string[] = [];
    await writeDemonstration(store, sheets, (line) => told.push(line));
    await writeDemonstration(store, sheets, (line) => told.push(line));
    expect(told).toEqual([]);
    expect(await store.jobs()).toMatchObject([{ job: DEMONSTRATION_JOB, count: entries.length }]);
  });

  it('that cannot be made is told in one line and left out; the log stays empty for real work', async () => {
    const store = openMemoryStore(emptyShelf(), () => '2030-05-04T08:00:00Z');
    const told: string[] = [];
    const broken = () => {
      throw new Error('the decision is not offered\nat a place in the program');
    };
    await writeDemonstration(store, sheets, (line) => told.push(line), broken);
    expect(told).toEqual(['The invented demonstration is left out: the decision is not offered']);
    expect(await store.jobs()).toEqual([]);
  });
});
