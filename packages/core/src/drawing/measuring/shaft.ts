import type { Shape } from '../figure.js';
import { at } from '../geometry.js';
import { arrowHead, breakLine, line, polygon, polyline, rectangle } from '../shapes.js';
import type { Scale } from '../sheet-scale.js';
import { type Body, type DrawBody, gridOf, pieceOf, rowNames, rowWords, SHEET, stacked, told } from './body.js';
import { gaugeAcross } from './hole.js';
import type { PlaceShown } from './place-shown.js';

/** A lying shaft: planes along it, and one row for each direction, told by a gauge across its end. */
interface Lying {
  readonly words: string;
  /** What stands at both ends; the room of the shaft between them. */
  readonly ends: (room: Room) => readonly Shape[];
  readonly inset: number;
  readonly least: number;
}
interface Room {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}
function lying({ stations }: PlaceShown, scale: Scale, look: Lying): Body {
  const grid = gridOf(stations);
  const [planes, directions] = [told(grid.heights), told(grid.directions)];
  const sign = directions.length === 0 ? 0 : scale.px * 30;
  const beside = rowWords(directions, scale.small);
  const gutter = sign + beside.width;
  const head = planes.length === 0 ? look.inset * 0.5 : Math.max(look.inset * 0.5, scale.px * 32);
  const tall = Math.max(look.least, grid.directions.length * scale.px * 46);
  const room: Room = { left: gutter + look.inset, right: SHEET - look.inset, top: head, bottom: head + tall };
  const x = (index: number) => pieceOf(room.left, room.right, index, grid.heights.length);
  const y = (index: number) => pieceOf(room.top, room.bottom, index, grid.directions.length);
  const middle = (room.top + room.bottom) / 2;
  return {
    shapes: [
      ...look.ends(room),
      polygon(rectangle(room.left, room.top, room.right - room.left, tall), 'visible', {
        fill: 'metal',
        part: 'shaft',
      }),
      line(at(gutter, middle), at(SHEET, middle), 'centre'),
      ...grid.heights.flatMap((_, i) => plane(x(i), room, scale)),
      ...planes.flatMap((lane, i) =>
        stacked(lane.name, at(x(i), scale.px * 14), ((room.right - room.left) / planes.length) * 0.96, scale.small),
      ),
      ...directions.flatMap((_, i) =>
        gaugeAcross(at(scale.px * 11, y(i)), scale.px * 10, (180 / directions.length) * i, scale),
      ),
      ...rowNames(beside, y, scale.small).map((shape) => shifted(shape, sign)),
    ],
    spots: grid.of.map((cell) => at(x(cell.height), y(cell.direction))),
    words: look.words,
  };
}
const shifted = (shape: Shape, x: number): Shape =>
  shape.kind === 'label' ? { ...shape, at: at(shape.at.x + x, shape.at.y) } : shape;

/** A plane across the shaft, with the gauge's arrow heads pressing from outside. */
function plane(x: number, { top, bottom }: Room, { px }: Scale): readonly Shape[] {
  return [
    line(at(x, top), at(x, bottom), 'dimension'),
    arrowHead(at(x, top), at(0, 1), px * 8),
    arrowHead(at(x, bottom), at(0, -1), px * 8),
  ];
}
/** Webs of a crankshaft at both sides, with the fillets. */
function webs({ left, right, top, bottom }: Room): readonly Shape[] {
  const web = (x: number): Shape =>
    polygon(rectangle(x, top - 14, 22, bottom - top + 28), 'visible', { fill: 'metal', part: 'web' });
  return [web(left - 22), web(right)];
}
export const journal: DrawBody = (place, scale) =>
  lying(place, scale, {
    words:
      'The journal from the side between its webs, with the planes in which it is measured; keep off the oil hole and the fillets.',
    ends: webs,
    inset: 30,
    least: 86,
  });
export const pin: DrawBody = (place, scale) =>
  lying(place, scale, {
    words: 'The gudgeon pin from the side, hollow, with the planes in which it is measured.',
    ends: ({ left, right, top, bottom }) => {
      const wall = (bottom - top) * 0.24;
      return [
        line(at(left, top + wall), at(right, top + wall), 'hidden'),
        line(at(left, bottom - wall), at(right, bottom - wall), 'hidden'),
      ];
    },
    inset: 12,
    least: 78,
  });
export const stem: DrawBody = (place, scale) =>
  lying(place, scale, {
    words:
      'The valve lying, tip at the left, head at the right, with the planes on its stem; keep off the keeper grooves.',
    ends: ({ left, right, top, bottom }) => {
      const [middle, half] = [(top + bottom) / 2, (bottom - top) / 2];
      return [
        polygon(rectangle(left - 22, top + 2, 22, 2 * half - 4), 'visible', { fill: 'metal', part: 'tip' }),
        line(at(left - 12, top + 2), at(left - 12, bottom - 2), 'thin'),
        polygon(
          [
            at(right, top),
            at(right + 16, top - 6),
            at(right + 30, top - 34),
            at(right + 38, top - 34),
            at(right + 38, bottom + 34),
            at(right + 30, bottom + 34),
            at(right + 16, bottom + 6),
            at(right, bottom),
          ],
          'visible',
          { fill: 'metal', part: 'valve head' },
        ),
        line(at(left - 30, middle), at(right + 44, middle), 'centre'),
      ];
    },
    inset: 44,
    least: 44,
  });
/** A long part with its ends: the gauge spans it from end to end. */
export const length: DrawBody = ({ stations }, scale) => {
  const [top, tall] = [scale.px * 26, 40];
  const bottom = top + tall;
  const out = bottom + scale.px * 26;
  return {
    shapes: [
      polygon(rectangle(20, top, SHEET - 40, tall), 'visible', { fill: 'metal', part: 'part' }),
      breakLine(at(SHEET / 2 + 50, top - 4), at(SHEET / 2 + 50, bottom + 4)),
      ...[20, SHEET - 20].map((x) => line(at(x, bottom), at(x, out + scale.px * 6), 'dimension')),
      polyline([at(20, out), at(SHEET - 20, out)], 'dimension'),
      arrowHead(at(20, out), at(-1, 0), scale.px * 9),
      arrowHead(at(SHEET - 20, out), at(1, 0), scale.px * 9),
    ],
    spots: stations.map((_, i) => at(pieceOf(20, SHEET - 20, i, stations.length), top + tall / 2)),
    words: 'The part with its length marked from end to end.',
  };
};
