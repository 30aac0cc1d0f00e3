/** A plot as a figure: the same pens draw it on the screen, on paper and as a file. */
import { formatNumber } from '../../quantity/index.js';
import { compose } from '../compose.js';
import { type Box, boxesAlong, shapeBox, textWidth } from '../extent.js';
import type { Figure, LineRole, Point, Shape } from '../figure.js';
import { at } from '../geometry.js';
import { placeLabelsRather, type Wanted } from '../lettering.js';
import { circle, label, line, polygon, polyline } from '../shapes.js';
import { placeOn, stepsOf } from './axis.js';
import type { Axis, Curve, Plot } from './plot.js';
import { axisText, plotWords } from './plot-words.js';

/** Size of the drawing in millimetres of its own, and of its letters: a phone gets a narrow figure with the same letters. */
export interface PlotSize {
  readonly width: number;
  readonly height: number;
  readonly letter: number;
}
export const LAPTOP_PLOT: PlotSize = { width: 200, height: 110, letter: 5 };
export const PHONE_PLOT: PlotSize = { width: 100, height: 100, letter: 5 };

/** Where values lie on the drawing, in its millimetres. */
export interface Field {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly letter: number;
  readonly x: (value: number) => number;
  readonly y: (axis: 'left' | 'right', value: number) => number;
}

const numberText = (axis: Axis, value: number): string => formatNumber(value, axis.places);

/** The rectangle that the curves have, in the units of the figure, once names and numbers of the axes have their room. Assumes axes with steps. */
export function fieldOf(plot: Plot, { width, height, letter }: PlotSize): Field {
  const room = (axis: Axis) =>
    letter * (0.62 * Math.max(...stepsOf(axis).map((v) => numberText(axis, v).length)) + 0.8);
  const left = room(plot.left);
  const right = width - (plot.right ? room(plot.right) : letter);
  const top = letter * (1.6 + 1.3 * Math.max(1, plot.curves.length));
  const bottom = height - letter * 3.2;
  const places = {
    left: placeOn(plot.left, bottom, top),
    right: placeOn(plot.right ?? plot.left, bottom, top),
  };
  return { left, right, top, bottom, letter, x: placeOn(plot.x, left, right), y: (axis, value) => places[axis](value) };
}

/** Figure of a plot: frame, numbers, limits with the forbidden side hatched, curves with a name each, and marks. */
export function plotFigure(plot: Plot, size: PlotSize = LAPTOP_PLOT): Figure {
  const field = fieldOf(plot, size);
  const curves = plot.curves.flatMap((curve, number) => curveShapes(curve, number, field));
  const within = { left: field.left, right: field.right, top: field.top, bottom: field.bottom };
  const names = placeLabelsRather(
    namesIn(plot, field),
    [
      ...curves.flatMap(boxesOf),
      ...plot.limits.map((limit) => hatchBox(limit, field)),
      numbersBelow(field),
      ...numbersBeside(plot, field),
    ],
    outsideOf(field),
    within,
  );
  return compose({
    title: plot.title,
    description: [plot.description, plotWords(plot)],
    shapes: [
      ...frame(plot, field),
      ...plot.limits.flatMap((limit) => limitShapes(limit, field)),
      ...curves,
      ...plot.curves.flatMap((curve, number) => legendLine(curve, number, field)),
      ...plot.marks.flatMap((mark) => markShapes(mark, field)),
      ...names.shapes,
    ],
    margin: size.letter * 0.4,
  });
}

/** Key, numbers and names of the axes; the frame is a line too, and no name stands across it. */
function outsideOf({ left, right, top, bottom, letter }: Field): readonly Box[] {
  const half = letter * 0.1;
  return [
    { left: 0, right: left + right, top: 0, bottom: top + half },
    { left: 0, right: left + half, top, bottom },
    { left: right - half, right: left + right, top, bottom },
    { left: 0, right: left + right, top: bottom - half, bottom: bottom + letter * 3 },
  ];
}

const numbersBelow = (f: Field): Box => ({
  left: 0,
  right: f.right + f.left,
  top: f.bottom,
  bottom: f.bottom + f.letter * 3,
});

