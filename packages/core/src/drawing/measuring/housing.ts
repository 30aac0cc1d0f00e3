import type { Point, Shape } from '../figure.js';
import { at, plus, polar } from '../geometry.js';
import { arrowHead, circle, line, polygon, rectangle, ringSector } from '../shapes.js';
import type { Scale } from '../sheet-scale.js';
import { type DrawBody, gridOf, pieceOf, SHEET, spreadOn, stacked, told } from './body.js';

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

/** The piston from the side, pin across, with the height from the skirt's lower edge at which it is measured. */
export const piston: DrawBody = ({ stations }, scale) => {
  const [left, right, crown, skirt] = [78, 222, 8, 142];
  const high = stations.length === 1 ? 112 : 76;
  const spots = spreadOn(
    stations,
    at(right, high - 20 + (stations.length === 1 ? 20 : 0)),
    at(right, stations.length === 1 ? high : skirt + 8),
  );
  return {
    shapes: [
      polygon(
        [
          at(left + 6, crown),
          at(right - 6, crown),
          at(right, crown + 6),
          at(right, skirt),
          at(left, skirt),
          at(left, crown + 6),
        ],
        'visible',
        { fill: 'metal', part: 'piston' },
      ),
      ...[0, 1, 2].map((ring) =>
        polygon(rectangle(left, crown + 14 + ring * 13, right - left, 5), 'visible', { fill: 'void', part: 'groove' }),
      ),
      circle(at(150, 82), 17, 'visible', { fill: 'void', part: 'pin hole' }),
      line(at(150, crown - 6), at(150, skirt + 8), 'centre'),
      line(at(122, 82), at(178, 82), 'centre'),
      ...spots.flatMap((spot) => [
        line(at(left, spot.y), at(right, spot.y), 'dimension'),
        arrowHead(at(left, spot.y), at(1, 0), scale.px * 8),
      ]),
      ...heightFrom(at(left - 26, skirt), spots[0]?.y ?? high, left, scale),
    ],
    spots,
    words:
      'The piston seen along the pin, measured across the thrust faces at its height above the skirt’s lower edge.',
  };
};
/** A dimension from the skirt's lower edge up to the height measured. */
function heightFrom(foot: Point, y: number, edge: number, { px }: Scale): readonly Shape[] {
  return [
    line(at(foot.x - 5, foot.y), at(edge, foot.y), 'dimension'),
    line(at(foot.x - 5, y), at(edge, y), 'dimension'),
    line(foot, at(foot.x, y), 'dimension'),
    arrowHead(foot, at(0, 1), px * 8),
    arrowHead(at(foot.x, y), at(0, -1), px * 8),
  ];
}

/** A ring pushed square into its own bore, its gap at the top of the picture. */
export const ringGap: DrawBody = ({ stations }, scale) => {
  const centre = at(SHEET / 2, 76);
  return {
    shapes: [
      polygon(rectangle(centre.x - 82, 0, 164, 152), 'visible', { fill: 'metal', part: 'block' }),
      circle(centre, 68, 'visible', { fill: 'void', part: 'bore' }),
      polygon(ringSector(centre, 55, 67, 8, 352), 'visible', { fill: 'gasket', part: 'ring' }),
      line(at(centre.x, -6), at(centre.x, 158), 'centre'),
      line(at(centre.x - 88, centre.y), at(centre.x + 88, centre.y), 'centre'),
      ...[-1, 1].map((side) => arrowHead(at(centre.x + side * 9, 15), at(-side, 0), scale.px * 9)),
    ],
    spots:
      stations.length === 1 ? [at(centre.x, 40)] : spreadOn(stations, at(centre.x - 64, 42), at(centre.x + 64, 42)),
    words: 'The ring square in its own bore, seen from above; the feeler goes into its gap.',
  };
};

/** A ring in its groove with the feeler beside it, and the places round the piston at which it is tried. */
export const ringGroove: DrawBody = ({ stations }, scale) => {
  const [x, y] = [8, 24];
  const centre = at(214, 84);
  return {
    shapes: [
      polygon(
        [
          at(x, y),
          at(x + 96, y),
          at(x + 96, y + 38),
          at(x + 40, y + 38),
          at(x + 40, y + 82),
          at(x + 96, y + 82),
          at(x + 96, y + 120),
          at(x, y + 120),
        ],
        'visible',
        { fill: 'metal', part: 'piston' },
      ),
      polygon(rectangle(x + 52, y + 48, 56, 34), 'visible', { fill: 'gasket', part: 'ring' }),
      polygon(rectangle(x + 50, y + 39, 72, 8), 'visible', { fill: 'mark', part: 'feeler' }),
      circle(centre, 62, 'visible', { fill: 'metal', part: 'piston' }),
      circle(centre, 50, 'hidden'),
      line(plus(centre, at(-70, 0)), plus(centre, at(70, 0)), 'centre'),
      line(plus(centre, at(0, -70)), plus(centre, at(0, 70)), 'centre'),
      ...[arrowHead(at(x + 126, y + 43), at(-1, 0), scale.px * 8)],
    ],
    spots: stations.map((_, i) => polar(centre, stations.length === 1 ? 0 : 56, (360 / stations.length) * i)),
    words:
      'Left the ring in its groove with a feeler above it; right the piston from above with the places at which it is tried.',
  };
};
