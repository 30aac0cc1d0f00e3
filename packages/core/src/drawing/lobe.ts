import type { Point } from './figure.js';
import { heading, minus, plus, times, unit } from './geometry.js';

/** A cam lobe that is symmetrical about its nose. Lengths in mm, angles in cam degrees. */
export interface Lobe {
  readonly lift: number;
  /** Half of the cam angle through which the follower is off the base circle. */
  readonly half: number;
}
interface Rise {
  readonly lift: number;
  /** Per radian of cam angle, and per radian squared. */
  readonly slope: number;
  readonly bend: number;
}
const RADIANS = Math.PI / 180;

/**
 * Follower lift at a cam angle from the nose: s = s0·(1 − x²)², x = angle / half. It leaves the base circle without a step in
 * slope. A drawing curve: a real lobe's lift comes from its maker's table.
 */
export function rise({ lift, half }: Lobe, fromNose: number): Rise {
  const x = fromNose / half;
  if (Math.abs(x) >= 1) return { lift: 0, slope: 0, bend: 0 };
  const span = half * RADIANS;
  const rest = 1 - x * x;
  return {
    lift: lift * rest * rest,
    slope: (-4 * lift * x * rest) / span,
    bend: (lift * (12 * x * x - 4)) / (span * span),
  };
}
/** Base circle radius that keeps a flat follower's lobe convex, never under twice the lift. */
export function baseRadius(lobe: Lobe): number {
  const sharpest = Array.from({ length: 41 }, (_, i) => rise(lobe, (lobe.half * (i - 20)) / 20)).reduce(
    (most, one) => Math.max(most, -(one.lift + one.bend)),
    0,
  );
  return Math.max(lobe.lift * 2, sharpest + lobe.lift * 0.35, 12);
}

/**
 * Outline of the lobe: the envelope of its follower, so that a flat face or a roller of radius `roller` touches it exactly.
 *
 *   flat:   P = (b + s)·n + s'·t        roller:   P = C − ρ·N,  C = (b + ρ + s)·n,  N the outward normal of the path of C
 *
 * b base radius, s lift, n the direction from the cam centre, t a quarter turn on. `nose` is a page heading in degrees.
 */
export function lobeOutline(lobe: Lobe, base: number, centre: Point, nose: number, roller = 0): readonly Point[] {
  const steps = 120;
  return Array.from({ length: steps }, (_, i) => {
    const fromNose = (360 * i) / steps - 180;
    const { lift, slope } = rise(lobe, fromNose);
    const n = heading(nose + fromNose);
    const t = heading(nose + fromNose + 90);
    const reach = base + roller + lift;
    if (roller === 0) return plus(centre, plus(times(n, reach), times(t, slope)));
    const normal = unit(minus(times(n, reach), times(t, slope)));
    return plus(centre, minus(times(n, reach), times(normal, roller)));
  });
}
