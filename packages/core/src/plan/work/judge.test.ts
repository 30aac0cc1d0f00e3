import { describe, expect, it } from 'vitest';
import { doing, fact, Person } from './bench-person.suite.js';
import { judgeWork } from './judge.js';
import type { WorkAct } from './model.js';
import { workStanding } from './standing.js';
import { planNamed } from './work.suite.js';

const V8 = planNamed('quernside');
const act = (id: string) => V8.byId.get(id) as WorkAct;
const fault = (...[facts, given]: [Parameters<typeof judgeWork>[1], Parameters<typeof judgeWork>[2]]) => {
  const judged = judgeWork(V8, facts, given);
  return judged.ok ? 'fine' : judged.fault;
};
/** Everything before an act, done in order. */
const upTo = (rule: string) =>
  V8.acts
    .slice(
      0,
      V8.acts.findIndex((one) => one.rule === rule),
    )
    .map((one) => doing(one));
const looked = (facts: ReturnType<typeof upTo>) => {
  const person = new Person(V8);
  person.facts.push(...facts);
  for (const { act: one } of workStanding(V8, facts).looksOwed) person.look(one);
  return person.facts;
};

describe('an act is recorded', () => {
  it('when nothing hinders it', () => {
    expect(fault([], doing(act('numbers-read')))).toBe('fine');
  });
  it('not while it waits, and the refusal names what for and why', () => {
    expect(fault([], doing(act('whole-turn')))).toBe('fine');
    expect(fault([], doing(act('fluids-drained')))).toEqual({
      code: 'act-waits',
      act: 'fluids-drained',
      waitsFor: [
        { kind: 'act', act: 'identity-agrees', why: 'comes after: find out which engine it is and how it runs' },
      ],
    });
  });
  it('not twice: what changed is reported first', () => {
    expect(fault([doing(act('whole-turn'))], doing(act('whole-turn')))).toEqual({
      code: 'already-done',
      act: 'whole-turn',
    });
    const again = [
      doing(act('whole-turn')),
      fact('work-reopened', { rule: 'done-again', place: 'whole-turn', why: 'it was not hot' }),
    ];
    expect(fault(again, doing(act('whole-turn')))).toBe('fine');
  });
  it('once more when it was found bad', () => {
    const bad = doing(act('whole-turn'), 0, 'bad');
    expect(workStanding(V8, [bad]).stands.get('whole-turn')).toMatchObject({ state: 'ready', foundBad: true });
    expect(fault([bad], doing(act('whole-turn')))).toBe('fine');
  });
  it('only with the kind of answer that it asks for', () => {
    const words = fact('work-act-done', {
      act: 'oil-pressure-found',
      answer: { kind: 'list', words: 'good' },
      method: 'gauge',
    });
    expect(fault([], words)).toEqual({
      code: 'wrong-answer',
      act: 'oil-pressure-found',
      expected: 'value',
      given: 'list',
    });
  });
  it('never by a tick: empty words and a value without a figure are refused', () => {
    const value = (text: string) =>
      fact('work-act-done', { act: 'oil-pressure-found', answer: { kind: 'value', text }, method: 'gauge' });
    expect(fault([], value(' '))).toMatchObject({ code: 'nothing-said', what: 'answer' });
    expect(fault([], value('ok'))).toMatchObject({ code: 'nothing-said', what: 'figure' });
    expect(fault([], value('2.1 bar'))).toBe('fine');
  });
  it('only where the plan has it', () => {
    expect(fault([], fact('work-act-skipped', { act: 'polish-it', reason: 'x' }))).toEqual({
      code: 'no-such-act',
      given: 'polish-it',
    });
  });
});

