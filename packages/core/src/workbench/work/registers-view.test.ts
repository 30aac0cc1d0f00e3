import { describe, expect, it } from 'vitest';
import { openBench, registersView } from '../index.js';
import { NOT_AGAIN } from '../part-choices.js';
import { ENGINES, keeping } from './work-scribe.suite.js';

const VALVE = { cylinder: 1, kind: 'intake', index: 1 } as const;

describe('the register of parts that must return', () => {
  it.each(ENGINES)(
    'has every main cap and rod, and every part of the valve gear at each valve, open, on %s',
    (_, engine) => {
      const { parts } = registersView(openBench(engine, []));
      expect(new Set(parts.map(({ state }) => state))).toEqual(new Set(['open']));
      const count = (part: string) => parts.filter((one) => one.part === part).length;
      expect(count('rod, cap and piston')).toBe(engine.layout.cylinders.length);
      expect(count('main cap')).toBeGreaterThan(1);
    },
  );
  it('keeps position, end, face and state of a cap apart, and says when it is back', () => {
    const scribe = keeping('v8').beginAt('tear-down').skipTo('main-cap-marked@main-2');
    const cap = () => registersView(scribe.bench).parts.find(({ act }) => act === 'main-cap-marked@main-2');
    expect(cap()?.state).toBe('open');
    const marks = {
      position: 'second from the front',
      end: '',
      face: 'arrow to the front',
      condition: 'washers: none',
    };
    scribe.wish({
      kind: 'done',
      act: 'main-cap-marked@main-2',
      answer: { kind: 'register', ...marks, result: 'good' },
      method: 'by eye',
    });
    expect(cap()).toMatchObject({ ...marks, part: 'main cap', place: 'main 2', state: 'tagged' });
    scribe.beginAt('crankshaft').skipTo('main-cap-on@main-2').done('main-cap-on@main-2');
    expect(cap()?.state).toBe('back');
    scribe.wish({ kind: 'reopen', rule: 'main-cap-removed', place: 'main-2', why: 'a shell was looked at' });
    expect(cap()?.state).toBe('tagged');
  });
  it('takes valve gear from its tags: tagged, back, or not to be used again', () => {
    const scribe = keeping('v8');
    const row = (part: string) =>
      registersView(scribe.bench).parts.find((one) => one.part === part && one.place === 'cylinder 1 intake');
    scribe.append({
      kind: 'part-tagged',
      data: { part: 'lifter', valve: VALVE, face: 'paint to the front', condition: 'used, good' },
    });
    scribe.append({ kind: 'part-tagged', data: { part: 'pushrod', valve: VALVE, condition: NOT_AGAIN } });
    expect(row('lifter')).toMatchObject({ state: 'tagged', face: 'paint to the front', condition: 'used, good' });
    expect(row('pushrod')).toMatchObject({ state: 'left-out' });
    expect(row('rocker')).toMatchObject({ state: 'open' });
    scribe.append({ kind: 'part-fitted', data: { part: 'lifter', to: VALVE, from: VALVE } });
    expect(row('lifter')).toMatchObject({ state: 'back', given: { by: 'Ada' } });
  });
  it('does not make a state of what nobody told', () => {
    const { parts } = registersView(keeping('v8').beginAt('crankshaft').bench);
    expect(parts.find(({ act }) => act === 'main-cap-marked@main-1')).toMatchObject({
      state: 'not-told',
      position: '',
      condition: '',
      why: 'the book was begun late',
    });
  });
});

describe('the register of fasteners', () => {
  it.each(ENGINES)('has every hole of every joint of the sheet once, on %s', (_, engine) => {
    const holes = engine.joints.flatMap((joint) => joint.holes.map((hole) => `${joint.id} ${hole.id}`));
    expect(registersView(openBench(engine, [])).fasteners.map(({ joint, hole }) => `${joint} ${hole}`)).toEqual(holes);
  });
  it('tells what was put in, by whom, and where the hole opens', () => {
    const scribe = keeping('v8');
    const hole = scribe.engine.joints.find(({ id }) => id === 'head-left')!.holes[0]!;
    scribe.append({
      kind: 'fastener-placed',
      data: {
        joint: 'head-left',
        hole: hole.id,
        instance: 1,
        fastener: hole.fastener,
        onThread: 'oil',
        underHead: 'oil',
      },
    });
    const row = registersView(scribe.bench).fasteners.find((one) => one.joint === 'head-left' && one.hole === hole.id);
    expect(row).toMatchObject({ opensInto: 'blind hole', given: { by: 'Ada' } });
  });
});

describe('the register of photos', () => {
  it('ties a photo to its act, with its words', () => {
    const scribe = keeping('v8');
    const answer = { kind: 'photo', photo: 'c'.repeat(64), words: 'from the left', result: 'good' } as const;
    scribe.wish({ kind: 'done', act: 'all-sides', answer, method: '' });
    expect(registersView(scribe.bench).photos).toMatchObject([
      {
        about: 'act:all-sides',
        aboutWords: 'Photograph the engine from all six sides, before anything is moved',
        photo: 'c'.repeat(64),
        words: 'from the left',
      },
    ]);
  });
});
