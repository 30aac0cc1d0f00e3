import { describe, expect, it } from 'vitest';
import { allPlaced, angle, bolt, doNext, jointOf, loosen, offered, torque, verify } from '../bench.suite.js';
import type { Fact } from '../facts.js';
import { actKey, answerLook, answerResume, resumeQuestion, walk } from './index.js';

// Three steps back after an interruption: maintenance technician handbook, human factors chapter, as quoted in an
// encyclopedia article on distraction (read). The rules for torque and angle: common practice, no source.
const joint = jointOf({ stages: [torque(30), torque(60), angle(90), angle(90)] });
const start = allPlaced(joint);
const after = (acts: number) => doNext(joint, start, acts);
const back = (facts: readonly Fact[]) => resumeQuestion(joint, facts, { why: 'opened-again' });
const answered = (facts: readonly Fact[], mark?: 'found' | 'clean' | 'unknown') => {
  const question = back(facts)!;
  const verified = question.touch.map((one) => actKey(one.act));
  const answer = answerResume(question, { verified, ...(mark && { mark }) });
  if (!answer.ok) throw new Error(answer.fault.code);
  return [...facts, ...answer.value];
};

describe('coming back to a joint', () => {
  it('asks nothing before the first act and after the last', () => {
    expect(back(start)).toBeUndefined();
    expect(back(after(16))).toBeUndefined();
  });

  it('shows the last three acts to touch again, the most recent last', () => {
    const question = back(after(6))!;
    expect(question.touch.map((one) => actKey(one.act))).toEqual(['1/4', '2/2', '2/3']);
    expect(back(after(2))!.touch).toHaveLength(2);
  });

  it('will not go on until each of them was touched', () => {
    const answer = answerResume(back(after(6))!, { verified: ['1/4', '2/3'] });
    expect(answer).toEqual({ ok: false, fault: { code: 'not-all-touched', missing: ['2/2'] } });
  });

  it('records who came back and why, what was touched, and that the stage goes round again', () => {
    const question = resumeQuestion(joint, after(6), { why: 'other-person' })!;
    expect(answerResume(question, { verified: ['1/4', '2/2', '2/3'] })).toEqual({
      ok: true,
      value: [
        {
          kind: 'walk-resumed',
          data: {
            joint: 'head',
            stage: 2,
            why: 'other-person',
            verified: ['1/4', '2/2', '2/3'],
            roundAgain: true,
          },
        },
      ],
    });
  });
});

describe('a stage by torque value that was left part-way', () => {
  it('goes round again from its first fastener', () => {
    expect(back(after(6))).toMatchObject({ roundAgain: { stage: 2, first: { hole: '2' }, of: 4, round: 2 } });
    const facts = answered(after(6));
    expect(walk(joint, facts).current).toMatchObject({
      kind: 'act',
      again: 'round-again',
      round: 2,
      act: { stage: 2, hole: '2' },
    });
    expect(offered(joint, doNext(joint, facts, 4))).toBe('3/2#1');
  });

  it('goes round a third time when it is interrupted again', () => {
    const facts = answered(doNext(joint, answered(after(6)), 1));
    expect(walk(joint, facts).current).toMatchObject({ round: 3, act: { stage: 2, hole: '2' } });
  });

  it('goes round again for a stage that only checks', () => {
    const checked = jointOf({ stages: [torque(27), verify(27)] });
    const question = resumeQuestion(checked, doNext(checked, allPlaced(checked), 6), { why: 'paused' });
    expect(question).toMatchObject({ roundAgain: { stage: 2 } });
  });

  it('is not repeated when all its acts were recorded and nothing of the next stage', () => {
    const question = back(after(4))!;
    expect(question.roundAgain).toBeUndefined();
    expect(question.look).toBeUndefined();
    expect(offered(joint, answered(after(4)))).toBe('2/2#1');
  });

  it('does not take the other fasteners back to an early stage while a new one catches up', () => {
    const doubted: Fact = {
      kind: 'fastener-doubted',
      data: { joint: 'head', stage: 3, hole: '1', instance: 1, why: 'x' },
    };
    const catching = doNext(joint, [...after(10), doubted], 1);
    expect(offered(joint, catching)).toBe('1/1#2');
    expect(back(catching)!.roundAgain).toBeUndefined();
  });
});

