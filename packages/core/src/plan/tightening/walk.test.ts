import { describe, expect, it } from 'vitest';
import { mm } from '../../quantity/index.js';
import {
  allPlaced,
  angle,
  bolt,
  doing,
  doNext,
  hole,
  instruct,
  jointOf,
  loosen,
  offered,
  placed,
  renew,
  stretch,
  torque,
  verify,
} from '../bench.suite.js';
import type { Fact } from '../facts.js';
import { skipName, walk } from './index.js';

// Rules of the bench: common practice, no source, unless a test names one.
const marks = (joint: ReturnType<typeof jointOf>, facts: readonly Fact[]) =>
  Object.fromEntries(walk(joint, facts).holes.map((one) => [one.hole, one.mark]));

describe('a walk through a joint', () => {
  const joint = jointOf({ stages: [torque(30), angle(90)] });
  const start = allPlaced(joint);

  it('asks for a fastener in every hole before the first act', () => {
    expect(offered(joint, [])).toBe('place 2#1');
    expect(offered(joint, start.slice(1))).toBe('place 1#1');
    expect(offered(joint, start)).toBe('1/2#1');
    expect(walk(joint, start).started).toBe(false);
  });

  it('shows one act, the next one greyed, and the progress in words', () => {
    const now = walk(joint, doNext(joint, start, 5));
    expect(now.current).toMatchObject({ kind: 'act', instance: 1, round: 1, act: { stage: 2, hole: '3' } });
    expect(now.next).toMatchObject({ stage: 2, hole: '1' });
    expect(now.progress).toMatchObject({ at: 2, of: 4, stage: 2, stages: 2, done: 5, acts: 8 });
    expect(now.progress.words).toBe('2 of 4, stage 2 of 2');
  });

  it('lights the current hole, marks the next, and shows done only what is recorded in this stage', () => {
    expect(marks(joint, doNext(joint, start, 5))).toEqual({ 1: 'next', 2: 'done', 3: 'lit', 4: 'idle' });
    expect(marks(joint, start)).toEqual({ 1: 'idle', 2: 'lit', 3: 'next', 4: 'idle' });
  });

  it('is finished when every act is recorded, and not one before', () => {
    expect(walk(joint, doNext(joint, start, 7)).finished).toBe(false);
    const end = walk(joint, doNext(joint, start, 8));
    expect(end.finished).toBe(true);
    expect(end.current).toBeUndefined();
    expect(end.progress.words).toBe('4 of 4, stage 2 of 2');
    expect(end.holes.every((one) => one.final && one.mark === 'done')).toBe(true);
  });

  it('shows a fastener that the sheet does not ask for as wrong', () => {
    const odd = [...start.slice(1), placed(joint, '1', { length: { text: '70 mm', value: mm(70), unit: 'm' } })];
    expect(marks(joint, odd)['1']).toBe('wrong');
  });

  it('passes over a skipped act, and keeps it on the list with its reason', () => {
    const act = { stage: 1, hole: '2' };
    const skipped: Fact = { kind: 'skipped', data: { what: skipName('head', act), reason: 'pipe in the way' } };
    const now = walk(joint, [...start, skipped]);
    expect(offered(joint, [...start, skipped])).toBe('1/3#1');
    expect(now.skipped).toMatchObject([{ act, reason: 'pipe in the way' }]);
    const end = walk(joint, doNext(joint, [...start, skipped], 7));
    expect(end.finished).toBe(true);
    expect(end.skipped).toHaveLength(1);
    expect(end.holes.find((one) => one.hole === '2')?.final).toBe(false);
  });

  it('starts afresh when the joint is opened: fasteners count on, and nothing is tight any more', () => {
    const opened: Fact = { kind: 'joint-opened', data: { joint: 'head', reason: 'gasket leaked' } };
    const facts = [...doNext(joint, start, 8), opened];
    expect(offered(joint, facts)).toBe('place 2#2');
    expect(marks(joint, facts)).toEqual({ 1: 'missing', 2: 'missing', 3: 'missing', 4: 'missing' });
    expect(offered(joint, doNext(joint, facts, 4))).toBe('1/2#2');
  });

  it('wants new bolts after the joint was opened where the sheet says once', () => {
    const once = jointOf({ fasteners: [bolt({ use: 'once' })], stages: [torque(30)] });
    expect(walk(once, []).current).toMatchObject({ kind: 'place', mustBeNew: false });
    const opened: Fact = { kind: 'joint-opened', data: { joint: 'head', reason: 'wrong gasket' } };
    const facts = [...doNext(once, allPlaced(once), 4), opened];
    expect(walk(once, facts).current).toMatchObject({ kind: 'place', why: 'opened', mustBeNew: true });
  });

  it('takes an instruction to the whole joint once', () => {
    const waiting = jointOf({ stages: [torque(30), instruct('wait ten minutes'), torque(30)] });
    const facts = doNext(waiting, allPlaced(waiting), 4);
    expect(offered(waiting, facts)).toBe('2/all#1');
    expect(offered(waiting, doNext(waiting, facts, 1))).toBe('3/2#1');
  });
});

