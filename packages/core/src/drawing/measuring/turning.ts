import type { Point, Shape } from '../figure.js';
import { at, plus, polar } from '../geometry.js';
import { circle, line, polygon, rectangle } from '../shapes.js';
import { type DrawBody, SHEET, spreadOn } from './body.js';
import { dial, toAndFro } from './dial.js';

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
