import type { Point, Shape } from './figure.js';
import { arcPoints, at } from './geometry.js';
import { circle, line, polygon, polyline, rectangle, spring } from './shapes.js';

/** A valve in its head, in section, standing upright on its axis. Lengths in mm. */
export interface ValveAssembly {
  readonly x: number;
  /** Top of the stem with the valve shut; y grows downward. */
  readonly shutTip: number;
  readonly lift: number;
  readonly headDiameter: number;
  readonly kind: 'intake' | 'exhaust';
}
export const VALVE_LENGTH = 98;
const STEM = 3.4;
const SPRING_SEAT = 44;

/** Head casting with port, guide and seat; then spring, retainer and valve, moved by the lift. */
export function valveAssembly(valve: ValveAssembly): readonly Shape[] {
  return [...casting(valve), ...movingParts(valve)];
}
function casting({ x, shutTip, headDiameter, kind }: ValveAssembly): readonly Shape[] {
  const face = shutTip + VALVE_LENGTH;
  const half = headDiameter / 2;
  const block = rectangle(x - half - 17, shutTip + SPRING_SEAT, headDiameter + 34, VALVE_LENGTH - SPRING_SEAT);
  const throat = half * 0.82;
  const side = kind === 'intake' ? -1 : 1;
  const port = [
    at(x - side * throat, face),
    at(x - side * throat, face - 15),
    ...arcPoints(at(x + side * 2, face - 16), throat + 2, side * -88, 0, 8),
    at(x + side * (half + 17), face - 16 - throat * 1.05),
    at(x + side * (half + 17), face - 14),
    at(x + side * (throat + 4), face - 13),
    at(x + side * throat, face - 8),
    at(x + side * throat, face),
  ];
  const seat = (way: number): Shape =>
    polygon(
      [
        at(x + way * throat, face - 6),
        at(x + way * (half + 3.5), face - 6),
        at(x + way * (half + 3.5), face),
        at(x + way * half, face),
        at(x + way * throat, face - 3.4),
      ],
      'visible',
      { fill: 'gasket', part: 'seat' },
    );
  return [
    polygon(block, 'visible', { fill: 'metal', part: 'head' }),
    polygon(port, 'visible', { fill: 'void', part: `${kind} port` }),
    polygon(rectangle(x - 6.5, shutTip + SPRING_SEAT - 5, 13, 36), 'visible', { fill: 'gasket', part: 'guide' }),
    seat(-1),
    seat(1),
    line(at(x, shutTip - 8), at(x, face + 16), 'centre'),
  ];
}
function movingParts({ x, shutTip, lift, headDiameter }: ValveAssembly): readonly Shape[] {
  const tip = shutTip + lift;
  const end = tip + VALVE_LENGTH;
  const half = headDiameter / 2;
  const right = [
    at(x + STEM, tip),
    at(x + STEM, end - 20),
    at(x + STEM + 1.6, end - 12),
    at(x + half * 0.45, end - 6.5),
    at(x + half * 0.84, end - 3.6),
    at(x + half, end - 0.6),
    at(x + half, end + 1.4),
  ];
  const left = right.map((p) => at(2 * x - p.x, p.y)).reverse();
  const retainer = [
    at(x - 15, tip + 6),
    at(x + 15, tip + 6),
    at(x + 15, tip + 9),
    at(x + 8, tip + 13),
    at(x - 8, tip + 13),
    at(x - 15, tip + 9),
  ];
  return [
    ...spring(at(x, shutTip + SPRING_SEAT), at(x, tip + 10), 25, 5, { part: 'spring' }),
    polygon([...right, ...left], 'visible', { fill: 'metal', part: 'valve' }),
    polygon(retainer, 'visible', { fill: 'metal', part: 'retainer' }),
  ];
}

/** A lifter over the cam, its lower end `bottom`; with a roller where its radius is not 0. */
export function lifter(
  x: number,
  contact: number,
  roller: number,
): { readonly shapes: readonly Shape[]; readonly cup: Point } {
  const bottom = contact - roller * 1.2;
  const height = 46;
  const body = polygon(rectangle(x - 10.5, bottom - height, 21, height), 'visible', { fill: 'metal', part: 'lifter' });
  const groove = [0.42, 0.58].map((share) =>
    line(at(x - 10.5, bottom - height * share), at(x + 10.5, bottom - height * share), 'thin'),
  );
  const cup = at(x, bottom - height + 5);
  const bowl = polyline(arcPoints(at(cup.x, cup.y - 4), 4.2, 90, 270, 8), 'visible', { part: 'lifter' });
  const wheel =
    roller > 0
      ? [
          circle(at(x, contact - roller), roller, 'visible', { fill: 'void', part: 'roller' }),
          circle(at(x, contact - roller), roller * 0.3, 'thin'),
        ]
      : [];
  return { shapes: [body, ...groove, bowl, ...wheel], cup };
}
/** A long part drawn shortened: two ends and a gap with break lines between. */
export function shortenedRod(from: Point, to: Point, half: number, part: string): readonly Shape[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const along = at((to.x - from.x) / length, (to.y - from.y) / length);
  const across = at(-along.y * half, along.x * half);
  const on = (share: number, side: number) =>
    at(from.x + along.x * length * share + across.x * side, from.y + along.y * length * share + across.y * side);
  const piece = (a: number, b: number): Shape =>
    polygon([on(a, -1), on(b, -1), on(b, 1), on(a, 1)], 'visible', { fill: 'metal', part });
  const zigzag = (share: number): Shape =>
    polyline(
      [on(share, -2.4), on(share, -0.5), on(share + 0.03, -0.1), on(share - 0.03, 0.4), on(share, 0.8), on(share, 2.4)],
      'thin',
      { part },
    );
  return [piece(0, 0.45), piece(0.53, 1), zigzag(0.45), zigzag(0.53)];
}
/** A hexagon nut or a screw head seen from the side, with its stud. */
export function nut(centre: Point, part: string): readonly Shape[] {
  const { x, y } = centre;
  return [
    polygon(rectangle(x - 2.6, y - 13, 5.2, 26), 'visible', { fill: 'metal', part, state: 'lit' }),
    polygon(rectangle(x - 7.5, y - 5, 15, 9), 'visible', { fill: 'metal', part, state: 'lit' }),
    line(at(x - 3, y - 5), at(x - 3, y + 4), 'thin', { part, state: 'lit' }),
    line(at(x + 3, y - 5), at(x + 3, y + 4), 'thin', { part, state: 'lit' }),
  ];
}
