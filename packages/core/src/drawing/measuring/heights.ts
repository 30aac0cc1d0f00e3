import type { Point, Shape } from '../figure.js';
import { at } from '../geometry.js';
import { arrowHead, circle, line, polygon, polyline, rectangle } from '../shapes.js';
import { type DrawBody, SHEET, spreadOn } from './body.js';
import { dial } from './dial.js';

/** The block from the side: from the crank's centre line up to the deck. */
export const deckHeight: DrawBody = ({ stations }, scale) => {
  const [top, floor] = [scale.px * 24, 150];
  const spots = spreadOn(stations, at(46, top), at(SHEET - 14, top));
  return {
    shapes: [
      polygon(rectangle(40, top, SHEET - 48, 84), 'visible', { fill: 'metal', part: 'block' }),
      line(at(20, floor), at(SHEET, floor), 'centre'),
      circle(at(64, floor), 12, 'visible', { fill: 'void', part: 'crank' }),
      ...spots.map((spot) => line(spot, at(spot.x, floor), 'dimension')),
      ...spots.flatMap((spot) => [
        arrowHead(at(spot.x, floor), at(0, 1), scale.px * 8),
        arrowHead(at(spot.x, top + scale.px * 12), at(0, -1), scale.px * 8),
      ]),
    ],
    spots,
    words: 'The block from the side: from the centre line of the crank up to the deck.',
  };
};
/** What stands above or below the deck, under a dial on a bridge; beside it the places from above. */
export const protrusion: DrawBody = ({ stations }) => {
  const centre = at(226, 84);
  const deck = 78;
  return {
    shapes: [
      polygon(rectangle(4, deck, 42, 76), 'visible', { fill: 'metal', part: 'block' }),
      polygon(rectangle(110, deck, 34, 76), 'visible', { fill: 'metal', part: 'block' }),
      polygon(rectangle(46, deck - 9, 64, 85), 'visible', { fill: 'gasket', part: 'part' }),
      ...bridge(at(78, deck - 9), 4, 144, deck),
      line(at(78, deck - 14), at(78, 160), 'centre'),
      circle(centre, 62, 'visible', { fill: 'metal', part: 'part' }),
      circle(centre, 48, 'visible', { fill: 'void', part: 'bore' }),
      line(at(centre.x - 70, centre.y), at(centre.x + 70, centre.y), 'centre'),
      line(at(centre.x, centre.y - 70), at(centre.x, centre.y + 70), 'centre'),
    ],
    spots: stations.map((_, i) => {
      const turn = ((stations.length === 2 ? 90 : 0) + (360 / stations.length) * i) * (Math.PI / 180);
      const out = stations.length === 1 ? 0 : 55;
      return at(centre.x + out * Math.sin(turn), centre.y - out * Math.cos(turn));
    }),
    words:
      'Left the part standing out of the deck under a dial on its bridge; right the same from above with the places of the dial.',
  };
};
function bridge(tip: Point, left: number, right: number, deck: number): readonly Shape[] {
  return [
    polyline([at(left + 8, deck), at(left + 8, deck - 34), at(right - 8, deck - 34), at(right - 8, deck)], 'visible'),
    ...dial(tip, tip.y - 52, 15),
  ];
}
