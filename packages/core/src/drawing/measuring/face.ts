import type { Point, Shape } from '../figure.js';
import { at } from '../geometry.js';
import { arrowHead, circle, line, polygon, polyline, rectangle } from '../shapes.js';
import type { Scale } from '../sheet-scale.js';
import { type DrawBody, SHEET, spreadOn } from './body.js';

const [LEFT, RIGHT, TOP, BOTTOM] = [8, SHEET - 8, 8, 128];

/** Where the straightedge lies for the usual six: both edges, both ends, both diagonals. More are spread along the face. */
const LAYS: readonly { readonly from: Point; readonly to: Point; readonly spot: number }[] = [
  { from: at(LEFT + 8, TOP + 13), to: at(RIGHT - 8, TOP + 13), spot: 0.5 },
  { from: at(LEFT + 8, BOTTOM - 13), to: at(RIGHT - 8, BOTTOM - 13), spot: 0.5 },
  { from: at(LEFT + 15, TOP + 8), to: at(LEFT + 15, BOTTOM - 8), spot: 0.5 },
  { from: at(RIGHT - 15, TOP + 8), to: at(RIGHT - 15, BOTTOM - 8), spot: 0.5 },
  { from: at(LEFT + 15, TOP + 13), to: at(RIGHT - 15, BOTTOM - 13), spot: 0.32 },
  { from: at(LEFT + 15, BOTTOM - 13), to: at(RIGHT - 15, TOP + 13), spot: 0.32 },
];
const onLay = ({ from, to, spot }: (typeof LAYS)[number]): Point =>
  at(from.x + (to.x - from.x) * spot, from.y + (to.y - from.y) * spot);

/** Which of the six a station means, from its words; two of one sort follow each other. */
function layOf(name: string, used: ReadonlySet<number>): number | undefined {
  const words = name.toLowerCase();
  const wanted = /diagonal/.test(words)
    ? [4, 5]
    : /front|rear|across|end/.test(words)
      ? [2, 3]
      : /edge|along|side/.test(words)
        ? [0, 1]
        : [];
  return wanted.find((lay) => !used.has(lay));
}
function laysOf(names: readonly string[]): readonly (number | undefined)[] {
  const used = new Set<number>();
  return names.map((name) => {
    const lay = layOf(name, used);
    if (lay !== undefined) used.add(lay);
    return lay;
  });
}

/** A deck or head face from above with the ways in which the straightedge lies. */
export const face: DrawBody = ({ stations, bores = 4 }) => {
  const lays = laysOf(stations.map((one) => one.name));
  const free = spreadOn(
    lays.filter((lay) => lay === undefined),
    at(LEFT + 30, (TOP + BOTTOM) / 2),
    at(RIGHT - 30, (TOP + BOTTOM) / 2),
  );
  let next = 0;
  const spots = lays.map((lay) => {
    const known = lay === undefined ? undefined : LAYS[lay];
    return known === undefined ? (free[next++] ?? at(SHEET / 2, (TOP + BOTTOM) / 2)) : onLay(known);
  });
  const pitch = (RIGHT - LEFT - 60) / Math.max(1, bores);
  return {
    shapes: [
      polygon(rectangle(LEFT, TOP, RIGHT - LEFT, BOTTOM - TOP), 'visible', { fill: 'metal', part: 'face' }),
      ...Array.from({ length: bores }, (_, i) =>
        circle(at(LEFT + 30 + pitch * (i + 0.5), (TOP + BOTTOM) / 2), Math.min(30, pitch * 0.42), 'visible', {
          fill: 'void',
          part: 'bore',
        }),
      ),
      ...lays.flatMap((lay) => {
        const known = lay === undefined ? undefined : LAYS[lay];
        return known === undefined ? [] : [line(known.from, known.to, 'dimension')];
      }),
    ],
    spots,
    words: 'The face from above, front at the left, with the ways in which the straightedge lies on it.',
  };
};

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
