import type { Fill, LineRole, MarkState, Point, Shape } from './figure.js';
import { arcPoints, at, between, distance, heading, minus, plus, polar, quarterOn, times, unit } from './geometry.js';

export interface Look {
  readonly fill?: Fill;
  readonly part?: string;
  readonly state?: MarkState;
}
export const line = (from: Point, to: Point, role: LineRole, look: Look = {}): Shape => ({
  kind: 'line',
  from,
  to,
  role,
  ...look,
});
export const polyline = (points: readonly Point[], role: LineRole, look: Look = {}): Shape => ({
  kind: 'polyline',
  points,
  closed: false,
  role,
  ...look,
});
export const polygon = (points: readonly Point[], role: LineRole, look: Look = {}): Shape => ({
  kind: 'polyline',
  points,
  closed: true,
  role,
  ...look,
});
export const circle = (centre: Point, radius: number, role: LineRole, look: Look = {}): Shape => ({
  kind: 'circle',
  centre,
  radius,
  role,
  ...look,
});
/** Angles in degrees clockwise from straight up; the figure itself counts from +x. */
export const arc = (
  centre: Point,
  radius: number,
  from: number,
  to: number,
  role: LineRole,
  look: Look = {},
): Shape => ({ kind: 'arc', centre, radius, startDegrees: from - 90, endDegrees: to - 90, role, ...look });

export interface Lettering {
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly part?: string;
  readonly state?: MarkState;
}
/** `at` is the middle of the letters' height. */
export const label = (place: Point, text: string, size: number, look: Lettering = {}): Shape => ({
  kind: 'label',
  at: place,
  text,
  size,
  anchor: 'middle',
  ...look,
});

export const rectangle = (left: number, top: number, width: number, height: number): readonly Point[] => [
  at(left, top),
  at(left + width, top),
  at(left + width, top + height),
  at(left, top + height),
];
export function roundedRectangle(
  left: number,
  top: number,
  width: number,
  height: number,
  radius: number,
): readonly Point[] {
  const r = Math.min(radius, width / 2, height / 2);
  const corner = (x: number, y: number, from: number) => arcPoints(at(x, y), r, from, from + 90, 4);
  return [
    ...corner(left + width - r, top + r, 0),
    ...corner(left + width - r, top + height - r, 90),
    ...corner(left + r, top + height - r, 180),
    ...corner(left + r, top + r, 270),
  ];
}
/** Part of a ring between two radii; angles clockwise from straight up. */
export function ringSector(centre: Point, inner: number, outer: number, from: number, to: number): readonly Point[] {
  const steps = Math.max(2, Math.ceil(Math.abs(to - from) / 6));
  return [...arcPoints(centre, outer, from, to, steps), ...arcPoints(centre, inner, to, from, steps)];
}
/** A filled arrow head whose point is `tip`, looking in `direction`. */
export function arrowHead(tip: Point, direction: Point, length: number, look: Look = {}): Shape {
  const back = minus(tip, times(unit(direction), length));
  const side = times(quarterOn(unit(direction)), length * 0.32);
  return polygon([tip, plus(back, side), minus(back, side)], 'thin', { fill: 'mark', ...look });
}
export function arrow(from: Point, to: Point, headLength: number, look: Look = {}): readonly Shape[] {
  return [line(from, to, 'thin', look), arrowHead(to, minus(to, from), headLength, look)];
}
/** A curved arrow in the given running sense; the head lies on the end of the arc. */
export function turnArrow(
  centre: Point,
  radius: number,
  from: number,
  to: number,
  headLength: number,
  look: Look = {},
): readonly Shape[] {
  const sense = Math.sign(to - from) || 1;
  const tip = polar(centre, radius, to);
  // The head of a short arc leans with the chord, not with the tangent.
  const back = polar(centre, radius, to - sense * Math.min(Math.abs(to - from), (headLength / radius) * 57.3));
  return [
    arc(centre, radius, Math.min(from, to), Math.max(from, to), 'thin', look),
    arrowHead(tip, minus(tip, back), headLength, look),
  ];
}
/** A coil spring in side view between two seats: the zigzag that drawings use. */
export function spring(from: Point, to: Point, width: number, coils: number, look: Look = {}): readonly Shape[] {
  const side = times(quarterOn(unit(minus(to, from))), width / 2);
  const points = Array.from({ length: coils * 2 + 1 }, (_, i) => {
    const along = between(from, to, i / (coils * 2));
    return i % 2 === 0 ? plus(along, side) : minus(along, side);
  });
  return [polyline(points, 'visible', look)];
}
/** Chain lines through a centre, reaching past a circle. */
export function centreCross(centre: Point, reach: number, degrees = 0): readonly Shape[] {
  return [0, 90].map((turn) => {
    const way = times(heading(degrees + turn), reach);
    return line(minus(centre, way), plus(centre, way), 'centre');
  });
}
/** A break line: the part goes on but is not drawn. */
export function breakLine(left: Point, right: Point): Shape {
  const along = unit(minus(right, left));
  const across = times(quarterOn(along), distance(left, right) * 0.22);
  const p = (share: number, up: number) => plus(between(left, right, share), times(across, up));
  return polyline([p(-0.3, 0), p(0.4, 0), p(0.47, -1), p(0.55, 1), p(0.62, 0), p(1.3, 0)], 'thin');
}
