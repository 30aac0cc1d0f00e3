import { describe, expect, it } from 'vitest';
import { fact, Person } from './bench-person.suite.js';
import type { WorkFactData } from './facts.js';
import { judgeWork } from './judge.js';
import { offers } from './offers.js';
import { withOwnActs } from './own-acts.js';
import { workStanding } from './standing.js';
import { allBefore, planNamed } from './work.suite.js';

const V8 = planNamed('quernside');
const OWN: WorkFactData['work-act-added'] = {
  id: 'own-1',
  after: 'crank-spins',
  before: 'crank-float',
  does: 'Turn the crank by the spring balance.',
  ask: 'Pull',
  answer: 'value',
  asked: 'force',
  minutes: 5,
  critical: false,
  why: 'to compare with last year',
};
const added = fact('work-act-added', OWN);
const codeOf = (data: Partial<WorkFactData['work-act-added']>, facts = [] as (typeof added)[]) => {
  const judged = judgeWork(withOwnActs(V8, facts), facts, fact('work-act-added', { ...OWN, ...data }));
  return judged.ok ? 'fine' : judged.fault.code;
};

describe('an act that the person puts into the plan', () => {
  it('stands right after the one it follows, at the same place, and its reason stays with it', () => {
    const plan = withOwnActs(V8, [added]);
    const place = plan.acts.findIndex(({ id }) => id === 'own-1');
    expect(plan.acts[place - 1]?.id).toBe('crank-spins');
    expect(plan.acts[place]).toMatchObject({ operation: 'crankshaft', own: OWN.why, place: { kind: 'engine' } });
    expect(plan.acts).toHaveLength(V8.acts.length + 1);
  });
  it('waits for the one before it, and the one after it waits for it', () => {
    const plan = withOwnActs(V8, [added]);
    expect(allBefore(plan, 'own-1').has('crank-spins')).toBe(true);
    expect(allBefore(plan, 'crank-float').has('own-1')).toBe(true);
    expect(allBefore(V8, 'crank-float').has('own-1')).toBe(false);
  });
  it('is tied to the signature where nothing else waits for it', () => {
    const { before: _, ...open } = OWN;
    expect(allBefore(withOwnActs(V8, [fact('work-act-added', open)]), 'signed-off').has('own-1')).toBe(true);
  });
  it('is offered like any other, and the signature waits for it', () => {
    const small = planNamed('tm5-6115-584');
    const first = small.acts[0]!.id;
    const plan = withOwnActs(small, [fact('work-act-added', { ...OWN, after: first, before: 'signed-off' })]);
    const person = new Person(plan);
    const standing = workStanding(plan, person.facts);
    person.follow(offers(standing).find((one) => one.kind === 'act' && one.stand.act.id === first)!, standing);
    expect(workStanding(plan, person.facts).ready.map(({ act }) => act.id)).toContain('own-1');
    expect(workStanding(plan, person.facts).stands.get('signed-off')?.waitsFor).toContainEqual(
      expect.objectContaining({ act: 'own-1' }),
    );
  });
  it('is refused where its number is taken, where there is no such act, or against the order', () => {
    expect(codeOf({})).toBe('fine');
    expect(codeOf({}, [added])).toBe('act-exists');
    expect(codeOf({ after: 'nowhere' })).toBe('no-such-act');
    expect(codeOf({ before: 'nowhere' })).toBe('no-such-act');
    expect(codeOf({ after: 'crank-float', before: 'crank-spins' })).toBe('against-the-order');
  });
  it('needs words, a reason and a length', () => {
    expect(codeOf({ does: ' ' })).toBe('nothing-said');
    expect(codeOf({ ask: '' })).toBe('nothing-said');
    expect(codeOf({ why: '' })).toBe('nothing-said');
    expect(codeOf({ minutes: 0 })).toBe('no-length');
  });
  it('that names what this plan has not changes nothing', () => {
    expect(withOwnActs(V8, [fact('work-act-added', { ...OWN, after: 'nowhere' })])).toBe(V8);
  });
});

