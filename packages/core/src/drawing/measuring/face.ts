import type { Point } from '../figure.js';
import { at } from '../geometry.js';
import { circle, line, polygon, rectangle } from '../shapes.js';
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
