import { describe, expect, it } from 'vitest';
import type { Head, Opening } from '../engine/index.js';
import type { Figure } from './figure.js';
import { gasketFigure } from './gasket-figure.js';
import { at, distance, minus } from './geometry.js';
import { headFromAbove, ordinal } from './head-from-above.js';
import { INVENTED_ENGINES, inventedEngine } from './test-engines.suite.js';

const v8 = inventedEngine(INVENTED_ENGINES.v8!);
const [left, right] = v8.heads as [Head, Head];
const placeOf = (figure: Figure, part: string) => figure.touches.find((touch) => touch.part === part)!.centre;
const nameOf = (figure: Figure, part: string) => figure.touches.find((touch) => touch.part === part)!.name;

describe('head from above', () => {
  it('keeps the distances of the sheet between holes, in both ways of lying', () => {
    const holes = v8.joints[0]!.holes;
    for (const front of ['left', 'top'] as const) {
      const figure = headFromAbove(v8, left.id, {}, { front });
      for (const hole of holes.slice(1)) {
        const stated = Math.hypot(hole.at!.x - holes[0]!.at!.x, hole.at!.y - holes[0]!.at!.y) * 1000;
        expect(distance(placeOf(figure, hole.id), placeOf(figure, holes[0]!.id))).toBeCloseTo(stated, 9);
      }
    }
  });
  it('lies as a person sees it who bends over the bank: the exhaust on the outer side', () => {
    // Front at the top of the page: the left bank of the engine is seen with its exhaust to the left, the right bank to the right.
    const step = (head: Head) => {
      const figure = headFromAbove(v8, head.id, {}, { front: 'top' });
      // Hole 1 lies on the intake edge, hole 6 on the exhaust edge of the same column.
      return minus(placeOf(figure, '6'), placeOf(figure, '1'));
    };
    expect(step(left).x).toBeLessThan(0);
    expect(step(right).x).toBeGreaterThan(0);
  });
  it('never shows a mirror image: the turn from front to exhaust is the same however the page lies', () => {
    for (const head of [left, right]) {
      const sense = (front: 'left' | 'top') => {
        const figure = headFromAbove(v8, head.id, {}, { front });
        const back = minus(placeOf(figure, '5'), placeOf(figure, '1'));
        const out = minus(placeOf(figure, '6'), placeOf(figure, '1'));
        return Math.sign(back.x * out.y - back.y * out.x);
      };
      expect(sense('left')).toBe(sense('top'));
    }
  });
  it('names each hole with its place in the order and its state', () => {
    const order = v8.joints[0]!.order!.holes;
    const figure = headFromAbove(v8, left.id, { 3: 'done', 8: 'lit' });
    expect(nameOf(figure, '8')).toBe(`hole 8, ${order.indexOf('8') + 1} of ${order.length} in order, to do now`);
    expect(figure.description).toContain(`Order: ${order.join(', ')}.`);
    expect(figure.description).toContain('To do now: hole 8. Done: hole 3.');
  });
  it('follows another order where it is given one', () => {
    const figure = headFromAbove(v8, left.id, {}, { order: ['5', '4', '3', '2', '1'] });
    expect(nameOf(figure, '5')).toBe('hole 5, 1 of 5 in order');
    expect(nameOf(figure, '9')).toBe('hole 9');
  });
  it('lays holes without places in rows and warns that these are not their places', () => {
    const bare = inventedEngine(INVENTED_ENGINES.bare!);
    const figure = headFromAbove(bare, bare.heads[0]!.id);
    expect(figure.touches).toHaveLength(10);
    expect(figure.description).toContain('Do not take their place from this drawing');
  });
  it('draws a hole that alone lacks its place beside the head, and says which', () => {
    const joint = v8.joints[0]!;
    const holes = joint.holes.map((hole) => {
      const { at: place, ...rest } = hole;
      return hole.id === '4' || place === undefined ? rest : hole;
    });
    const engine = { ...v8, joints: [{ ...joint, holes }, ...v8.joints.slice(1)] };
    const figure = headFromAbove(engine, left.id);
    expect(figure.description).toContain('No place is given for hole 4');
    expect(figure.touches).toHaveLength(joint.holes.length);
  });
  it('turns to lie upright when holes or labels would be too near on a phone', () => {
    const six = inventedEngine(INVENTED_ENGINES.i6!);
    const phone = headFromAbove(six, six.heads[0]!.id);
    const laptop = headFromAbove(six, six.heads[0]!.id, {}, { shownWidth: 1000 });
    expect(phone.description).toContain('front of the engine is at the top');
    expect(laptop.description).toContain('front of the engine is at the left');
  });
  it('says that a head without fasteners has none in the sheet', () => {
    expect(headFromAbove({ ...v8, joints: [] }, left.id).description).toContain('gives no fasteners');
  });
  it('gives every hole of a long head a touch of at least 44 px on a phone', () => {
    for (const name of ['v8', 'i6', 'i4', 'v12', 'five']) {
      const engine = inventedEngine(INVENTED_ENGINES[name]!);
      for (const head of engine.heads) {
        const figure = headFromAbove(engine, head.id);
        const px = figure.bounds.width / 360;
        const least = Math.min(...figure.touches.map((touch) => (2 * touch.reach) / px));
        expect(least, name).toBeGreaterThanOrEqual(43);
      }
    }
  });
  it('counts in words that are not taken for a hole', () => {
    expect([1, 2, 3, 4, 11, 12, 13, 21, 22, 101, 112].map(ordinal).join(' ')).toBe(
      '1st 2nd 3rd 4th 11th 12th 13th 21st 22nd 101st 112th',
    );
  });
  it('refuses a head that the engine does not have', () => {
    expect(() => headFromAbove(v8, 'elsewhere')).toThrow('no head "elsewhere"');
  });
});

