import type { Point, Shape } from '../figure.js';
import { arcPoints, at, hull, plus, polar } from '../geometry.js';
import { circle, label, line, polygon, polyline, rectangle, spring } from '../shapes.js';
import { type DrawBody, gridOf, pieceOf, SHEET, spreadOn, stacked } from './body.js';
import { dial, toAndFro } from './face.js';

/** A combustion chamber upside down under a plate, filled from the burette. */
export const chamber: DrawBody = ({ stations }) => {
  const face = 74;
  return {
    shapes: [
      polygon(rectangle(40, face, 220, 84), 'visible', { fill: 'metal', part: 'head' }),
      polygon([at(86, face), ...arcPoints(at(150, face - 36), 74, 118, 242, 14), at(214, face)], 'visible', {
        fill: 'water',
        part: 'chamber',
      }),
      polygon(rectangle(70, face - 8, 160, 8), 'visible', { fill: 'gasket', part: 'plate' }),
      polygon(rectangle(141, 2, 18, 46), 'visible', { fill: 'water', part: 'burette' }),
      ...[0, 1, 2, 3].map((i) => line(at(141, 10 + i * 9), at(149, 10 + i * 9), 'thin')),
      line(at(150, 48), at(150, face - 8), 'visible'),
    ],
    spots: stations.length === 1 ? [at(150, face + 19)] : spreadOn(stations, at(76, face + 19), at(224, face + 19)),
    words: 'The chamber upside down under a plate with a hole, filled from a burette.',
  };
};

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

/** A shaft turned on two vee blocks under a dial. */
export const runout: DrawBody = ({ stations }) => {
  const [top, bottom] = [66, 96];
  const spots = spreadOn(stations, at(40, top), at(SHEET - 40, top));
  const block = (x: number): Shape =>
    polygon([at(x - 26, 146), at(x - 26, 92), at(x, bottom + 12), at(x + 26, 92), at(x + 26, 146)], 'visible', {
      fill: 'gasket',
      part: 'vee block',
    });
  return {
    shapes: [
      polygon(rectangle(14, top, SHEET - 28, bottom - top), 'visible', { fill: 'metal', part: 'shaft' }),
      block(50),
      block(SHEET - 50),
      line(at(0, (top + bottom) / 2), at(SHEET, (top + bottom) / 2), 'centre'),
      ...spots.flatMap((spot) => dial(spot, 20, 15)),
    ],
    spots: spots.map((spot) => at(spot.x, top + 15)),
    words: 'The shaft on two vee blocks under a dial; turn it once and read from least to most.',
  };
};

/** A shaft levered to and fro in its bearing, with a dial on its end. */
export const float: DrawBody = ({ stations }, scale) => ({
  shapes: [
    polygon(rectangle(104, 30, 74, 40), 'visible', { fill: 'metal', part: 'housing' }),
    polygon(rectangle(104, 104, 74, 40), 'visible', { fill: 'metal', part: 'housing' }),
    polygon(rectangle(86, 46, 16, 82), 'visible', { fill: 'gasket', part: 'collar' }),
    polygon(rectangle(180, 46, 16, 82), 'visible', { fill: 'gasket', part: 'collar' }),
    polygon(rectangle(72, 72, 196, 30), 'visible', { fill: 'metal', part: 'shaft' }),
    line(at(30, 87), at(SHEET, 87), 'centre'),
    ...toAndFro(at(206, 124), at(266, 124), scale),
    line(at(72, 87), at(46, 87), 'visible'),
    circle(at(30, 87), 16, 'visible', { fill: 'void', part: 'dial' }),
    line(at(30, 87), at(38, 77), 'visible'),
  ],
  spots: stations.length === 1 ? [at(141, 87)] : spreadOn(stations, at(96, 87), at(260, 87)),
  words: 'The part between its thrust faces, levered one way and back, with a dial on its end.',
});

/** Two gears in mesh; one stands still, the dial is on a tooth of the other. */
export const backlash: DrawBody = ({ stations }) => {
  const wheel = (centre: Point, radius: number, part: string): readonly Shape[] => [
    polygon(teeth(centre, radius), 'visible', { fill: 'metal', part }),
    circle(centre, radius * 0.3, 'visible', { fill: 'void', part }),
    line(plus(centre, at(-radius * 1.2, 0)), plus(centre, at(radius * 1.2, 0)), 'centre'),
  ];
  return {
    shapes: [...wheel(at(98, 86), 62, 'gear'), ...wheel(at(216, 86), 50, 'gear')],
    spots: stations.length === 1 ? [at(162, 86)] : spreadOn(stations, at(162, 10), at(162, 162)),
    words: 'Two gears in mesh: hold one still and rock the other, the dial on a tooth.',
  };
};
function teeth(centre: Point, radius: number): readonly Point[] {
  const count = Math.round(radius / 3.4);
  return Array.from({ length: count }, (_, i) => i * (360 / count)).flatMap((turn) => {
    const step = 360 / count;
    return [
      polar(centre, radius * 0.9, turn),
      polar(centre, radius * 0.9, turn + step * 0.3),
      polar(centre, radius * 1.06, turn + step * 0.42),
      polar(centre, radius * 1.06, turn + step * 0.88),
    ];
  });
}

/** The part on the pan of a scale. */
export const mass: DrawBody = ({ stations }, scale) => ({
  shapes: [
    polygon([at(84, 148), at(104, 100), at(196, 100), at(216, 148)], 'visible', { fill: 'metal', part: 'scale' }),
    polygon(rectangle(64, 90, 172, 10), 'visible', { fill: 'gasket', part: 'pan' }),
    polygon(rectangle(100, 26, 100, 64), 'visible', { fill: 'metal', part: 'part' }),
    label(at(150, 126), 'g', scale.text),
  ],
  spots: stations.length === 1 ? [at(150, 58)] : spreadOn(stations, at(80, 58), at(220, 58)),
  words: 'The part on the pan of a scale that was set to nought.',
});
