import { describe, expect, it } from 'vitest';
import { doing, fact, Person } from './bench-person.suite.js';
import type { WorkAct } from './model.js';
import { offers } from './offers.js';
import { returnToWork } from './return-to-work.js';
import { workStanding } from './standing.js';
import { planNamed } from './work.suite.js';

const V8 = planNamed('quernside');
const SMALL = planNamed('tm5-6115-584');
const doneTo = (rule: string) =>
  V8.acts.slice(0, V8.acts.findIndex((one) => one.rule === rule) + 1).map((one) => doing(one));
const names = (facts: Parameters<typeof returnToWork>[1]) => returnToWork(V8, facts)?.verify.map(({ act }) => act.rule);

describe('coming back', () => {
  it('asks for nothing where nothing was done', () => {
    expect(returnToWork(V8, [])).toBeUndefined();
  });
  it('verifies the last three acts, the most recent one last', () => {
    expect(names(doneTo('crank-laid-in'))).toEqual(['main-shell-in', 'seal-half-in', 'crank-laid-in']);
  });
  it('says that it was left where nobody should stop', () => {
    expect(returnToWork(V8, doneTo('crank-laid-in'))?.leftBadly).toContain('put the caps on now');
    expect(returnToWork(V8, doneTo('crank-float'))?.leftBadly).toBeUndefined();
  });
  it('looks for a filed ring, and never has it filed again', () => {
    const back = returnToWork(V8, doneTo('groove-room-read').slice(0, -1));
    expect(back?.verify.map(({ how, mayRepeat }) => [how, mayRepeat])).toEqual(
      Array.from({ length: 3 }, () => ['look', false]),
    );
    expect(back?.verify[0]?.words).toContain('do not do it again');
  });
  it('lets the joint itself ask about its fasteners', () => {
    expect(returnToWork(V8, doneTo('mains-tightened'))?.verify.at(-1)?.how).toBe('walk');
  });
  it('looks whether a cut was begun without a record', () => {
    const back = returnToWork(
      V8,
      doneTo('rings-laid-to-bore').concat(
        V8.acts.filter(({ rule }) => rule === 'ring-worksheet').map((one) => doing(one)),
      ),
    );
    expect(back?.mayHaveBegun.map(({ rule }) => rule)).toContain('rings-filed');
  });
  it('does not ask for an act that was opened again since', () => {
    const facts = [
      ...doneTo('crank-float'),
      fact('work-reopened', { rule: 'main-cap-removed', place: 'main-2', why: 'x' }),
    ];
    expect(returnToWork(V8, facts)?.verify.map(({ act }) => act.id)).toEqual(
      [3, 4, 5].map((main) => `main-cap-on@main-${main}`),
    );
  });
});

describe('stopped after every single act of a whole build', () => {
  /** The build as one walk of first offers, with what was done kept apart. */
  const person = new Person(SMALL);
  const done: string[] = [];
  const marks: { readonly facts: number; readonly last: readonly string[] }[] = [];
  for (let standing = workStanding(SMALL, []); !standing.signedOff; standing = workStanding(SMALL, person.facts)) {
    const offer = offers(standing)[0];
    if (offer === undefined) throw new Error('nothing to do');
    if (offer.kind === 'act') done.push(offer.stand.act.id);
    person.follow(offer, standing);
    marks.push({ facts: person.facts.length, last: done.slice(-3) });
  }

  it('asks for the right three each time, and loses nothing that was recorded', () => {
    for (const { facts, last } of marks.slice(0, -1)) {
      const back = returnToWork(SMALL, person.facts.slice(0, facts));
      expect(back?.verify.map(({ act }) => act.id)).toEqual(last);
    }
    expect(done).toHaveLength(SMALL.acts.length);
  });
  it('never offers to repeat what cannot be undone', () => {
    for (const { facts } of marks.slice(0, -1))
      for (const { act, mayRepeat, how } of returnToWork(SMALL, person.facts.slice(0, facts))?.verify ?? [])
        if (act.noReturn !== undefined)
          expect([mayRepeat, ['look', 'walk'].includes(how)], act.id).toEqual([false, true]);
  });
  it('asks nothing after the signature', () => {
    expect(returnToWork(SMALL, person.facts)).toBeUndefined();
  });
});

describe('what cannot be undone', () => {
  // trade-map.md section 2.3, points of no return.
  it.each([
    'bore-honed',
    'rings-filed',
    'head-down',
    'pan-tightened',
    'intake-tightened',
    'damper-on',
    'cover-tightened',
    'started',
  ])('%s says why', (rule) => {
    expect((V8.acts.find((one) => one.rule === rule) as WorkAct).noReturn).toBeDefined();
  });
});