describe('a check that turned the fastener', () => {
  const joint = jointOf({ stages: [torque(27), verify(27), angle(90)] });
  const checked = doNext(joint, allPlaced(joint), 5);
  const moved = (facts: readonly Fact[]) => [...facts, doing(joint, walk(joint, facts).current!, { seen: 'moved' })];

  it('sends that one back to its torque stage, then checks it again, and goes on', () => {
    const facts = moved(checked);
    expect(walk(joint, facts).current).toMatchObject({ kind: 'act', again: 'moved', act: { stage: 1, hole: '3' } });
    const torqued = doNext(joint, facts, 1);
    expect(walk(joint, torqued).current).toMatchObject({ again: 'moved', act: { stage: 2, hole: '3' } });
    expect(offered(joint, doNext(joint, torqued, 1))).toBe('2/1#1');
  });

  it('goes on asking while the fastener keeps turning', () => {
    const again = moved(doNext(joint, moved(checked), 1));
    expect(offered(joint, again)).toBe('1/3#1');
  });

  it('repeats only the check where a turn by angle stands between', () => {
    const late = jointOf({ stages: [torque(27), angle(90), verify(60)] });
    const facts = doNext(late, allPlaced(late), 8);
    const after = [...facts, doing(late, walk(late, facts).current!, { seen: 'moved' })];
    expect(walk(late, after).current).toMatchObject({ again: 'moved', act: { stage: 3, hole: '2' } });
  });
});

describe('a fastener in doubt', () => {
  const joint = jointOf({ stages: [torque(50), loosen('fully'), torque(30), angle(90), angle(90)] });
  const doubt = (stage: number, at: string, instance = 1): Fact => ({
    kind: 'fastener-doubted',
    data: { joint: 'head', stage, hole: at, instance, why: 'chattered' },
  });
  // Stage 4, holes 2 and 3 turned; hole 1 is in doubt.
  const facts = [...doNext(joint, allPlaced(joint), 14), doubt(4, '1')];

  it('comes out first, and must be new where it was turned by angle or may have been', () => {
    expect(walk(joint, facts).current).toMatchObject({
      kind: 'place',
      hole: '1',
      instance: 2,
      why: 'doubted',
      mustBeNew: true,
    });
    expect(walk(joint, facts).current).toMatchObject({ words: expect.stringContaining('Ask the maker.') });
    expect(marks(joint, facts)['1']).toBe('doubt');
  });

  it('goes through all stages so far by itself, in stage order, before the walk goes on', () => {
    const seen: string[] = [];
    let grown = facts;
    for (let step = 0; step < 6; step += 1) {
      seen.push(offered(joint, grown));
      grown = doNext(joint, grown, 1);
    }
    expect(seen).toEqual(['place 1#2', '1/1#2', '2/1#2', '3/1#2', '4/1#2', '4/4#1']);
    expect(walk(joint, doNext(joint, facts, 2)).current).toMatchObject({ again: 'catching-up' });
  });

  it('may be the same one again where it had only been tightened by torque value', () => {
    const early = [...doNext(joint, allPlaced(joint), 2), doubt(1, '3')];
    expect(walk(joint, early).current).toMatchObject({ hole: '3', instance: 2, mustBeNew: false, mustMeasure: false });
  });

  it('must be new at any stage where the sheet says once', () => {
    const once = jointOf({ fasteners: [bolt({ use: 'once' })], stages: [torque(50), angle(90)] });
    const early = [...doNext(once, allPlaced(once), 2), doubt(1, '3')];
    expect(walk(once, early).current).toMatchObject({ hole: '3', mustBeNew: true });
  });

  it('may go back measured where the sheet lets it be used up to a length', () => {
    const limit = { text: '96 mm', value: mm(96), from: joint.stages[0]!.from };
    const sized = jointOf({ fasteners: [bolt({ use: 'reuse-to-length', lengthLimit: limit })], stages: [angle(90)] });
    const turned = [...doNext(sized, allPlaced(sized), 2), doubt(1, '3')];
    expect(walk(sized, turned).current).toMatchObject({ hole: '3', mustBeNew: false, mustMeasure: true });
  });

  it('can be doubted again after it was replaced', () => {
    const again = [...doNext(joint, facts, 3), doubt(4, '1', 2)];
    expect(offered(joint, again)).toBe('place 1#3');
  });
});