describe('an act that the person holds for critical', () => {
  const critical = fact('work-act-critical', { act: 'crank-spins', why: 'it was tight last time' });
  it('owes a second look once it is done', () => {
    const plan = withOwnActs(V8, [critical]);
    const person = new Person(plan);
    while (!workStanding(plan, person.facts).stands.get('crank-spins')?.held.done) {
      const standing = workStanding(plan, person.facts);
      const offer = offers(standing)[0];
      if (offer === undefined) throw new Error('nothing is offered and the crank does not turn yet');
      person.follow(offer, standing);
    }
    expect(workStanding(plan, person.facts).stands.get('crank-spins')?.look).toBe('owed');
  });
  it('is refused twice, for the signature, and without a reason', () => {
    const code = (act: string, why = 'so', plan = V8) => {
      const judged = judgeWork(plan, [], fact('work-act-critical', { act, why }));
      return judged.ok ? 'fine' : judged.fault.code;
    };
    expect(code('crank-spins')).toBe('fine');
    expect(code('crank-spins', 'so', withOwnActs(V8, [critical]))).toBe('critical-already');
    expect(code('signed-off')).toBe('no-such-act');
    expect(code('crank-spins', ' ')).toBe('nothing-said');
  });
});

describe('a book that is begun in the middle of the work', () => {
  const begun = fact('work-begun', { operation: 'heads-on', why: 'the short engine came built' });
  it('leaves out what comes before, with that reason, and offers what comes then', () => {
    const standing = workStanding(V8, [begun]);
    const first = V8.acts.findIndex(({ operation }) => operation === 'heads-on');
    expect(standing.skips).toHaveLength(first);
    expect(new Set(standing.skips.map(({ reason }) => reason))).toEqual(new Set(['the short engine came built']));
    expect(standing.ready.map(({ act }) => act.operation)).toContain('heads-on');
  });
  it('keeps what was recorded before it, and never counts the rest as done', () => {
    const spins = fact('work-act-done', {
      act: 'crank-spins',
      answer: { kind: 'felt-or-seen', words: 'free', result: 'good' },
      method: 'by hand',
    });
    const standing = workStanding(V8, [spins, begun]);
    expect(standing.done.map(({ act }) => act.id)).toEqual(['crank-spins']);
  });
  it('is refused at an operation that this engine has not, or without a reason', () => {
    expect(judgeWork(V8, [], fact('work-begun', { operation: 'painting', why: 'so' }))).toMatchObject({
      fault: { code: 'no-such-operation' },
    });
    expect(judgeWork(V8, [], fact('work-begun', { operation: 'heads-on', why: '' }))).toMatchObject({
      fault: { code: 'nothing-said' },
    });
  });
});

describe('leaving and coming back', () => {
  const left = fact('work-left', { halfDone: 'cap 3', loose: '', missing: '', uncovered: 'bores', doubt: '' });
  const spins = fact('work-act-done', {
    act: 'crank-spins',
    answer: { kind: 'felt-or-seen', words: 'free', result: 'good' },
    method: 'by hand',
  });
  it('the card of whoever stopped stands until work goes on', () => {
    expect(workStanding(V8, [spins, left]).left?.data.halfDone).toBe('cap 3');
    expect(workStanding(V8, [left, spins]).left).toBeUndefined();
  });
  it('an empty card says nothing and is refused', () => {
    const empty = { halfDone: '', loose: ' ', missing: '', uncovered: '', doubt: '' };
    expect(judgeWork(V8, [], fact('work-left', empty))).toMatchObject({ fault: { code: 'nothing-said' } });
    expect(judgeWork(V8, [], left).ok).toBe(true);
  });
  it('only what stands as done can have been touched on return', () => {
    const back = fact('work-resumed', { why: 'paused', verified: ['crank-spins'] });
    expect(judgeWork(V8, [spins], back).ok).toBe(true);
    expect(judgeWork(V8, [], back)).toMatchObject({ fault: { code: 'not-done', act: 'crank-spins' } });
    expect(workStanding(V8, [spins, back]).resumed?.data.verified).toEqual(['crank-spins']);
  });
});
