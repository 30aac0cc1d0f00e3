import { describe, expect, it } from 'vitest';
import { degrees } from '../quantity/index.js';
import { DEGREE } from './angles.js';
import { firingDeadCentres, throwAngles } from './dead-centres.js';
import type { Layout } from './model.js';

interface Plan {
  readonly banks: Readonly<Record<string, number>>;
  readonly cylinders: Readonly<Record<string, readonly number[]>>;
  readonly order: string;
  readonly intervals?: readonly number[];
  readonly rotation?: Layout['rotation'];
}
function layoutOf({ banks, cylinders, order, intervals, rotation = 'clockwise' }: Plan): Layout {
  const numbered = Object.entries(cylinders).flatMap(([bank, numbers]) => numbers.map((number) => ({ number, bank })));
  return {
    form: Object.keys(banks).length > 1 ? 'vee' : 'inline',
    banks: Object.entries(banks).map(([id, angle]) => ({ id, angle: degrees(angle) })),
    cylinders: numbered.map((each, index) => ({ ...each, place: index + 1 })),
    rotation,
    firingOrder: order.split('-').map(Number),
    ...(intervals === undefined ? {} : { firingIntervals: intervals.map(degrees) }),
  };
}
const rounded = (angles: ReadonlyMap<number, number>, turn: number) =>
  [...angles].sort(([a], [b]) => a - b).map(([, angle]) => (Math.round((angle / DEGREE) * 1000) / 1000) % turn);
function centres(plan: Plan, turn = 720): readonly number[] {
  const found = firingDeadCentres(layoutOf(plan));
  return found.ok ? rounded(found.value, turn) : [];
}
function throws(plan: Plan): readonly number[] {
  const found = throwAngles(layoutOf(plan));
  return found.ok ? rounded(found.value, 360) : [];
}

// The driver's left bank stands clockwise of straight up for someone in front of the engine.
const ODD_LEFT = { banks: { left: 45, right: -45 }, cylinders: { left: [1, 3, 5, 7], right: [2, 4, 6, 8] } };
const FIRST_RIGHT = { banks: { right: -45, left: 45 }, cylinders: { right: [1, 2, 3, 4], left: [5, 6, 7, 8] } };

describe('firing dead centres', () => {
  it('follow the firing order at even intervals (definition: 720 degrees / cylinders)', () => {
    expect(centres({ banks: { main: 0 }, cylinders: { main: [1, 2, 3, 4] }, order: '1-3-4-2' })).toEqual([
      0, 540, 180, 360,
    ]);
  });

  // Source: reference mechanism-open.md row MO-36 (orders read in service data; check derived there).
  it.each(['1-8-4-3-6-5-7-2', '1-8-7-2-6-5-4-3'])('of the cross-plane order %s stand on the same crank', (order) => {
    expect(centres({ ...ODD_LEFT, order }, 360)).toEqual([0, 270, 270, 180, 90, 0, 180, 90]);
  });

  // Source: MO-36, orders with pins shared by (1,5)(2,6)(3,7)(4,8).
  it.each(['1-5-4-2-6-3-7-8', '1-3-7-2-6-5-4-8'])('of the order %s keep every pin-mate 90 degrees later', (order) => {
    const at = centres({ ...FIRST_RIGHT, order }, 360);
    expect([1, 2, 3, 4].map((pin) => (at[pin + 3]! - at[pin - 1]! + 360) % 360)).toEqual([90, 90, 90, 90]);
  });

  it('count from cylinder 1 wherever the order begins', () => {
    expect(centres({ banks: { main: 0 }, cylinders: { main: [1, 2, 3] }, order: '2-3-1' })).toEqual([0, 240, 480]);
  });

  it('are refused where the sheet does not print the order', () => {
    const layout = { ...layoutOf({ ...ODD_LEFT, order: '1' }), firingOrder: [] };
    expect(firingDeadCentres(layout)).toEqual({ ok: false, fault: { code: 'firing-order-not-stated' } });
    expect(throwAngles(layout)).toEqual({ ok: false, fault: { code: 'firing-order-not-stated' } });
  });
});

describe('throw angles', () => {
  it('of pin-mates are equal in a cross-plane vee with shared pins (MO-36)', () => {
    const at = throws({ ...ODD_LEFT, order: '1-8-4-3-6-5-7-2' });
    expect([at[0], at[2], at[4], at[6]]).toEqual([at[1], at[3], at[5], at[7]]);
    expect(new Set(at)).toEqual(new Set([0, 90, 180, 270]));
  });

  it('of an inline six that fires 1-5-3-6-2-4 pair the ends and the middles', () => {
    expect(throws({ banks: { main: 0 }, cylinders: { main: [1, 2, 3, 4, 5, 6] }, order: '1-5-3-6-2-4' })).toEqual([
      0, 240, 120, 120, 240, 0,
    ]);
  });

  // Source: reference row MO-37: common-pin V6 of 90 degrees alternates 90 / 150; V-twins 315 / 405 and 270 / 450.
  it('put each pair of an uneven V6 on one pin when the intervals alternate 150 and 90', () => {
    const plan = {
      banks: { left: 45, right: -45 },
      cylinders: { left: [1, 3, 5], right: [2, 4, 6] },
      order: '1-6-5-4-3-2',
    };
    const at = throws({ ...plan, intervals: [150, 90, 150, 90, 150, 90] });
    expect([at[0], at[2], at[4]]).toEqual([at[1], at[3], at[5]]);
  });
  it.each([
    [45, [315, 405]],
    [90, [270, 450]],
  ])('put both cylinders of a %s degree V-twin on one pin at the intervals %j', (vee, intervals) => {
    expect(
      throws({
        banks: { front: vee / 2, rear: -vee / 2 },
        cylinders: { front: [1], rear: [2] },
        order: '1-2',
        intervals,
      }),
    ).toEqual([0, 0]);
  });
  it.each([
    [90, 30],
    [60, 60],
  ])('split the pins of an even-fire V6 of %s degrees by %s degrees (MO-37)', (vee, splay) => {
    const at = throws({
      banks: { right: -vee / 2, left: vee / 2 },
      cylinders: { right: [1, 3, 5], left: [2, 4, 6] },
      order: '1-2-3-4-5-6',
    });
    for (const pair of [0, 2, 4]) expect((at[pair]! - at[pair + 1]! + 360) % 360).toBe(splay);
  });

  it('mirror when the engine runs the other way and stands the other way round', () => {
    const mirrored = { banks: { left: -45, right: 45 }, cylinders: ODD_LEFT.cylinders, order: '1-8-4-3-6-5-7-2' };
    expect(throws({ ...mirrored, rotation: 'anticlockwise' })).toEqual(
      throws({ ...ODD_LEFT, order: '1-8-4-3-6-5-7-2' }),
    );
  });
});
