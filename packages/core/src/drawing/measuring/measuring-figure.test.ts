import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labelBox, overlap, shapeBox } from '../extent.js';
import type { Figure, Shape } from '../figure.js';
import { at, distance } from '../geometry.js';
import { figureToText } from '../pens/text.js';
import { measuringFigure, type PlaceShown, type StationShown } from './index.js';
import { FIGURE_KINDS, placeOf } from './places.suite.js';
import { readingMark } from './reading-marks.js';

// Properties that hold for every drawing of a place; nothing outside of the project draws the same, so geometry is the judge.
const runs = { numRuns: 60 };
const anyPlace = fc.record({
  kind: fc.constantFrom(...FIGURE_KINDS),
  start: fc.nat(5),
  shownWidth: fc.integer({ min: 276, max: 620 }),
});
/** Places with more stations than usual, with and without heights and directions. */
const anyCrowd: fc.Arbitrary<PlaceShown> = fc
  .record({
    figure: fc.constantFrom(...FIGURE_KINDS),
    heights: fc.integer({ min: 1, max: 5 }),
    directions: fc.integer({ min: 1, max: 3 }),
    placed: fc.boolean(),
  })
  .map(({ figure, heights, directions, placed }) => ({
    figure,
    title: 'Crowded place',
    bores: 8,
    stations: Array.from({ length: heights * directions }, (_, i): StationShown => {
      const [height, direction] = [Math.floor(i / directions), i % directions];
      const name = `height number ${height + 1}, direction number ${direction + 1}`;
      return { slot: `x/1/${i}`, name, state: i % 2 === 0 ? 'in' : 'empty', ...(placed && { height, direction }) };
    }),
  }));
const labelsOf = (figure: Figure) =>
  figure.shapes.filter((shape): shape is Extract<Shape, { kind: 'label' }> => shape.kind === 'label');
const numbersOf = (value: unknown): readonly number[] => {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersOf) : [];
};

describe('the drawing of a place to measure', () => {
  it('has a place to touch for every station, and keeps all inside of its frame', () => {
    fc.assert(
      fc.property(anyPlace, ({ kind, start, shownWidth }) => {
        const place = placeOf(kind, start);
        const figure = measuringFigure(place, { shownWidth });
        expect(figure.touches.map((touch) => touch.part)).toEqual(place.stations.map((station) => station.slot));
        expect(numbersOf(figure).every(Number.isFinite)).toBe(true);
        const { left, top, width, height } = figure.bounds;
        for (const box of figure.shapes.map(shapeBox)) {
          expect(box.left).toBeGreaterThanOrEqual(left);
          expect(box.top).toBeGreaterThanOrEqual(top);
          expect(box.right).toBeLessThanOrEqual(left + width);
          expect(box.bottom).toBeLessThanOrEqual(top + height);
        }
      }),
      runs,
    );
  });
  it('has a place for every station of a crowded one too, each apart from the others', () => {
    fc.assert(
      fc.property(anyCrowd, (place) => {
        const { touches } = measuringFigure(place);
        expect(touches).toHaveLength(place.stations.length);
        touches.forEach((touch, i) => {
          for (const other of touches.slice(i + 1)) {
            expect(distance(touch.centre, other.centre), place.figure).toBeGreaterThan(0);
            expect(touch.reach + other.reach).toBeLessThanOrEqual(distance(touch.centre, other.centre) + 1e-6);
          }
        });
      }),
      runs,
    );
  });
  it('sets no letter under 11 px and no label on top of another', () => {
    fc.assert(
      fc.property(anyPlace, ({ kind, start, shownWidth }) => {
        const figure = measuringFigure(placeOf(kind, start), { shownWidth });
        const px = figure.bounds.width / shownWidth;
        const labels = labelsOf(figure);
        labels.forEach((label, i) => {
          expect(label.size / px).toBeGreaterThanOrEqual(11);
          for (const other of labels.slice(i + 1)) {
            const clash = overlap(labelBox(label), labelBox(other));
            expect(clash && `${kind}: "${label.text}" on "${other.text}"`).toBe(false);
          }
        });
      }),
      runs,
    );
  });
  // Bench ergonomics, section 4 of the design notes: shape and word before colour (WCAG 2.2, 1.4.1).
  it('tells each state of a station without any colour', () => {
    const states: readonly Pick<StationShown, 'state' | 'nearEnd'>[] = [
      { state: 'empty' },
      { state: 'read' },
      { state: 'in' },
      { state: 'near', nearEnd: 'low' },
      { state: 'near', nearEnd: 'high' },
      { state: 'out' },
      { state: 'disagrees' },
    ];
    const drawn = [false, true].flatMap((current) =>
      states.map((state) =>
        JSON.stringify(
          readingMark(at(0, 0), 10, { slot: 'x', name: 'x', ...state }, current).map(({ state: _, ...rest }) => rest),
        ),
      ),
    );
    expect(new Set(drawn).size).toBe(drawn.length);
  });
  it('fills a station once it is read', () => {
    const filled = (state: StationShown['state']) =>
      readingMark(at(0, 0), 10, { slot: 'x', name: 'x', state }, false).some(
        (shape) => shape.kind !== 'label' && shape.fill === 'mark' && shape.kind !== 'line',
      );
    expect(filled('empty')).toBe(false);
    expect((['read', 'in', 'near', 'out'] as const).every(filled)).toBe(true);
  });
  it('says in words what is read, what is asked for now and what is not read', () => {
    const text = figureToText(measuringFigure(placeOf('bore')));
    expect(text).toContain('To read now: bottom, across the crank.');
    expect(text).toContain('top, across the crank 4.0302, in');
    expect(text).toContain('Not read: bottom, across the crank.');
    expect(text).toContain('  - middle, across the crank, 4.0302, near the high end');
  });
});
