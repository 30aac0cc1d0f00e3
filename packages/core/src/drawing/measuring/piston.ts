import type { Point, Shape } from '../figure.js';
import { at, plus, polar } from '../geometry.js';
import { arrowHead, circle, line, polygon, rectangle, ringSector } from '../shapes.js';
import type { Scale } from '../sheet-scale.js';
import { type DrawBody, SHEET, spreadOn } from './body.js';

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
