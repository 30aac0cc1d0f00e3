import { wrapped } from '../quantity/index.js';
import type { Point } from './figure.js';

/** Plane geometry of the page: millimetres, x to the right, y downward, so a positive turn looks clockwise. */
export const at = (x: number, y: number): Point => ({ x, y });
export const plus = (a: Point, b: Point): Point => at(a.x + b.x, a.y + b.y);
export const minus = (a: Point, b: Point): Point => at(a.x - b.x, a.y - b.y);
export const times = (a: Point, k: number): Point => at(a.x * k, a.y * k);
export const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
export const between = (a: Point, b: Point, share: number): Point => plus(a, times(minus(b, a), share));
export const unit = (a: Point): Point => times(a, 1 / (Math.hypot(a.x, a.y) || 1));
/** The direction a quarter turn clockwise from this one. */
export const quarterOn = (a: Point): Point => at(-a.y, a.x);

const RADIANS = Math.PI / 180;
/** Unit vector at an angle in degrees clockwise from straight up: 0 is up, 90 to the right. */
export const heading = (degrees: number): Point => at(Math.sin(degrees * RADIANS), -Math.cos(degrees * RADIANS));
/** A point at a distance from a centre, in a direction clockwise from straight up. */
export const polar = (centre: Point, radius: number, degrees: number): Point =>
  plus(centre, times(heading(degrees), radius));
/** Turns a point about a centre, clockwise as seen on the page. */
export function turned(point: Point, centre: Point, degrees: number): Point {
  const { x, y } = minus(point, centre);
  const [c, s] = [Math.cos(degrees * RADIANS), Math.sin(degrees * RADIANS)];
  return plus(centre, at(x * c - y * s, x * s + y * c));
}
/** Direction from one point to another in degrees clockwise from straight up. */
export const headingFrom = (from: Point, to: Point): number => Math.atan2(to.x - from.x, from.y - to.y) / RADIANS;

/** The same angle in 0 to below `turn`. */
export const within = (degrees: number, turn = 360): number => wrapped(degrees, turn);
/** The same angle in -180 to 180. */
export const signed = (degrees: number): number => {
  const positive = within(degrees);
  return positive > 180 ? positive - 360 : positive;
};
export const inDegrees = (radians: number): number => radians / RADIANS;

/** Points on the outline of two circles joined by their outer tangents; with equal radii a slot. */
export function hull(a: Point, radiusA: number, b: Point, radiusB: number, steps = 10): readonly Point[] {
  const gap = distance(a, b);
  if (gap <= Math.abs(radiusA - radiusB)) {
    const [centre, radius] = radiusA > radiusB ? [a, radiusA] : [b, radiusB];
    return arcPoints(centre, radius, 0, 360, steps * 2);
  }
  const line = headingFrom(a, b);
  const lean = inDegrees(Math.acos((radiusA - radiusB) / gap));
  return [
    ...arcPoints(b, radiusB, line - lean, line + lean, steps),
    ...arcPoints(a, radiusA, line + lean, line + 360 - lean, steps),
  ];
}
/** Points along a circular arc, angles clockwise from straight up. */
export function arcPoints(centre: Point, radius: number, from: number, to: number, steps: number): readonly Point[] {
  return Array.from({ length: steps + 1 }, (_, i) => polar(centre, radius, from + ((to - from) * i) / steps));
}