function numbersBeside(plot: Plot, { left, right, top, bottom, letter }: Field): readonly Box[] {
  const off = letter * 0.3;
  const width = left + right;
  return [
    { left: -width, right: left - off, top, bottom },
    ...(plot.right ? [{ left: right + off, right: right + width, top, bottom }] : []),
  ];
}

/** What a label keeps clear of: symbols, and the way of a curve in short boxes. */
const boxesOf = (shape: Shape): readonly Box[] =>
  shape.kind !== 'polyline' || shape.closed ? [shapeBox(shape)] : boxesAlong(shape.points);

/** Names keep off the line of a limit and its hatching. */
function hatchBox({ axis, at: value, allowed }: Plot['limits'][number], f: Field): Box {
  const y = f.y(axis, value);
  const down = hatchDepth(allowed, f);
  return { left: f.left, right: f.right, top: Math.min(y, y + down), bottom: Math.max(y, y + down) };
}

/** Names of limits and marks, which look for a free place. */
function namesIn(plot: Plot, f: Field): readonly Wanted[] {
  const limits = plot.limits.map((limit): Wanted => {
    const y = f.y(limit.axis, limit.at);
    const half = textWidth(limit.name, f.letter) / 2 + f.letter * 0.5;
    return {
      text: limit.name,
      size: f.letter,
      centre: at(f.right - half, y),
      or: [at(f.left + half, y), at((f.left + f.right) / 2, y)],
      clear: f.letter * 0.3,
      must: true,
    };
  });
  const marks = plot.marks
    .filter(({ x }) => f.x(x) >= f.left && f.x(x) <= f.right)
    .map((mark): Wanted => {
      const y = mark.y === undefined ? f.top + f.letter * 0.8 : f.y(mark.axis, mark.y);
      const state = mark.y === undefined ? {} : ({ state: 'lit' } as const);
      return {
        text: mark.name,
        size: f.letter,
        centre: at(f.x(mark.x), y),
        clear: f.letter * 0.5,
        part: mark.id,
        must: true,
        ...state,
      };
    });
  // A mark has one place, a limit its whole line.
  return [...marks, ...limits.filter(({ centre }) => centre.y >= f.top && centre.y <= f.bottom)];
}

function frame(plot: Plot, f: Field): readonly Shape[] {
  const corners = [at(f.left, f.top), at(f.right, f.top), at(f.right, f.bottom), at(f.left, f.bottom)];
  const numbered = new Set(roomyNumbers(plot.x, f));
  const across = stepsOf(plot.x).flatMap((value) => [
    line(at(f.x(value), f.bottom), at(f.x(value), f.bottom + f.letter * 0.35), 'thin'),
    ...(numbered.has(value) ? [label(at(f.x(value), f.bottom + f.letter), numberText(plot.x, value), f.letter)] : []),
  ]);
  return [
    polygon(corners, 'thin'),
    ...across,
    label(at((f.left + f.right) / 2, f.bottom + f.letter * 2.4), axisText(plot.x), f.letter),
    ...upright(plot.left, 'left', f),
    ...(plot.right ? upright(plot.right, 'right', f) : []),
  ];
}

/** Numbers below the frame: every step, or every second or third where they would run into each other; nought is one of them. */
function roomyNumbers(axis: Axis, f: Field): readonly number[] {
  const steps = stepsOf(axis);
  const [first = 0, second = first] = steps;
  const widest = Math.max(...steps.map((value) => textWidth(numberText(axis, value), f.letter)));
  const each = Math.max(1, Math.ceil((widest + f.letter * 0.6) / Math.abs(f.x(second) - f.x(first) || widest)));
  const from = Math.max(0, steps.indexOf(0)) % each;
  return steps.filter((_, place) => place % each === from);
}

function upright(axis: Axis, side: 'left' | 'right', f: Field): readonly Shape[] {
  const edge = side === 'left' ? f.left : f.right;
  const out = side === 'left' ? -1 : 1;
  const anchor = side === 'left' ? 'end' : 'start';
  const numbers = stepsOf(axis).flatMap((value) => [
    line(at(edge, f.y(side, value)), at(edge + out * f.letter * 0.35, f.y(side, value)), 'thin'),
    label(at(edge + out * f.letter * 0.5, f.y(side, value)), numberText(axis, value), f.letter, { anchor }),
  ]);
  const name = label(at(side === 'left' ? 0 : f.right, f.letter * 0.7), axisText(axis), f.letter, {
    anchor: side === 'left' ? 'start' : 'end',
  });
  return [...numbers, name];
}

