import type { Point, Shape } from '../figure.js';
import { at, plus, polar } from '../geometry.js';
import { arrowHead, circle, line, polygon, rectangle, ringSector } from '../shapes.js';
import type { Scale } from '../sheet-scale.js';
import { type DrawBody, gridOf, pieceOf, SHEET, stacked, told } from './body.js';

/** Housing bores with their caps, one picture for each plane; the gauge stands in each of its directions. */
export const housing: DrawBody = ({ stations }, scale) => {
  const grid = gridOf(stations);
  const planes = told(grid.heights);
  const head = planes.length === 0 ? 0 : scale.px * 32;
  const width = SHEET / grid.heights.length;
  const radius = Math.min(54, width * 0.34);
  const y = head + radius * 1.5;
  const x = (index: number) => pieceOf(0, SHEET, index, grid.heights.length);
  const turn = (index: number) => (180 / grid.directions.length) * index;
  return {
    shapes: [
      ...grid.heights.flatMap((_, i) => capped(at(x(i), y), radius)),
      ...grid.heights.flatMap((_, i) =>
        grid.directions.flatMap((__, d) => diameter(at(x(i), y), radius, turn(d), scale)),
      ),
      ...planes.flatMap((lane, i) => stacked(lane.name, at(x(i), scale.px * 14), width * 0.96, scale.small)),
    ],
    spots: grid.of.map((cell) => polar(at(x(cell.height), y), radius * 0.62, turn(cell.direction))),
    words:
      'The housing bore seen along the crank, cap below and tightened, with the directions in which it is measured.',
  };
};
function capped(centre: Point, radius: number): readonly Shape[] {
  const [out, high] = [radius * 1.42, radius * 1.45];
  const body = (up: number, part: string): Shape =>
    polygon(
      [
        plus(centre, at(-out, 0)),
        plus(centre, at(-out, up * high)),
        plus(centre, at(out, up * high)),
        plus(centre, at(out, 0)),
      ],
      'visible',
      { fill: 'metal', part },
    );
  return [
    body(-1, 'housing'),
    body(1, 'cap'),
    ...[-1.2, 1.2].flatMap((share) => [
      line(plus(centre, at(radius * share, -high * 0.8)), plus(centre, at(radius * share, high)), 'centre'),
      polygon(rectangle(centre.x + radius * share - 5, centre.y + high, 10, 6), 'visible', {
        fill: 'metal',
        part: 'cap bolt',
      }),
    ]),
    circle(centre, radius, 'visible', { fill: 'void', part: 'bore' }),
    line(plus(centre, at(-out, 0)), plus(centre, at(-radius, 0)), 'visible'),
    line(plus(centre, at(radius, 0)), plus(centre, at(out, 0)), 'visible'),
  ];
}
function diameter(centre: Point, radius: number, degrees: number, { px }: Scale): readonly Shape[] {
  const [a, b] = [polar(centre, radius, degrees), polar(centre, radius, degrees + 180)];
  return [
    line(a, b, 'dimension'),
    arrowHead(a, at(a.x - b.x, a.y - b.y), px * 7),
    arrowHead(b, at(b.x - a.x, b.y - a.y), px * 7),
  ];
}
/** One half shell seen along the crank, its wall measured at the middle first. */
export const shell: DrawBody = ({ stations }) => {
  const centre = at(SHEET / 2, 132);
  const [inner, outer] = [92, 124];
  const turns = stations.length === 1 ? [0] : stations.map((_, i) => -62 + (124 * i) / (stations.length - 1));
  return {
    shapes: [
      polygon(ringSector(centre, inner, outer, -90, 90), 'visible', { fill: 'metal', part: 'shell' }),
      ...turns.map((turn) => line(polar(centre, inner - 8, turn), polar(centre, outer + 8, turn), 'dimension')),
      line(plus(centre, at(0, -outer - 8)), plus(centre, at(0, 6)), 'centre'),
      polygon(ringSector(centre, outer, outer + 5, 76, 90), 'visible', { fill: 'metal', part: 'tang' }),
    ],
    spots: turns.map((turn) => polar(centre, (inner + outer) / 2, turn)),
    words: 'One half shell seen along the crank; a ball anvil stands on its hollow side.',
  };
};