describe('gasket', () => {
  const withOpening = (opening: Opening) => ({
    ...v8,
    heads: [{ ...left, gasket: { ...left.gasket, openings: [opening] } }, right],
  });
  const opening = left.gasket.openings.find((each) => each.kind === 'water')!;

  it('has a touch for every opening of the sheet, at its place', () => {
    const figure = gasketFigure(v8, left.id);
    expect(figure.touches.map((touch) => touch.part)).toEqual(left.gasket.openings.map((each) => each.id));
    const [a, b] = [left.gasket.openings[0]!, left.gasket.openings[9]!];
    const stated = Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y) * 1000;
    expect(distance(placeOf(figure, a.id), placeOf(figure, b.id))).toBeCloseTo(stated, 9);
  });
  it('lies on the page as its head does', () => {
    const gasket = gasketFigure(v8, right.id, {}, { front: 'left' });
    const head = headFromAbove(v8, right.id, {}, { front: 'left' });
    // Bolt openings of the gasket and holes of the joint are the same places.
    expect(distance(placeOf(gasket, 'bolt 3'), placeOf(head, '3'))).toBeCloseTo(0, 9);
  });
  it('says which way is up and what an opening is for', () => {
    const figure = gasketFigure(v8, left.id, { W1: 'lit' });
    expect(figure.description).toContain('Way up: bead up, TOP mark to the head.');
    expect(nameOf(figure, 'W1')).toBe('water hole W1, to do now');
  });
  it('draws an opening that is closed or metered on purpose otherwise than an open one', () => {
    const shapesFor = (intent: Opening['intent']) =>
      gasketFigure(withOpening({ ...opening, intent }), left.id).shapes.filter((shape) => shape.part === opening.id)
        .length;
    expect(shapesFor('closed')).toBeGreaterThan(shapesFor('open'));
    expect(shapesFor('metered')).toBeGreaterThan(shapesFor('open'));
    expect(nameOf(gasketFigure(withOpening({ ...opening, intent: 'closed' }), left.id), opening.id)).toContain(
      'closed as drawn',
    );
  });
  it('draws a very small opening large enough to be seen', () => {
    const figure = gasketFigure(withOpening({ ...opening, diameter: 0.0004 as Opening['diameter'] }), left.id);
    const rim = figure.shapes.find((shape) => shape.kind === 'circle' && shape.part === opening.id);
    expect(rim?.kind === 'circle' ? (2 * rim.radius * 360) / figure.bounds.width : 0).toBeGreaterThan(6);
  });
  it('stands in the place of the page where nothing is stated', () => {
    const none = gasketFigure({ ...v8, heads: [{ ...left, gasket: { ...left.gasket, openings: [] } }] }, left.id);
    expect(none.touches).toEqual([]);
    expect(none.description).toContain('gives no openings');
    expect(at(none.bounds.width, none.bounds.height).x).toBeGreaterThan(0);
  });
});