describe('an act is skipped', () => {
  it('with a reason, stays on the list of open skips, and hinders nothing', () => {
    const skip = (reason: string) => fact('work-act-skipped', { act: 'oil-pressure-found', reason });
    expect(fault([], skip('  '))).toEqual({ code: 'nothing-said', act: 'oil-pressure-found', what: 'reason' });
    expect(fault([], skip('it does not run'))).toBe('fine');
    const standing = workStanding(V8, [skip('it does not run')]);
    expect(standing.skips.map(({ act: { id }, reason }) => [id, reason])).toEqual([
      ['oil-pressure-found', 'it does not run'],
    ]);
    expect(standing.stands.get('oil-pressure-found')?.state).toBe('skipped');
  });
  it('and may be done after all', () => {
    const facts = [fact('work-act-skipped', { act: 'oil-pressure-found', reason: 'no gauge here' })];
    expect(fault(facts, doing(act('oil-pressure-found')))).toBe('fine');
    expect(workStanding(V8, [...facts, doing(act('oil-pressure-found'))]).skips).toEqual([]);
  });
  it('never where the engine or a person is lost by it', () => {
    const before = looked(upTo('block-washed'));
    expect(fault(before, fact('work-act-skipped', { act: 'block-washed', reason: 'looks clean' }))).toMatchObject({
      code: 'cannot-skip',
    });
  });
});

describe('aids of the trial', () => {
  const out = fact('mock-up-aid-out', { aid: 'checking spring', count: 2, where: 'cylinder 1' });
  const back = (count: number) => fact('mock-up-aid-returned', { aid: 'checking spring', count });
  it('are counted out and back', () => {
    expect(workStanding(V8, [out]).aidsOut.get('checking spring')).toBe(2);
    expect(workStanding(V8, [out, back(1)]).aidsOut.get('checking spring')).toBe(1);
    expect(workStanding(V8, [out, back(2)]).aidsOut.size).toBe(0);
  });
  it('cannot come back in greater number than went out, nor as half an aid', () => {
    expect(fault([out], back(3))).toEqual({ code: 'aid-not-out', aid: 'checking spring', out: 2, given: 3 });
    expect(fault([out], back(0.5))).toMatchObject({ code: 'aid-not-counted' });
  });
  it('keep the pan, the head and the aids’ own count waiting while one is out', () => {
    for (const rule of ['aids-back', 'pan-tightened', 'head-down']) {
      const before = looked(upTo(rule));
      const id = V8.acts.find((one) => one.rule === rule)?.id ?? '';
      expect(workStanding(V8, before).stands.get(id)?.state, rule).toBe('ready');
      expect(workStanding(V8, [...before, out]).stands.get(id)?.waitsFor, rule).toContainEqual({
        kind: 'aid',
        aid: 'checking spring',
        count: 2,
        why: 'it may still be inside',
      });
    }
  });
});

describe('the signature', () => {
  const all = looked(upTo('signed-off'));
  const sign = (skips: readonly string[], words = 'sound') => fact('work-signed-off', { words, skips });
  it('waits for everything', () => {
    expect(fault(all.slice(0, -30), sign([]))).toMatchObject({ code: 'act-waits' });
    expect(fault(all, sign([]))).toBe('fine');
    expect(fault(all, sign([], ' '))).toMatchObject({ code: 'nothing-said', what: 'words' });
  });
  it('is refused over a skip that was not read', () => {
    const skipped = [
      ...all,
      fact('work-reopened', { rule: 'done-again', place: 'cautions-told', why: 'x' }),
      fact('work-act-skipped', { act: 'cautions-told', reason: 'own engine' }),
    ];
    const rest = workStanding(V8, skipped)
      .ready.filter(({ act: { id } }) => id !== 'signed-off')
      .map(({ act: one }) => doing(one));
    expect(fault([...skipped, ...rest], sign([]))).toEqual({ code: 'skips-not-read', missing: ['cautions-told'] });
    expect(fault([...skipped, ...rest], sign(['cautions-told']))).toBe('fine');
  });
  it('no longer stands once the engine is opened again', () => {
    const signed = [...all, sign([])];
    expect(workStanding(V8, signed).signedOff).toBe(true);
    expect(
      workStanding(V8, [...signed, fact('work-reopened', { rule: 'valve-covers-removed', why: 'a leak' })]).signedOff,
    ).toBe(false);
  });
});
