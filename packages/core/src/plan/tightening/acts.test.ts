import { describe, expect, it } from 'vitest';
import { mm } from '../../quantity/index.js';
import { angle, hole, instruct, jointOf, loosen, renew, torque, verify } from '../bench.suite.js';
import { tighteningActs } from './acts.js';

const line = (acts: ReturnType<typeof tighteningActs>) =>
  acts.acts.map((act) => `${act.stage}/${act.hole} ${act.kind} ${act.target.text}`);

describe('flat list of acts', () => {
  it('visits every fastener of a stage before the next stage begins', () => {
    const joint = jointOf({ stages: [torque(30), angle(90)] });
    expect(line(tighteningActs(joint))).toEqual([
      '1/2 torque 30 N·m',
      '1/3 torque 30 N·m',
      '1/1 torque 30 N·m',
      '1/4 torque 30 N·m',
      '2/2 angle 90 deg',
      '2/3 angle 90 deg',
      '2/1 angle 90 deg',
      '2/4 angle 90 deg',
    ]);
  });

  it('loosens in the exact reverse of the printed order where the sheet says reverse', () => {
    const joint = jointOf({ stages: [{ act: loosen('fully'), direction: 'reverse' }] });
    expect(tighteningActs(joint).acts.map((act) => act.hole)).toEqual(['4', '1', '3', '2']);
  });

  it('narrows the visiting order to the holes of a group, and follows a list where the sheet says as listed', () => {
    const group = { holes: ['1', '2', '4'], act: torque(14) };
    const joint = jointOf({
      stages: [group, { ...group, direction: 'reverse' }, { ...group, direction: 'as-listed' }],
    });
    const holes = tighteningActs(joint).acts.map((act) => act.hole);
    expect(holes).toEqual(['2', '1', '4', '4', '1', '2', '1', '2', '4']);
  });

  it('keeps the printed label of entries that make one stage, and counts its own', () => {
    const joint = jointOf({
      stages: [
        { label: '2', holes: ['1'], act: verify(27) },
        { label: '2', holes: ['2'], act: torque(14) },
      ],
    });
    expect(tighteningActs(joint).acts.map(({ stage, label }) => [stage, label])).toEqual([
      [1, '2'],
      [2, '2'],
    ]);
  });

  it('speaks to the whole joint once, and to each named hole once', () => {
    const joint = jointOf({
      stages: [instruct('wait ten minutes'), { holes: ['1', '2'], act: instruct('use the table') }],
    });
    expect(line(tighteningActs(joint))).toEqual([
      '1/all instruct wait ten minutes',
      '2/2 instruct use the table',
      '2/1 instruct use the table',
    ]);
  });

  it('names the stages that cannot be repeated on one fastener', () => {
    const joint = jointOf({
      holes: [hole('1')],
      stages: [torque(50), loosen(360), torque(30), angle(90), loosen('fully'), verify(30), renew],
    });
    expect(tighteningActs(joint).acts.map((act) => act.once)).toEqual([false, true, false, true, false, false, false]);
  });

  it('gives every act its fastener and what goes on it', () => {
    const joint = jointOf({ holes: [hole('1', { onThread: 'sealer', underHead: 'oil' })], stages: [torque(50)] });
    expect(tighteningActs(joint).acts[0]).toMatchObject({
      fastener: { id: 'bolt', thread: 'M10x1.25' },
      onThread: 'sealer',
      underHead: 'oil',
    });
  });
});

describe('visiting order', () => {
  const at = (id: string, x: number) => hole(id, { at: { x: mm(x), y: mm(0) } });

  it('takes the printed order, and says where it is printed', () => {
    const { order } = tighteningActs(jointOf({ stages: [torque(30)] }));
    expect(order).toMatchObject({ origin: 'sheet', holes: ['2', '3', '1', '4'] });
    expect(order.words).toContain('invented');
  });

  it('computes one from the centre outward where the sheet prints none, and says so', () => {
    const holes = [at('1', 0), at('2', 100), at('3', 200), at('4', 300), at('5', 400)];
    const { order, acts } = tighteningActs(jointOf({ holes, stages: [torque(30)] }));
    expect(order.origin).toBe('computed');
    expect(order.words).toMatch(/computed/i);
    expect(order.holes[0]).toBe('3');
    expect(order.holes.slice(1, 3).toSorted()).toEqual(['2', '4']);
    expect(acts.map((act) => act.hole)).toEqual(order.holes);
  });

  it('leaves the fasteners as listed where a position is missing', () => {
    const holes = [at('1', 0), at('2', 100), hole('3')];
    expect(tighteningActs(jointOf({ holes, stages: [torque(30)] })).order).toMatchObject({
      origin: 'as-listed',
      holes: ['1', '2', '3'],
    });
  });
});
