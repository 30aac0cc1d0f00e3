import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labelBox, overlap, shapeBox } from './extent.js';
import type { Figure, Shape } from './figure.js';
import { anyCrank, anyWish, engineOf, everyFigure } from './figures.suite.js';
import { distance } from './geometry.js';

// Properties that hold for every drawing; there is nothing outside of the project to compare them with but geometry.
const runs = { numRuns: 30 };
const numbersOf = (value: unknown): readonly number[] => {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersOf);
};
const labelsOf = (figure: Figure) =>
  figure.shapes.filter((shape): shape is Extract<Shape, { kind: 'label' }> => shape.kind === 'label');

describe('every figure of every layout from 1 to 16 cylinders', () => {
  it('holds no number that is not finite', () => {
    fc.assert(
      fc.property(anyWish, anyCrank, (wish, crank) => {
        for (const { name, figure } of everyFigure(engineOf(wish), crank)) {
          expect(numbersOf(figure).every(Number.isFinite), name).toBe(true);
        }
      }),
      runs,
    );
  });
  it('keeps all that is drawn or touched inside of its frame', () => {
    fc.assert(
      fc.property(anyWish, anyCrank, (wish, crank) => {
        for (const { name, figure } of everyFigure(engineOf(wish), crank)) {
          const { left, top, width, height } = figure.bounds;
          for (const box of figure.shapes.map(shapeBox)) {
            const inside =
              box.left >= left && box.top >= top && box.right <= left + width && box.bottom <= top + height;
            expect(inside, name).toBe(true);
          }
        }
      }),
      runs,
    );
  });
  it('has a title and says in words what it shows', () => {
    fc.assert(
      fc.property(anyWish, anyCrank, (wish, crank) => {
        for (const { figure } of everyFigure(engineOf(wish), crank)) {
          expect(figure.title).not.toBe('');
          expect(figure.description.length).toBeGreaterThan(30);
          expect(figure.description).not.toMatch(/undefined|NaN/);
        }
      }),
      runs,
    );
  });
  it('can be read on a phone: no letter under 11 px where the figure is 360 px wide', () => {
    fc.assert(
      fc.property(anyWish, anyCrank, (wish, crank) => {
        for (const { name, figure } of everyFigure(engineOf(wish), crank)) {
          const px = figure.bounds.width / 360;
          const smallest = Math.min(...labelsOf(figure).map((label) => label.size / px));
          expect(smallest, `${name} ${JSON.stringify(wish)}`).toBeGreaterThanOrEqual(11);
        }
      }),
      runs,
    );
  });
  it('sets no label on top of another', () => {
    fc.assert(
      fc.property(anyWish, anyCrank, fc.nat(6), (wish, crank, start) => {
        for (const { name, figure } of everyFigure(engineOf(wish), crank, start)) {
          const labels = labelsOf(figure);
          labels.forEach((label, i) => {
            for (const other of labels.slice(i + 1)) {
              const clash = overlap(labelBox(label), labelBox(other));
              expect(clash && `${name}: "${label.text}" on "${other.text}" ${JSON.stringify(wish)}`).toBe(false);
            }
          });
        }
      }),
      runs,
    );
  });
  it('lets no touch reach over another', () => {
    fc.assert(
      fc.property(anyWish, anyCrank, (wish, crank) => {
        for (const { figure } of everyFigure(engineOf(wish), crank)) {
          figure.touches.forEach((touch, i) => {
            expect(touch.reach).toBeGreaterThan(0);
            expect(touch.name).not.toBe('');
            for (const other of figure.touches.slice(i + 1)) {
              expect(touch.reach + other.reach).toBeLessThanOrEqual(distance(touch.centre, other.centre) + 1e-6);
            }
          });
        }
      }),
      runs,
    );
  });
  it('stands still on the page while the crank turns', () => {
    fc.assert(
      fc.property(anyWish, anyCrank, anyCrank, (wish, one, other) => {
        const engine = engineOf(wish);
        const moving = new Set(['front view', 'valve gear', 'stop']);
        const frames = (crank: typeof one) =>
          everyFigure(engine, crank)
            .filter(({ name }) => moving.has(name))
            .map(({ figure }) => figure.bounds);
        const [before, after] = [frames(one), frames(other)];
        before.forEach((bounds, i) => {
          for (const side of ['left', 'top', 'width', 'height'] as const) {
            expect(after[i]?.[side]).toBeCloseTo(bounds[side], 6);
          }
        });
      }),
      runs,
    );
  });
});
