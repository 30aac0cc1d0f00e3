/** Bearing caps: the thrust is seated first, each cap is felt, and a cap that binds comes off. */
import { describe, expect, it } from 'vitest';
import type { Joint, StageAct } from '../../engine/model.js';
import {
  allPlaced,
  angle,
  bolt,
  doing,
  doNext,
  feel,
  hole,
  instruct,
  jointOf,
  offered,
  stretch,
  torque,
} from '../bench.suite.js';
import type { Fact } from '../facts.js';
import { answerResume, resumeQuestion, tighteningActs, walk } from './index.js';

/** Two caps of two bolts, as the loader writes them: the last pass cap by cap. */
const onCap = (name: string, holes: readonly string[], ...acts: readonly StageAct[]) =>
  acts.map((act) => ({ cap: name, holes, act }));
const mains = (last = torque(98), use: 'reuse' | 'once' = 'reuse') =>
  jointOf({
    holes: ['1', '2', '3', '4'].map((id) => hole(id)),
    fasteners: [bolt({ use })],
    stages: [
      instruct('tap the crank to and fro'),
      torque(62),
      ...onCap('cap 1', ['1', '2'], last, feel('turn the crank')),
      ...onCap('cap 2', ['3', '4'], last, feel('turn the crank')),
    ],
  });
const felt = (joint: Joint, facts: readonly Fact[], seen: 'free' | 'stiff') => [
  ...facts,
  doing(joint, walk(joint, facts).current!, { seen }),
];

// Thrust seated before the torque, the crank turned after each cap, what binds comes off: trade-map O19 (common practice).
describe('main bearing caps', () => {
  const joint = mains();
  const start = allPlaced(joint);
  const beforeFeel = doNext(joint, start, 7);

  it('have the thrust seated before any torque, and are felt one by one', () => {
    expect(tighteningActs(joint).acts.map((act) => `${act.stage}/${act.hole} ${act.kind}`)).toEqual([
      '1/all instruct',
      '2/1 torque',
      '2/2 torque',
      '2/3 torque',
      '2/4 torque',
      '3/1 torque',
      '3/2 torque',
      '4/all feel',
      '5/3 torque',
      '5/4 torque',
      '6/all feel',
    ]);
    expect(offered(joint, start)).toBe('1/all#1');
  });
  it('go on to the next cap when the crank turns freely', () => {
    expect(offered(joint, beforeFeel)).toBe('4/all#1');
    expect(offered(joint, felt(joint, beforeFeel, 'free'))).toBe('5/3#1');
  });
  it('come off where the crank binds: only that cap, and its bolts go through every stage again', () => {
    const stiff = felt(joint, beforeFeel, 'stiff');
    expect(walk(joint, stiff).current).toMatchObject({
      kind: 'place',
      hole: '1',
      instance: 2,
      why: 'cap-off',
      mustBeNew: false,
    });
    const back = doNext(joint, stiff, 2);
    expect(offered(joint, back)).toBe('2/1#2');
    const again = doNext(joint, back, 4);
    expect(walk(joint, again).current).toMatchObject({ again: 'stiff', act: { stage: 4, hole: 'all' } });
    expect(offered(joint, felt(joint, again, 'free'))).toBe('5/3#1');
  });
  it('are felt again when one of their bolts was tightened anew afterwards', () => {
    const done = doNext(joint, start, 11);
    expect(walk(joint, done).finished).toBe(true);
    const doubt: Fact = {
      kind: 'fastener-doubted',
      data: { joint: 'head', stage: 3, hole: '2', instance: 1, why: 'lost count' },
    };
    const renewed = doNext(joint, [...done, doubt], 3);
    expect(offered(joint, renewed)).toBe('4/all#1');
    expect(walk(joint, felt(joint, renewed, 'free')).finished).toBe(true);
  });
  it('with bolts turned by angle that are used once, come off for new bolts', () => {
    const once = mains(angle(70), 'once');
    const stiff = felt(once, doNext(once, allPlaced(once), 7), 'stiff');
    expect(walk(once, stiff).current).toMatchObject({ kind: 'place', why: 'cap-off', mustBeNew: true });
  });
  it('left half tightened, go round again on that cap alone', () => {
    const half = doNext(joint, start, 9);
    const question = resumeQuestion(joint, half, { why: 'opened-again' })!;
    expect(question.roundAgain).toMatchObject({ stage: 5, of: 2 });
    const answer = answerResume(question, { verified: question.touch.map(({ act }) => `${act.stage}/${act.hole}`) });
    expect(offered(joint, [...half, ...(answer.ok ? answer.value : [])])).toBe('5/3#1');
  });
});

describe('rods tightened by stretch', () => {
  const rods = jointOf({
    holes: ['1', '2', '3', '4'].map((id) => hole(id)),
    fasteners: [bolt({ use: 'reuse' })],
    stages: [
      ...onCap('cap 1', ['1', '2'], torque(30), stretch(0.0051, 0.0063), feel('turn the crank')),
      ...onCap('cap 2', ['3', '4'], torque(30), stretch(0.0051, 0.0063), feel('turn the crank')),
    ],
  });
  it('are finished rod by rod: both bolts stretched, then the crank turned', () => {
    const facts = allPlaced(rods);
    const seen: string[] = [];
    for (let now = facts; !walk(rods, now).finished; now = doNext(rods, now, 1)) seen.push(offered(rods, now));
    expect(seen).toEqual(
      ['1/1', '1/2', '2/1', '2/2', '3/all', '4/3', '4/4', '5/3', '5/4', '6/all'].map((one) => `${one}#1`),
    );
  });
  it('stretched beyond the window, the bolt comes out for a new one', () => {
    const facts = doNext(rods, allPlaced(rods), 2);
    const beyond = [...facts, doing(rods, walk(rods, facts).current!, { seen: 'beyond' })];
    expect(walk(rods, beyond).current).toMatchObject({ kind: 'place', hole: '1', mustBeNew: true });
  });
  it('left before a stretch, the bolt is looked at and never stretched twice', () => {
    const facts = doNext(rods, allPlaced(rods), 3);
    expect(resumeQuestion(rods, facts, { why: 'paused' })?.look).toMatchObject({ act: { stage: 2, hole: '2' } });
  });
});
