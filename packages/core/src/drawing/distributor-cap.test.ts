import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Shape } from './figure.js';
import { headingFrom } from './geometry.js';
import { distributorCap, figureToSvg, figureToText } from './index.js';

const V8 = [1, 8, 4, 3, 6, 5, 7, 2].map((cylinder, at) => ({ cylinder, past: at * 45 }));
const postsOf = (shapes: readonly Shape[]) =>
  shapes.flatMap((shape) =>
    shape.kind === 'circle' && shape.part?.startsWith('post-')
      ? [{ cylinder: Number(shape.part.slice(5)), towards: headingFrom({ x: 0, y: 0 }, shape.centre) }]
      : [],
  );
const round = (degrees: number) => ((Math.round(degrees) % 360) + 360) % 360;

describe('the cap of a distributor from above', () => {
  it('has its posts in firing order the way the rotor runs, from the post of cylinder one', () => {
    const right = postsOf(distributorCap({ posts: V8, rotor: 'clockwise', firstAt: 30 }).shapes);
    const left = postsOf(distributorCap({ posts: V8, rotor: 'anticlockwise', firstAt: 30 }).shapes);
    expect(right.map(({ cylinder, towards }) => [cylinder, round(towards)]).slice(0, 3)).toEqual([
      [1, 30],
      [8, 75],
      [4, 120],
    ]);
    expect(left.map(({ cylinder, towards }) => [cylinder, round(towards)]).slice(0, 3)).toEqual([
      [1, 30],
      [8, 345],
      [4, 300],
    ]);
  });
  it('says in words what it does not know', () => {
    const { description } = distributorCap({ posts: V8 });
    expect(description).toContain('Which way it runs is not known');
    expect(description).toContain('Where the first post stands on the engine is not known');
    expect(distributorCap({ posts: V8, rotor: 'clockwise', firstAt: 0 }).description).toBe(
      'The rotor points to the post of cylinder 1. It runs clockwise seen from above, and passes cylinders 1, 8, 4, 3, 6, 5, 7 and 2 in this order.',
    );
  });
  it('every pen can draw it, and everything lies inside of its frame', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 16 }),
        fc.integer({ min: 0, max: 359 }),
        fc.integer({ min: 120, max: 1200 }),
        (count, firstAt, shownWidth) => {
          const posts = Array.from({ length: count }, (_, at) => ({ cylinder: at + 1, past: (360 * at) / count }));
          const figure = distributorCap({ posts, rotor: 'clockwise', firstAt }, { shownWidth });
          expect(figureToSvg(figure)).toContain('<svg');
          expect(figureToText(figure)).toContain('Distributor');
          const { left, top, width, height } = figure.bounds;
          for (const shape of figure.shapes) {
            if (shape.kind !== 'label') continue;
            expect(shape.at.x).toBeGreaterThan(left);
            expect(shape.at.x).toBeLessThan(left + width);
            expect(shape.at.y).toBeGreaterThan(top);
            expect(shape.at.y).toBeLessThan(top + height);
          }
        },
      ),
      { numRuns: 40 },
    );
  });
});
