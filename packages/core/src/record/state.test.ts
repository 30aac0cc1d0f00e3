import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allPlaced, doNext } from '../plan/bench.suite.js';
import { engineOf, headJoint } from '../plan/engine.suite.js';
import { registerOf, valveRecord, walk } from '../plan/index.js';
import { headCode } from './chain.js';
import { inOrder, type LogEntry } from './order.js';
import { chainOf, idOf, SAMPLES_V1, type Wish } from './samples.suite.js';
import { emptyRecord, evolve, foldEntries, type RecordState, refold } from './state.js';

const engine = engineOf();
const allSamples = Object.entries(SAMPLES_V1).map(([kind, data]): Wish => ({ kind, data }));
const kinds = (state: RecordState) => state.facts.map((fact) => fact.kind);
const note = (text: string): Wish => ({ kind: 'note', data: { about: 'head', text } });
const strike = (number: number, reason = 'mistake'): Wish => ({
  kind: 'struck-out',
  data: { entry: idOf(number), reason },
});
const skip = (what: string): Wish => ({ kind: 'skipped', data: { what, reason: 'later' } });

describe('order of the log', () => {
  it('is the server’s sequence across devices and the counter within one', () => {
    const [a1, a2] = chainOf([note('a1'), note('a2')]);
    const [b1] = chainOf([note('b1')], 'laptop', 100);
    const late = [
      { ...a1!, sequence: 5 },
      { ...a2!, sequence: 2 },
      { ...b1!, sequence: 3 },
    ];
    expect(inOrder(late).map((one) => one.id)).toEqual([a1!.id, b1!.id, a2!.id]);
  });

  it('puts entries that no server has yet last, and takes the accepted copy of an entry', () => {
    const [a1, a2] = chainOf([note('a1'), note('a2')]);
    const { sequence: _, receivedAt: __, ...waiting } = a2!;
    expect(inOrder([waiting, a1!]).map((one) => one.id)).toEqual([a1!.id, a2!.id]);
    expect(inOrder([waiting, a2!, a1!])).toHaveLength(2);
    expect(inOrder([waiting, a2!])[0]?.sequence).toBe(2);
  });
});

describe('folding the log', () => {
  it('understands every sample entry of version 1', () => {
    const state = foldEntries(chainOf(allSamples), engine);
    expect(state.entries.every((one) => one.reading.understood)).toBe(true);
    // The last sample strikes out the first, which adopts the sheet.
    expect(state.entries[0]?.struck?.reason).toBe('wrong hole');
    const before = foldEntries(chainOf(allSamples.slice(0, -1)), engine);
    expect(before.sheet).toEqual({ name: 'two-cylinder test engine', text: 'gudgeon: 1\n', entry: idOf(1) });
  });

  it('leaves a struck-out entry in the list, with its reason, and out of the facts', () => {
    const state = foldEntries(chainOf([skip('a'), skip('b'), strike(1, 'not skipped after all')]));
    expect(state.facts.map((fact) => 'what' in fact.data && fact.data.what)).toEqual(['b']);
    expect(state.entries).toHaveLength(3);
    expect(state.entries[0]?.struck).toEqual({ by: idOf(3), reason: 'not skipped after all' });
  });

  it('brings an entry back when the entry that struck it out is struck out', () => {
    const state = foldEntries(chainOf([skip('a'), strike(1), strike(2, 'it was right')]));
    expect(kinds(state)).toEqual(['skipped']);
    expect(state.entries.map((one) => one.struck?.reason)).toEqual([undefined, 'it was right', undefined]);
  });

  it('survives entries that strike each other or themselves out', () => {
    expect(foldEntries(chainOf([strike(2), strike(1), strike(3)])).entries).toHaveLength(3);
  });

  it('leaves a question behind where the record of an act was struck out', () => {
    const state = foldEntries(chainOf([{ kind: 'act-done', data: SAMPLES_V1['act-done'] }, strike(1)]));
    expect(state.facts).toEqual([
      { kind: 'act-struck', data: { joint: 'head', stage: 1, hole: '2', instance: 1 }, entry: idOf(2) },
    ]);
  });

  it('keeps what it does not understand, and folds the rest', () => {
    const state = foldEntries(
      chainOf([{ kind: 'bore-honed', data: { oddity: true } }, skip('a'), { ...note('x'), version: 3 }]),
    );
    expect(kinds(state)).toEqual(['skipped']);
    expect(state.entries.map((one) => one.reading.understood)).toEqual([false, true, false]);
  });

  it('takes an entry once, however often it arrives', () => {
    const [first, second] = chainOf([skip('a'), skip('b')]);
    const state = foldEntries([first!, second!, first!]);
    expect(evolve(evolve(state, first!), second!)).toEqual(state);
    expect(state.entries).toHaveLength(2);
  });

  it('arrives at the same state entry by entry as all at once', () => {
    const entries = chainOf(allSamples);
    const stepwise = entries.reduce(evolve, emptyRecord(engine));
    expect(stepwise).toEqual(foldEntries(entries, engine));
  });

  it('reads anew only what is new or was changed on its way, and arrives at the same state', () => {
    const all = chainOf([...allSamples, strike(3)]);
    const before = foldEntries(all.slice(0, 9));
    const again = refold(before, all);
    expect(again).toEqual(foldEntries(all));
    expect(again.entries[4]!.reading).toBe(before.entries[4]!.reading);
    const swapped = [{ ...all[0]!, hash: all[1]!.hash }, ...all.slice(1)];
    expect(refold(before, swapped).entries[0]!.reading).not.toBe(before.entries[0]!.reading);
  });

  it('uses the last adopted sheet', () => {
    const sheet = (text: string): Wish => ({ kind: 'sheet-adopted', data: { name: text, text, reason: 'r' } });
    expect(foldEntries(chainOf([sheet('one'), sheet('two')])).sheet?.text).toBe('two');
    expect(foldEntries(chainOf([sheet('one'), sheet('two'), strike(2)])).sheet?.text).toBe('one');
  });
});

