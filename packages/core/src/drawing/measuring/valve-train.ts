import type { Point, Shape } from '../figure.js';
import { at, hull, plus } from '../geometry.js';
import { circle, line, polygon, polyline, spring } from '../shapes.js';
import { type DrawBody, gridOf, pieceOf, SHEET, spreadOn, stacked } from './body.js';
import { dial } from './dial.js';

/** The lobe along the cam: nose up, base circle below, dial over it. */
export const camLobe: DrawBody = ({ stations }) => {
  const base = at(SHEET / 2, 106);
  const nose = at(SHEET / 2, 66);
  const turns: readonly Point[] = [nose, plus(base, at(0, 42)), plus(base, at(-42, 6)), plus(base, at(42, 6))];
  return {
    shapes: [
      ...dial(at(nose.x, nose.y - 20), 16, 14),
      polygon(hull(base, 48, nose, 20), 'visible', { fill: 'metal', part: 'lobe' }),
      circle(base, 48, 'hidden'),
      circle(base, 15, 'thin'),
      line(at(base.x - 64, base.y), at(base.x + 64, base.y), 'centre'),
      line(at(base.x, 40), at(base.x, base.y + 58), 'centre'),
    ],
    spots:
      stations.length <= turns.length ? turns.slice(0, stations.length) : spreadOn(stations, at(40, 106), at(260, 106)),
    words: 'The cam lobe seen along the shaft, nose up, base circle below, under a dial.',
  };
};
/** The seat in the head in section, with the valve's face on it. */
export const seat: DrawBody = ({ stations }) => {
  const side = (way: number): Shape =>
    polygon(
      [
        at(150 + way * 66, 60),
        at(150 + way * 140, 60),
        at(150 + way * 140, 132),
        at(150 + way * 118, 132),
        at(150 + way * 78, 92),
        at(150 + way * 66, 92),
      ],
      'visible',
      { fill: 'metal', part: 'seat' },
    );
  return {
    shapes: [
      side(-1),
      side(1),
      polygon(
        [
          at(32, 142),
          at(32, 132),
          at(66, 98),
          at(138, 80),
          at(141, 4),
          at(159, 4),
          at(162, 80),
          at(234, 98),
          at(268, 132),
          at(268, 142),
        ],
        'visible',
        {
          fill: 'gasket',
          part: 'valve',
        },
      ),
      line(at(150, -4), at(150, 152), 'centre'),
    ],
    spots: stations.length === 1 ? [at(250, 115)] : spreadOn(stations, at(34, 115), at(266, 115)),
    words: 'The valve on its seat in section; the seat is the sloping band between them.',
  };
};
/** One spring for each station, shorter from one to the next: free, at its seat, at full lift. */
export const springs: DrawBody = ({ stations }, scale) => {
  const { heights, directions } = gridOf(stations);
  const count = Math.max(1, stations.length);
  const floor = scale.px * 32 + 132;
  const width = SHEET / count;
  const free = 112;
  const tall = (i: number) => free - (count === 1 ? 0 : (free * 0.42 * i) / (count - 1));
  const x = (i: number) => pieceOf(0, SHEET, i, count);
  const names = heights.length >= directions.length ? heights : directions;
  return {
    shapes: [
      line(at(0, floor), at(SHEET, floor), 'visible'),
      ...stations.flatMap((_, i) => [
        ...spring(at(x(i), floor), at(x(i), floor - tall(i)), Math.min(48, width * 0.6), 5, { part: 'spring' }),
        polyline(
          [at(x(i) - width * 0.36, floor - tall(i) - 3), at(x(i) + width * 0.36, floor - tall(i) - 3)],
          'visible',
        ),
        ...stacked(names[i]?.name ?? '', at(x(i), scale.px * 14), width * 0.96, scale.small),
      ]),
    ],
    spots: stations.map((_, i) => at(x(i), floor - 34)),
    words: 'The valve spring standing, once for each height or load that is read.',
  };
};
