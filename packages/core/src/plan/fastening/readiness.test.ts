import { describe, expect, it } from 'vitest';
import { allPlaced, bolt, doNext, jointOf, placed, torque } from '../bench.suite.js';
import { engineOf, headJoint } from '../engine.suite.js';
import type { Fact } from '../facts.js';
import { fastenerMap, gasketChecks, readiness } from './index.js';

// Rules of this file: common practice, no source.
const engine = engineOf();
const all = allPlaced(headJoint);
const checked = (item: string, result: 'good' | 'bad'): Fact => ({
  kind: 'gasket-checked',
  data: { head: 'top', item, result, seen: 'looked' },
});
const opened: Fact = { kind: 'joint-opened', data: { joint: 'head', reason: 'leak' } };
const codes = (facts: readonly Fact[]) => readiness(engine, 'head', facts).blocks.map((block) => block.code);

describe('fastener map', () => {
  it('says how many of each kind to lay out beforehand', () => {
    const { layOut } = fastenerMap(headJoint, []);
    expect(layOut.map(({ fastener, count, holes }) => [fastener.id, count, holes])).toEqual([
      ['bolt', 2, ['1', '2']],
      ['short', 1, ['3']],
    ]);
  });

  it('says for every hole what it takes, on the thread and under the head', () => {
    expect(fastenerMap(headJoint, []).rows[2]).toMatchObject({
      hole: { id: '3', opensInto: 'water' },
      expected: { id: 'short', length: { text: '60 mm' } },
      onThread: 'sealer',
      underHead: 'oil',
      state: 'empty',
    });
  });

  it('is finished when every hole has its own fastener', () => {
    expect(fastenerMap(headJoint, all.slice(1))).toMatchObject({ placed: 2, finished: false });
    expect(fastenerMap(headJoint, all)).toMatchObject({ placed: 3, finished: true });
    const swapped = [...all.slice(0, 2), placed(headJoint, '3', { fastener: 'bolt' })];
    expect(fastenerMap(headJoint, swapped).rows[2]).toMatchObject({
      state: 'wrong',
      judgement: { verdict: 'too-long' },
    });
  });
});

describe('gasket checks', () => {
  it('cover the way up, the faces, the dowels, the holes and every opening with its intent', () => {
    const { items } = gasketChecks(engine, 'top', [])!;
    expect(items.map((one) => one.item)).toEqual([
      'way-up',
      'faces',
      'dowels',
      'holes-dry',
      'opening:w1',
      'opening:w2',
      'opening:o1',
    ]);
    expect(items.find((one) => one.item === 'opening:w2')?.opening?.intent).toBe('closed');
    expect(items.find((one) => one.item === 'holes-dry')?.blindHoles).toEqual(['1', '2']);
  });

  it('are finished when all are good, and the last answer to each counts', () => {
    const items = gasketChecks(engine, 'top', [])!.items.map((one) => one.item);
    const good = items.map((item) => checked(item, 'good'));
    expect(gasketChecks(engine, 'top', good)).toMatchObject({ finished: true });
    expect(gasketChecks(engine, 'top', [...good, checked('faces', 'bad')])!.finished).toBe(false);
    expect(gasketChecks(engine, 'top', [checked('way-up', 'good')])!.current).toBe('faces');
  });

  it('begin again when the joint was opened: a gasket is crushed once', () => {
    const { items } = gasketChecks(engine, 'top', [checked('faces', 'good'), opened])!;
    expect(items.every((one) => one.state === 'open')).toBe(true);
  });

  it('do not exist for a head that the engine does not have', () => {
    expect(gasketChecks(engine, 'bottom', [])).toBeUndefined();
  });
});

describe('a joint may be tightened', () => {
  it('when every hole has its right fastener', () => {
    expect(readiness(engine, 'head', all)).toMatchObject({ blocks: [] });
  });

  it('not while a hole is empty', () => {
    expect(readiness(engine, 'head', all.slice(1)).blocks).toEqual([
      { code: 'fastener-missing', hole: '1', instance: 1 },
    ]);
  });

  it('not while a fastener is wrong', () => {
    expect(codes([...all.slice(0, 2), placed(headJoint, '3', { fastener: 'bolt' })])).toEqual(['fastener-wrong']);
  });

  it('not while a gasket check is bad, and again when it was put right', () => {
    const bad = [...all, checked('opening:w1', 'bad')];
    expect(codes(bad)).toEqual(['gasket-bad']);
    expect(codes([...bad, checked('opening:w1', 'good')])).toEqual([]);
  });

  it('with open gasket checks, but they are named: not looked at is never good', () => {
    expect(readiness(engine, 'head', [...all, checked('faces', 'good')]).unchecked).not.toContain('faces');
    expect(readiness(engine, 'head', all).unchecked).toHaveLength(7);
  });

  it('not with a used bolt where the sheet says once and the joint was opened', () => {
    const once = jointOf({ head: 'top', fasteners: [bolt({ use: 'once' })], stages: [torque(30)] });
    const own = engineOf({ joints: [once] });
    const facts = [...doNext(once, allPlaced(once), 4), opened];
    const back = (condition: 'new' | 'used') =>
      once.holes.map(({ id }) => placed(once, id, { instance: 2, condition }));
    expect(readiness(own, 'head', [...facts, ...back('used')]).blocks[0]?.code).toBe('fastener-not-new');
    expect(readiness(own, 'head', [...facts, ...back('new')]).blocks).toEqual([]);
  });

  it('not where the engine has no such joint: the valid ones are named', () => {
    expect(readiness(engine, 'sump', []).blocks).toEqual([{ code: 'unknown-joint', joint: 'sump', valid: ['head'] }]);
  });
});