describe('stretch and renewal', () => {
  // Form of TM 55-1905-223-24-1 (public domain): stretch accepted in a window, short repeated, too long replaced.
  const rod = jointOf({
    holes: [hole('1'), hole('2')],
    stages: [torque(200), { act: stretch(0.0135, 0.0185), note: 'short: step 3 again up to 270 lb-ft' }],
  });
  const measured = doNext(rod, allPlaced(rod), 2);
  const stretched = (seen: 'short' | 'beyond') => [...measured, doing(rod, walk(rod, measured).current!, { seen })];

  it('follows the words of the recipe when the stretch is short', () => {
    expect(walk(rod, stretched('short')).current).toMatchObject({
      kind: 'act',
      again: 'short',
      words: 'short: step 3 again up to 270 lb-ft',
      act: { stage: 2, hole: '1' },
    });
    expect(offered(rod, doNext(rod, stretched('short'), 1))).toBe('2/2#1');
  });

  it('replaces the bolt when it was stretched too far', () => {
    const facts = stretched('beyond');
    expect(walk(rod, facts).current).toMatchObject({
      kind: 'place',
      hole: '1',
      instance: 2,
      why: 'beyond',
      mustBeNew: true,
    });
    expect(offered(rod, doNext(rod, facts, 1))).toBe('1/1#2');
    expect(offered(rod, doNext(rod, facts, 3))).toBe('2/2#1');
  });

  it('renews a fastener in its hole before the next one, and starts the new one after the renewal', () => {
    const seated = jointOf({ holes: [hole('1'), hole('2')], stages: [torque(80), renew, torque(30), angle(90)] });
    const facts = doNext(seated, allPlaced(seated), 3);
    expect(walk(seated, facts).current).toMatchObject({
      kind: 'place',
      hole: '1',
      instance: 2,
      why: 'renewed',
      mustBeNew: true,
    });
    const seen: string[] = [];
    let grown = facts;
    while (!walk(seated, grown).finished) {
      seen.push(offered(seated, grown));
      grown = doNext(seated, grown, 1);
    }
    expect(seen).toEqual(['place 1#2', '2/2#1', 'place 2#2', '3/1#2', '3/2#2', '4/1#2', '4/2#2']);
  });
});

describe('an act whose record was struck out', () => {
  const joint = jointOf({ stages: [torque(30), angle(90)] });
  const struck = (stage: number, at: string): Fact => ({
    kind: 'act-struck',
    data: { joint: 'head', stage, hole: at, instance: 1 },
  });

  it('is offered again by torque value', () => {
    const facts = [...doNext(joint, allPlaced(joint), 3), struck(1, '1')];
    expect(
      offered(
        joint,
        facts.filter((fact) => fact.kind !== 'act-done' || fact.data.hole !== '1'),
      ),
    ).toBe('1/1#1');
  });

  it('is never offered again by angle before somebody has looked for the paint mark', () => {
    const facts = [...doNext(joint, allPlaced(joint), 4), struck(2, '2')];
    expect(offered(joint, facts)).toBe('look 2/2#1');
    expect(marks(joint, facts)['2']).toBe('doubt');
  });

  const seating = jointOf({ stages: [torque(78), loosen('fully'), torque(20), angle(90)] });
  const strike = (facts: readonly Fact[], stage: number, at: string): Fact[] => [
    ...facts.filter((fact) => fact.kind !== 'act-done' || fact.data.stage !== stage || fact.data.hole !== at),
    struck(stage, at),
  ];

  it('sends its fastener through the slackening again, and not on to the end while it is loose', () => {
    // Stages 1 to 3 are done, stage 4 is not begun; hole 1 was never slackened.
    const facts = strike(doNext(seating, allPlaced(seating), 12), 2, '1');
    expect(walk(seating, facts).current).toMatchObject({ act: { stage: 2, hole: '1' }, again: 'struck-out' });
    expect(offered(seating, doNext(seating, facts, 1))).toBe('3/1#1');
    expect(offered(seating, doNext(seating, facts, 2))).toBe('4/2#1');
  });

  it('puts its fastener in doubt when it was turned by angle since: it can neither be slackened nor believed', () => {
    const facts = strike(doNext(seating, allPlaced(seating), 16), 2, '1');
    expect(walk(seating, facts).current).toMatchObject({ kind: 'place', hole: '1', why: 'doubted', mustBeNew: true });
    expect(walk(seating, strike(doNext(seating, allPlaced(seating), 16), 3, '1')).current).toMatchObject({
      why: 'doubted',
    });
  });

  it('changes nothing where the passes only rise: the wrench clicks at the lower value', () => {
    const rising = jointOf({ stages: [torque(30), torque(60), torque(90)] });
    const facts = strike(doNext(rising, allPlaced(rising), 12), 1, '3');
    expect(offered(rising, facts)).toBe('1/3#1');
    expect(offered(rising, doNext(rising, facts, 1))).toBe('finished');
  });
});

describe('one turn by angle that two people recorded', () => {
  const joint = jointOf({ stages: [torque(30), angle(90)] });
  const five = doNext(joint, allPlaced(joint), 5);
  const second = five.at(-1)!;

  it('puts the fastener in doubt: it may have been turned twice', () => {
    expect(walk(joint, [...five, second]).current).toMatchObject({
      kind: 'place',
      hole: '2',
      why: 'twice',
      mustBeNew: true,
      words: expect.stringMatching(/^Recorded twice as turned/),
    });
  });

  it('is one turn where the second record only says that the mark was found, or was by torque value', () => {
    const found = { ...second, data: { ...second.data, seen: 'mark-found' } } as Fact;
    expect(offered(joint, [...five, found])).toBe('2/3#1');
    expect(offered(joint, [...five, five.at(-2)!])).toBe('2/3#1');
  });
});