describe('a stage by angle that was left part-way', () => {
  it('never goes round again: the next fastener is asked about first', () => {
    const question = back(after(10))!;
    expect(question.roundAgain).toBeUndefined();
    expect(question.look).toMatchObject({ instance: 1, act: { stage: 3, hole: '1' } });
    const verified = question.touch.map((one) => actKey(one.act));
    expect(answerResume(question, { verified })).toEqual({
      ok: false,
      fault: { code: 'look-for-mark', stage: 3, hole: '1' },
    });
  });

  it('asks at the very first fastener of the stage too: it may have been turned and not recorded', () => {
    expect(back(after(8))!.look).toMatchObject({ act: { stage: 3, hole: '2' } });
    const angled = jointOf({ stages: [angle(90)] });
    expect(resumeQuestion(angled, allPlaced(angled), { why: 'opened-again' })!.look).toMatchObject({
      act: { hole: '2' },
    });
  });

  it('counts the fastener as turned when its paint mark is found', () => {
    const facts = answered(after(10), 'found');
    expect(facts.at(-1)).toMatchObject({ kind: 'act-done', data: { stage: 3, hole: '1', seen: 'mark-found' } });
    expect(offered(joint, facts)).toBe('3/4#1');
  });

  it('offers the fastener when it is clean', () => {
    const facts = answered(after(10), 'clean');
    expect(facts.at(-1)).toMatchObject({ kind: 'walk-resumed', data: { mark: { hole: '1', answer: 'clean' } } });
    expect(offered(joint, facts)).toBe('3/1#1');
  });

  it('takes the fastener out when nobody knows, and sends a new one through all stages so far', () => {
    const facts = answered(after(10), 'unknown');
    expect(facts.at(-1)).toMatchObject({ kind: 'fastener-doubted', data: { stage: 3, hole: '1', instance: 1 } });
    const seen: string[] = [];
    let grown = facts;
    for (let step = 0; step < 5; step += 1) {
      seen.push(offered(joint, grown));
      grown = doNext(joint, grown, 1);
    }
    expect(seen).toEqual(['place 1#2', '1/1#2', '2/1#2', '3/1#2', '3/4#1']);
  });

  it('treats loosening by an angle the same way, and loosening fully as harmless', () => {
    const turn = jointOf({ stages: [torque(50), loosen(360)] });
    expect(resumeQuestion(turn, doNext(turn, allPlaced(turn), 5), { why: 'paused' })!.look).toBeDefined();
    const fully = jointOf({ stages: [torque(50), loosen('fully')] });
    const question = resumeQuestion(fully, doNext(fully, allPlaced(fully), 5), { why: 'paused' })!;
    expect([question.look, question.roundAgain]).toEqual([undefined, undefined]);
  });

  it('asks about the new fastener too when the interruption falls into its catching up', () => {
    const doubted: Fact = {
      kind: 'fastener-doubted',
      data: { joint: 'head', stage: 4, hole: '3', instance: 1, why: 'x' },
    };
    const catching = doNext(joint, [...after(13), doubted], 3);
    expect(offered(joint, catching)).toBe('3/3#2');
    expect(back(catching)!.look).toMatchObject({ instance: 2, act: { stage: 3, hole: '3' } });
  });
});

describe('looking for the mark after a record was struck out', () => {
  const once = jointOf({ fasteners: [bolt({ use: 'once' })], stages: [angle(90)] });
  const placedFacts = allPlaced(once);
  const struck: Fact = { kind: 'act-struck', data: { joint: 'head', stage: 1, hole: '2', instance: 1 } };
  const facts = [...placedFacts, struck];
  const look = walk(once, facts).current!;

  it.each([
    ['found', '1/3#1'],
    ['clean', '1/2#1'],
    ['unknown', 'place 2#2'],
  ] as const)('%s: goes on with %s', (mark, next) => {
    if (look.kind !== 'look') throw new Error(look.kind);
    expect(offered(once, [...facts, ...answerLook(once, look, mark)])).toBe(next);
  });
});
