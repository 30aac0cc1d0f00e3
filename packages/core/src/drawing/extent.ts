import type { Figure, Point, Shape } from './figure.js';
import { polar, within } from './geometry.js';

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}
type Label = Extract<Shape, { kind: 'label' }>;

/** Mean advance of a letter over its size; a little generous, because the pen chooses the font. */
const LETTER = 0.6;
export const textWidth = (text: string, size: number): number => [...text].length * size * LETTER;

/** The room that a label takes; `at` is the middle of the letters' height. */
export function labelBox(label: Pick<Label, 'at' | 'text' | 'size' | 'anchor'>): Box {
  const width = textWidth(label.text, label.size);
  const left = label.at.x - { start: 0, middle: width / 2, end: width }[label.anchor];
  const half = label.size * 0.55;
  return { left, right: left + width, top: label.at.y - half, bottom: label.at.y + half };
}
function boxOfPoints(points: readonly Point[]): Box {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < top) top = y;
    if (y > bottom) bottom = y;
  }
  return { left, top, right, bottom };
}
/** Boxes along a curve: a name is many of them wide, so more would only take time. */
const BOXES = 60;

/** Short boxes along a line of points, for what keeps clear of it. */
export function boxesAlong(points: readonly Point[]): readonly Box[] {
  const each = Math.max(1, Math.ceil((points.length - 1) / BOXES));
  const count = Math.ceil((points.length - 1) / each);
  return Array.from({ length: count }, (_, n) => boxOfPoints(points.slice(n * each, (n + 1) * each + 1)));
}
function arcEnds(shape: Extract<Shape, { kind: 'arc' }>): readonly Point[] {
  const span = shape.endDegrees - shape.startDegrees;
  const quarters = [0, 90, 180, 270].filter((turn) => within(turn - shape.startDegrees) <= span);
  return [shape.startDegrees, shape.endDegrees, ...quarters].map((degrees) =>
    polar(shape.centre, shape.radius, degrees + 90),
  );
}
export function shapeBox(shape: Shape): Box {
  switch (shape.kind) {
    case 'line':
      return boxOfPoints([shape.from, shape.to]);
    case 'polyline':
      return boxOfPoints(shape.points);
    case 'circle':
      return aroundPoint(shape.centre, shape.radius);
    case 'arc':
      return boxOfPoints(arcEnds(shape));
    case 'label':
      return labelBox(shape);
  }
}
export const aroundPoint = ({ x, y }: Point, reach: number): Box => ({
  left: x - reach,
  top: y - reach,
  right: x + reach,
  bottom: y + reach,
});
export const joined = (boxes: readonly Box[]): Box => ({
  left: Math.min(...boxes.map((b) => b.left)),
  right: Math.max(...boxes.map((b) => b.right)),
  top: Math.min(...boxes.map((b) => b.top)),
  bottom: Math.max(...boxes.map((b) => b.bottom)),
});
export const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** The frame of a figure: all that is drawn or can be touched, and a margin. */
export function boundsOf(shapes: readonly Shape[], touches: Figure['touches'], margin: number): Figure['bounds'] {
  const all = joined([...shapes.map(shapeBox), ...touches.map((touch) => aroundPoint(touch.centre, touch.reach))]);
  return {
    left: all.left - margin,
    top: all.top - margin,
    width: all.right - all.left + 2 * margin,
    height: all.bottom - all.top + 2 * margin,
  };
}