const hatchDepth = (allowed: Plot['limits'][number]['allowed'], { letter }: Field): number =>
  (allowed === 'above' ? 1 : -1) * letter * 0.7;
const HATCHES = 16;
/** A limit with short strokes on the side that is not allowed, as a drawing hatches what is solid. */
function limitShapes({ axis, at: value, allowed }: Plot['limits'][number], f: Field): readonly Shape[] {
  const y = f.y(axis, value);
  if (y < f.top || y > f.bottom) return [];
  const down = hatchDepth(allowed, f);
  const step = (f.right - f.left) / HATCHES;
  const strokes = Array.from({ length: HATCHES }, (_, n) => {
    const x = f.left + (n + 0.5) * step;
    return line(at(x, y), at(x - f.letter * 0.5, y + down), 'thin');
  });
  return [line(at(f.left, y), at(f.right, y), 'dimension'), ...strokes];
}

const ROLES: Readonly<Record<Curve['line'], LineRole>> = {
  solid: 'visible',
  dashed: 'hidden',
  chain: 'centre',
  dotted: 'thin',
  none: 'thin',
};
/** Symbols on a drawn curve: enough to follow it, few enough to see the line. */
const SYMBOLS = 7;

function curveShapes(curve: Curve, number: number, f: Field): readonly Shape[] {
  const points = curve.points.map(([x, y]) => at(f.x(x), f.y(curve.axis, y)));
  const every = curve.line === 'none' ? 1 : Math.max(1, Math.floor(points.length / SYMBOLS));
  const offset = curve.line === 'none' ? 0 : Math.floor((every * (number + 1)) / 5);
  const symbols = curve.symbol
    ? points
        .filter((_, n) => n % every === offset % every)
        .flatMap((point) => symbol(curve.symbol!, point, f.letter * 0.32))
    : [];
  const drawn =
    curve.line === 'none' || points.length < 2 ? [] : [polyline(points, ROLES[curve.line], { part: curve.id })];
  return [...drawn, ...symbols];
}

function symbol(kind: NonNullable<Curve['symbol']>, { x, y }: Point, r: number): readonly Shape[] {
  switch (kind) {
    case 'circle':
      return [circle(at(x, y), r, 'thin', { fill: 'mark' })];
    case 'square':
      return [
        polygon([at(x - r, y - r), at(x + r, y - r), at(x + r, y + r), at(x - r, y + r)], 'thin', { fill: 'mark' }),
      ];
    case 'triangle':
      return [polygon([at(x, y - r * 1.2), at(x + r * 1.1, y + r), at(x - r * 1.1, y + r)], 'thin', { fill: 'mark' })];
    case 'cross':
      return [line(at(x - r, y - r), at(x + r, y + r), 'visible'), line(at(x - r, y + r), at(x + r, y - r), 'visible')];
  }
}

/** One line of the key above the plot: a sample of the line, its symbol and its name. */
function legendLine(curve: Curve, number: number, f: Field): readonly Shape[] {
  const y = f.letter * (2.1 + 1.3 * number);
  const end = f.left + f.letter * 3.4;
  const middle = at((f.left + end) / 2, y);
  return [
    ...(curve.line === 'none' ? [] : [line(at(f.left, y), at(end, y), ROLES[curve.line])]),
    ...(curve.symbol ? symbol(curve.symbol, middle, f.letter * 0.32) : []),
    label(at(end + f.letter * 0.6, y), curve.name, f.letter, { anchor: 'start' }),
  ];
}

function markShapes({ id, x, y, axis }: Plot['marks'][number], f: Field): readonly Shape[] {
  const across = f.x(x);
  if (across < f.left || across > f.right) return [];
  if (y === undefined) return [line(at(across, f.top), at(across, f.bottom), 'centre', { part: id })];
  return [circle(at(across, f.y(axis, y)), f.letter * 0.5, 'visible', { part: id, state: 'lit' })];
}