describe('order of arrival', () => {
  const valve = (cylinder: number) => ({ cylinder, kind: 'intake', index: 1 });
  const bench = chainOf(
    [...doNext(headJoint, allPlaced(headJoint), 4)].map(({ kind, data }): Wish => ({ kind, data })),
    'bench-phone',
    0,
  );
  const laptop = chainOf(
    [
      { kind: 'valve-set', data: { valve: valve(1), method: 'stop', adjustment: 'lash', condition: 'cold' } },
      { kind: 'valve-rechecked', data: { valve: valve(1), result: 'good', seen: 'drags' } },
      { kind: 'part-fitted', data: { part: 'lifter', to: valve(2), from: 'new' } },
    ],
    'laptop',
    100,
  );

  const shuffled = (entries: readonly LogEntry[]): fc.Arbitrary<LogEntry[]> =>
    fc.shuffledSubarray([...entries], { minLength: entries.length, maxLength: entries.length });

  it('of the same entries does not change the record at all', () => {
    const all = [...bench, ...laptop];
    const whole = foldEntries(all, engine);
    fc.assert(
      fc.property(shuffled(all), (arrived) => {
        expect(arrived.reduce(evolve, emptyRecord(engine))).toEqual(whole);
      }),
    );
  });

  it('at the server does not change what independent facts of two devices mean', () => {
    const results = (state: RecordState) => {
      const { recorded: _, ...joint } = walk(headJoint, state.facts);
      return { joint, valves: valveRecord(engine, state.facts), parts: registerOf(engine, state.facts) };
    };
    const whole = results(foldEntries([...bench, ...laptop], engine));
    const merged = fc.array(fc.boolean(), { minLength: bench.length + laptop.length, maxLength: 40 });
    fc.assert(
      fc.property(merged, (turns) => {
        const [left, right] = [[...bench], [...laptop]];
        const arrived = turns.flatMap((turn) => (turn ? left : right).shift() ?? (turn ? right : left).shift() ?? []);
        const sequenced = [...arrived, ...left, ...right].map((one, index) => ({ ...one, sequence: index + 1 }));
        expect(results(foldEntries(sequenced, engine))).toEqual(whole);
        expect(headCode(sequenced)).toBe(headCode([...bench, ...laptop]));
      }),
    );
  });
});
