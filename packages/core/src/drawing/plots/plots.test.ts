import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { figureToSvg } from '../pens/svg.js';
import { figureToText } from '../pens/text.js';
import { stepsOf } from './axis.js';
import {
  axisOver,
  crankAxis,
  type Plot,
  placesAlong,
  plotCsv,
  plotFigure,
  plotTable,
  plotWords,
  valueAt,
  valuesAt,
} from './index.js';
import { PHONE_PLOT } from './plot-figure.js';

/** Invented: room of two valves about the overlap. */
const plot: Plot = {
  id: 'room',
  title: 'Room between valve and piston',
  description: 'Invented example.',
  x: crankAxis('crank after the dead centre of overlap', -40, 40),
  left: axisOver('room', 'mm', [2.1, 6.4], [2]),
  right: axisOver('lift', 'mm', [0, 5]),
  curves: [
    {
      id: 'intake',
      name: 'intake',
      axis: 'left',
      line: 'solid',
      symbol: 'circle',
      points: [
        [-40, 6.4],
        [0, 4],
        [10, 2.1],
        [40, 5],
      ],
    },
    {
      id: 'lift',
      name: '=lift',
      axis: 'right',
      line: 'dashed',
      points: [
        [-20, 0],
        [40, 5],
      ],
    },
  ],
  limits: [{ name: 'least', axis: 'left', at: 2, allowed: 'above', from: 'common practice, no source' }],
  marks: [{ id: 'least-room', name: 'least room', x: 10, y: 2.1, axis: 'left' }],
};

describe('an axis', () => {
  it('ends on round numbers and holds every value and the limit', () => {
    expect(axisOver('room', 'mm', [2.1, 6.4], [2])).toMatchObject({ from: 2, to: 7, places: 0 });
    expect(axisOver('lift', 'in', [0.0, 0.43])).toMatchObject({ from: 0, to: 0.5, places: 1 });
  });
  it('holds whatever values it was made for', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.integer({ min: -1e9, max: 1e9 }).map((n) => n / 1e4),
          { minLength: 1 },
        ),
        (values) => {
          const axis = axisOver('x', 'mm', values);
          expect(axis.from).toBeLessThan(axis.to);
          for (const value of values) {
            expect(value).toBeGreaterThanOrEqual(axis.from);
            expect(value).toBeLessThanOrEqual(axis.to);
          }
        },
      ),
    );
  });
  it('of the crank is numbered in parts of a turn', () => {
    expect(stepsOf(crankAxis('crank', 0, 720))).toEqual([0, 90, 180, 270, 360, 450, 540, 630, 720]);
    expect(stepsOf(crankAxis('crank', -40, 40))).toEqual([-40, -30, -20, -10, 0, 10, 20, 30, 40]);
  });
  it('without a finite value still can be drawn', () => {
    expect(axisOver('x', '', [Number.NaN])).toMatchObject({ from: 0, to: 1 });
  });
});

describe('the values of a plot', () => {
  it('lie straight between two points, and are unknown where the curve does not reach', () => {
    expect(valueAt(plot.curves[0]!, 5)).toBeCloseTo(3.05, 12);
    expect(valuesAt(plot, -30)).toEqual([
      { curve: 'intake', name: 'intake', y: expect.closeTo(5.8, 12) },
      { curve: 'lift', name: '=lift', y: undefined },
    ]);
    expect(placesAlong(plot)).toEqual([-40, -20, 0, 10, 40]);
  });
  it('come as a table with an empty cell for what is unknown, never a zero', () => {
    const { columns, rows } = plotTable(plot);
    expect(columns).toEqual(['crank after the dead centre of overlap (°)', 'intake (mm)', '=lift (mm)']);
    expect(rows[0]).toEqual(['-40', '6.4', '']);
  });
  it('come as CSV that reads back, in which no name can run as a formula and a negative number stays one', () => {
    const read = Papa.parse<string[]>(plotCsv(plot).trimEnd());
    expect(read.data[0]![2]).toBe("'=lift (mm)");
    expect(read.data[1]![0]).toBe('-40');
    expect(read.data.length).toBe(6);
  });
});

describe('the figure of a plot', () => {
  it('has a line of another kind for each curve, so that it prints in black and white', () => {
    const curves = plotFigure(plot).shapes.filter((shape) => shape.kind === 'polyline' && shape.part !== undefined);
    expect(curves.map((shape) => shape.kind === 'polyline' && shape.role)).toEqual(['visible', 'hidden']);
  });
  it('keeps every point of a curve inside its frame, at phone size too', () => {
    for (const figure of [plotFigure(plot), plotFigure(plot, PHONE_PLOT)]) {
      const { left, top, width, height } = figure.bounds;
      const points = figure.shapes.flatMap((shape) => (shape.kind === 'polyline' ? shape.points : []));
      expect(points.length).toBeGreaterThan(8);
      for (const { x, y } of points) {
        expect(x >= left && x <= left + width && y >= top && y <= top + height).toBe(true);
      }
    }
  });
  it('tells the least and the greatest of each curve, the limits and the marks in words', () => {
    const words = plotWords(plot);
    expect(words).toContain('intake: from 2.1 mm at 10.0° to 6.4 mm at -40.0°.');
    expect(words).toContain('least: 2.0 mm, allowed above it, from common practice, no source.');
    expect(figureToText(plotFigure(plot))).toContain('Room between valve and piston');
  });
  it('becomes one SVG document, the same each time', () => {
    const svg = figureToSvg(plotFigure(plot));
    expect(svg).toContain('<title');
    expect(figureToSvg(plotFigure(plot))).toBe(svg);
  });
});
