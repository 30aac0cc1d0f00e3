import { describe, expect, it } from 'vitest';
import type { Command } from '../../record/index.js';
import { nextAction, workBenchView, workReturnView, workView } from '../index.js';
import { answerTo, ENGINES, keeping, WorkScribe } from './work-scribe.suite.js';

const now = '2026-01-02T10:00:00+01:00';
const SHELLS = [1, 2, 3, 4, 5].map((main) => `main-shell-in@main-${main}`);

/** A head bolt is in and brought to its first stage; the others are not. */
const FIRST_BOLT: Command = {
  kind: 'act-done',
  data: { joint: 'head-left', stage: 1, hole: '1', instance: 1, round: 1, target: '30 N·m', seen: 'reached' },
};

describe('one act at the bench', () => {
  it('is the next of its operation, with the one after it greyed', () => {
    const scribe = keeping('v8').beginAt('crankshaft').done('saddles-wiped', SHELLS[0]!);
    expect(workBenchView(scribe.bench, { now })).toMatchObject({
      title: 'Lay the crankshaft in and tighten the mains',
      current: { act: { id: SHELLS[1] } },
      next: { id: SHELLS[2], place: 'main 3' },
      progress: { done: 2, of: 9, words: '2 of 9 done, part 1 of 2' },
    });
  });
  it('is said aloud with its place first, then what to do, then what to tell', () => {
    const { spoken } = workBenchView(keeping('v8').beginAt('crankshaft').done('saddles-wiped').bench, { now });
    expect(spoken).toMatch(/^Main 1\. Press the shells in by place.* Tell: Which shell, hole seen open\.$/);
  });
  it('is the one that the person chose, while it can be begun', () => {
    const scribe = keeping('v8').beginAt('crankshaft').done('saddles-wiped');
    const view = () => workBenchView(scribe.bench, { now, act: SHELLS[3]! });
    expect(view().current?.act.id).toBe(SHELLS[3]);
    scribe.done(SHELLS[3]!);
    expect(view().current?.act.id).toBe(SHELLS[0]);
  });
  it('is taken up from the shop by whoever chooses it, and not offered before', () => {
    const scribe = keeping('v8').beginAt('machining').done('sizes-decided', 'order-written', 'fasteners-final');
    expect(workBenchView(scribe.bench, { now }).current?.act.awaits).toBeUndefined();
    const view = workBenchView(scribe.bench, { now, act: 'mains-honed' });
    expect(view.current?.act).toMatchObject({ id: 'mains-honed', state: 'away', awaits: 'shop' });
  });
  it('says what a chosen act waits for', () => {
    const view = workBenchView(keeping('v8').beginAt('crankshaft').bench, { now, act: 'crank-laid-in' });
    expect(view.current).toBeUndefined();
    expect(view.nothing).toMatch(/^Lube the shell faces.* waits\. .*it is the step before/);
  });
  it('says that a chunk is complete when its last act was done, and not before', () => {
    const scribe = keeping('v8')
      .beginAt('crankshaft')
      .done('saddles-wiped', ...SHELLS, 'seal-half-in', 'crank-laid-in');
    expect(workBenchView(scribe.bench, { now }).complete).toBeUndefined();
    scribe.done('main-cap-on@main-1');
    expect(workBenchView(scribe.bench, { now }).complete).toBe(
      'Lay the crankshaft in and tighten the mains, part 1. Complete.',
    );
  });
  it('tells the cautions and the consumables of its operation', () => {
    const view = workBenchView(keeping('v8').beginAt('crankshaft').bench, { now });
    expect(view.cautions).toEqual(view.operation?.cautions);
    expect(view.cautions.length).toBeGreaterThan(0);
  });
  it('ends with the signature, after which nothing is left', () => {
    const scribe = keeping('six').beginAt('sign-off').done('service-told', 'cautions-told', 'finished-photographed');
    expect(workBenchView(scribe.bench, { now }).current?.act.answer).toBe('sign-off');
    scribe.wish({ kind: 'sign', words: 'all read', skips: workView(scribe.bench).skips.map(({ id }) => id) });
    expect(workBenchView(scribe.bench, { now, arrival: 'opened-again' })).toMatchObject({
      nothing: 'All of it is signed.',
    });
    expect(workReturnView(scribe.bench, 'paused', now)).toBeUndefined();
    expect(nextAction(scribe.bench)).toMatchObject({ place: 'record', finished: true });
  });

  it.each(ENGINES)('is followed by the act that was named as the next, on %s', (_, engine) => {
    const scribe = new WorkScribe(engine).beginAt('final-wash');
    let compared = 0;
    for (let step = 0; step < 80; step += 1) {
      const view = workBenchView(scribe.bench, { now });
      const act = view.current!.act;
      if (act.opens?.answers === true) break;
      scribe.wish({ kind: 'done', act: act.id, answer: answerTo(scribe.act(act.id)), method: 'by hand' });
      if (view.next === undefined) continue;
      expect(workBenchView(scribe.bench, { now }).current?.act.id, `after ${act.id}`).toBe(view.next.id);
      compared += 1;
    }
    expect(compared).toBeGreaterThan(20);
  });
});

