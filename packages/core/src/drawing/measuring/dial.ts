import type { Point, Shape } from '../figure.js';
import { at } from '../geometry.js';
import { arrowHead, circle, line } from '../shapes.js';
import type { Scale } from '../sheet-scale.js';

/** A dial gauge whose feeler rests on `tip`, its face at height `y`. */
export function dial(tip: Point, y: number, radius: number): readonly Shape[] {
  return [
    line(tip, at(tip.x, y + radius), 'visible'),
    circle(at(tip.x, y), radius, 'visible', { fill: 'void', part: 'dial' }),
    line(at(tip.x, y), at(tip.x + radius * 0.5, y - radius * 0.6), 'visible'),
  ];
}
/** Two arrow heads that say that a part is moved to and fro. */
export const toAndFro = (from: Point, to: Point, { px }: Scale): readonly Shape[] => [
  line(from, to, 'thin'),
  arrowHead(from, at(from.x - to.x, from.y - to.y), px * 10),
  arrowHead(to, at(to.x - from.x, to.y - from.y), px * 10),
];
