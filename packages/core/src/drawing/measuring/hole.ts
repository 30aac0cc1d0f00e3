import type { Point, Shape } from '../figure.js';
import { at, polar } from '../geometry.js';
import { arrowHead, circle, line, polygon, rectangle } from '../shapes.js';
import type { Scale } from '../sheet-scale.js';
import {
  type Body,
  type DrawBody,
  gridOf,
  type Lane,
  pieceOf,
  rowNames,
  rowWords,
  SHEET,
  stacked,
  told,
} from './body.js';
import type { PlaceShown } from './place-shown.js';

const DEPTH = 132;

interface HoleLook {
  readonly words: string;
  /** Share of the room that the walls at both sides take. */
  readonly wall: number;
  readonly deck: boolean;
}

/** A hole in section, standing on its axis, with the heights as lines across it and one column for each direction. */
function hole({ stations }: PlaceShown, scale: Scale, look: HoleLook): Body {
  const grid = gridOf(stations);
  const [rows, columns] = [told(grid.heights), told(grid.directions)];
  const beside = rowWords(rows, scale.small);
  const gutter = beside.width;
  const head = columns.length === 0 ? 0 : scale.px * 56;
  const wall = (SHEET - gutter) * look.wall;
  const [left, right] = [gutter + wall, SHEET - wall];
  const [top, bottom] = [head, head + DEPTH];
  const y = (index: number) => pieceOf(top + (look.deck ? 4 : 0), bottom, index, grid.heights.length);
  const x = (index: number) => pieceOf(left, right, index, grid.directions.length);
  return {
    shapes: [
      ...walls(gutter, left, right, top, bottom, look.deck),
      line(at((left + right) / 2, top - 6), at((left + right) / 2, bottom + 6), 'centre'),
      ...grid.heights.flatMap((_, i) => across(left, right, y(i), scale)),
      ...rowNames(beside, y, scale.small),
      ...directionHeads(columns, x, (right - left) / Math.max(1, columns.length), scale),
    ],
    spots: grid.of.map((cell) => at(x(cell.direction), y(cell.height))),
    words: look.words,
  };
}
function walls(
  edge: number,
  left: number,
  right: number,
  top: number,
  bottom: number,
  deck: boolean,
): readonly Shape[] {
  const chamfer = deck ? 4 : 0;
  const side = (out: number, inner: number, way: number): Shape =>
    polygon(
      [at(out, top), at(inner - way * chamfer, top), at(inner, top + chamfer), at(inner, bottom), at(out, bottom)],
      'visible',
      { fill: 'metal', part: 'wall' },
    );
  return [
    polygon(rectangle(left, top, right - left, bottom - top), 'thin', { fill: 'void' }),
    side(edge, left, 1),
    side(SHEET, right, -1),
  ];
}
/** A thin line from wall to wall with an arrow head at each end: the gauge spans the diameter there. */
function across(left: number, right: number, y: number, { px }: Scale): readonly Shape[] {
  const [a, b] = [at(left, y), at(right, y)];
  return [line(a, b, 'dimension'), arrowHead(a, at(-1, 0), px * 8), arrowHead(b, at(1, 0), px * 8)];
}
/** Over each column the hole seen from above, with the direction of the gauge across it; the first lies in the paper. */
export function directionHeads(
  columns: readonly Lane[],
  x: (index: number) => number,
  width: number,
  scale: Scale,
): readonly Shape[] {
  return columns.flatMap((column, i) => [
    ...gaugeAcross(at(x(i), scale.px * 12), scale.px * 10, 90 - (180 / columns.length) * i, scale),
    ...stacked(column.name, at(x(i), scale.px * 38), width * 0.96, scale.small),
  ]);
}
/** A circle with a double arrow through it; degrees clockwise from straight up. */
export function gaugeAcross(centre: Point, radius: number, degrees: number, { px }: Scale): readonly Shape[] {
  const [a, b] = [polar(centre, radius, degrees), polar(centre, radius, degrees + 180)];
  const way = at(a.x - b.x, a.y - b.y);
  return [
    circle(centre, radius, 'visible', { fill: 'void' }),
    line(a, b, 'thin'),
    arrowHead(a, way, px * 6),
    arrowHead(b, at(-way.x, -way.y), px * 6),
  ];
}

export const bore: DrawBody = (place, scale) =>
  hole(place, scale, {
    words: 'The bore in section, deck at the top, with the heights at which the gauge spans it.',
    wall: 0.1,
    deck: true,
  });
export const followerBore: DrawBody = (place, scale) =>
  hole(place, scale, { words: 'The follower’s bore in section, upper end at the top.', wall: 0.15, deck: false });
export const guide: DrawBody = (place, scale) =>
  hole(place, scale, { words: 'The valve guide in section, spring end at the top.', wall: 0.17, deck: false });