describe('coming back to the whole work', () => {
  it('asks for the last three acts, each with what was recorded', () => {
    const scribe = keeping('v8')
      .beginAt('crankshaft')
      .done('saddles-wiped', ...SHELLS);
    const back = workReturnView(scribe.bench, 'other-person', now);
    expect(back?.verify.map(({ act }) => act)).toEqual(SHELLS.slice(-3));
    expect(back?.verify[0]).toMatchObject({ was: 'as it was felt, by hand', mayRepeat: true });
    expect(back?.words).toMatch(/^Another person worked here before\. You were here: Press the shells in/);
    expect(back?.leftBadly).toBeUndefined();
  });
  it('says where it was left badly, and why', () => {
    const scribe = keeping('v8')
      .beginAt('crankshaft')
      .done('saddles-wiped', ...SHELLS, 'seal-half-in', 'crank-laid-in');
    expect(workReturnView(scribe.bench, 'paused', now)?.leftBadly).toContain('put the caps on now');
  });
  it('reads back the card of whoever stopped, though no act was done', () => {
    const scribe = keeping('v8');
    scribe.wish({ kind: 'leave', halfDone: '', loose: '', missing: 'one dowel', uncovered: '', doubt: '' });
    const back = workReturnView(scribe.bench, 'opened-again', now);
    expect(back?.left?.lines).toEqual([{ about: 'missing', text: 'one dowel' }]);
    expect(back?.verify).toEqual([]);
  });
  it('asks for nothing on an engine that nobody has touched', () => {
    expect(workReturnView(keeping('v8').bench, 'opened-again', now)).toBeUndefined();
  });
});

describe('a joint that is half tightened', () => {
  const scribe = keeping('v8').beginAt('heads-on');
  const { holes } = scribe.engine.joints.find(({ id }) => id === 'head-left')!;
  for (const { id, fastener, onThread, underHead } of holes)
    scribe.append({
      kind: 'fastener-placed',
      data: { joint: 'head-left', hole: id, instance: 1, fastener, condition: 'new', onThread, underHead },
    });
  scribe.append(FIRST_BOLT);

  it('is offered before everything else, on whatever the plan waits', () => {
    const first = workView(scribe.bench).now[0]?.offers[0];
    expect(first?.act.id).toBe('head-tightened@head-left');
    expect(first?.pause).toMatch(/^head bolts, left head is half tightened \(.*\): finish it first\.$/);
    expect(workBenchView(scribe.bench, { now }).current?.act.id).toBe('head-tightened@head-left');
    expect(nextAction(scribe.bench).place).toBe('tighten/head-left');
  });
  it('is named to whoever comes back', () => {
    expect(workReturnView(scribe.bench, 'paused', now)?.leftBadly).toMatch(/left head is half tightened/);
  });
});

describe('an engine that stood for more than a month', () => {
  const scribe = keeping('v8').beginAt('camshaft').done('follower-bores-free', 'cam-lubed');
  const stood = (when: string) => workReturnView(scribe.bench, 'opened-again', when)?.stood ?? [];

  it('is looked over for what standing does, after thirty days and not before', () => {
    expect(stood('2026-01-31T09:00:00+01:00')).toEqual([]);
    expect(stood('2026-02-01T10:00:00+01:00').length).toBeGreaterThan(3);
  });
  it('has lost the lube from its lobes, which a cam that is not in has not', () => {
    const lobes = /lobes and followers: what was put on has drained/;
    expect(stood('2026-03-01T10:00:00+01:00').some((line) => lobes.test(line))).toBe(true);
    const before = keeping('v8').done('numbers-read');
    const lines = workReturnView(before.bench, 'opened-again', '2026-03-01T10:00:00+01:00')?.stood ?? [];
    expect(lines.length).toBeGreaterThan(0);
    expect(lines.some((line) => lobes.test(line))).toBe(false);
  });
  it('is asked about rust where the wash was left out of the record: that it was not told is no proof', () => {
    expect(stood('2026-03-01T10:00:00+01:00').some((line) => /rust/.test(line))).toBe(true);
  });
  it('is not asked twice: what is recorded today is today', () => {
    expect(workReturnView(scribe.bench, 'paused', '2026-01-01T11:00:00+01:00')?.stood).toEqual([]);
  });
});
