import {
  type Acceleration,
  type Angle,
  type AngularSpeed,
  done,
  type Length,
  type Outcome,
  refused,
  type Speed,
} from '../../quantity/index.js';

/** Sizes of one crank, rod and piston pin. `pinOffset` is positive toward the side the crankpin moves to after 0°. */
export interface SliderCrank {
  /** Half the printed stroke: crankshaft centre to crankpin centre. */
  readonly crankRadius: Length;
  /** Centre to centre. */
  readonly rodLength: Length;
  readonly pinOffset: Length;
}

export interface RodTooShort {
  readonly code: 'rod-too-short';
  readonly rodLength: Length;
  /** The rod must be longer than this. */
  readonly needed: Length;
}

/** Refuses a crank that could not turn: the rod must be longer than the throw and the offset together. */
export function turns(g: SliderCrank): Outcome<SliderCrank, RodTooShort> {
  const needed = (g.crankRadius + Math.abs(g.pinOffset)) as Length;
  return g.rodLength > needed ? done(g) : refused({ code: 'rod-too-short', rodLength: g.rodLength, needed });
}

/**
 * Height of the piston pin above the crankshaft centre.
 *
 *   h = r·cos θ + √(l² − (r·sin θ − e)²)
 *
 * | symbol | argument      | unit  | meaning                                                                   |
 * |--------|---------------|-------|---------------------------------------------------------------------------|
 * | r      | `crankRadius` | [m]   | half the printed stroke                                                   |
 * | l      | `rodLength`   | [m]   | centre to centre                                                          |
 * | e      | `pinOffset`   | [m]   | pin to cylinder axis, + toward the side the crankpin moves to after θ = 0 |
 * | θ      | `crankAngle`  | [rad] | 0 with the crankpin straight up the cylinder axis, growing as the crank turns |
 *
 * Holds for rigid parts and a crank that can turn, l > r + |e|; refuses with `rod-too-short` otherwise. With e ≠ 0 the
 * highest point is not at θ = 0: see `deadCentres`. Exact.
 * Example: r = 45 mm, l = 150 mm, e = 0, θ = 90° gives h = 143.0909 mm.
 * Source: derived from the right triangle of rod, offset and axis.
 */
export function pinHeight(g: SliderCrank, crankAngle: Angle): Outcome<Length, RodTooShort> {
  const fit = turns(g);
  return fit.ok ? done(heightAt(g, crankAngle)) : fit;
}

/** `pinHeight` of a crank that is known to turn. */
export function heightAt(g: SliderCrank, crankAngle: Angle): Length {
  const sideways = g.crankRadius * Math.sin(crankAngle) - g.pinOffset;
  return (g.crankRadius * Math.cos(crankAngle) + Math.sqrt(g.rodLength ** 2 - sideways ** 2)) as Length;
}

/**
 * Piston speed, positive away from the cylinder head, at constant crank speed: v = −ω·dh/dθ, exact.
 *
 *   v = ω·(r·sin θ + u·r·cos θ / q),  u = r·sin θ − e,  q = √(l² − u²)
 *
 * Symbols as in `pinHeight`; ω is the crank speed [rad/s]. Refuses with `rod-too-short`.
 * Example: throw 300 mm, rod 1000 mm, 200 r/min, θ = 74.53° gives 6.562 m/s.
 * Source: first time derivative of `pinHeight`.
 */
export function pistonSpeed(g: SliderCrank, crankAngle: Angle, crankSpeed: AngularSpeed): Outcome<Speed, RodTooShort> {
  const fit = turns(g);
  return fit.ok ? done((crankSpeed * fallAt(g, crankAngle)) as Speed) : fit;
}

/** −dh/dθ of a crank that is known to turn: the speed over ω. */
export function fallAt(g: SliderCrank, crankAngle: Angle): Length {
  const across = g.crankRadius * Math.sin(crankAngle);
  const along = g.crankRadius * Math.cos(crankAngle);
  const u = across - g.pinOffset;
  return (across + (u * along) / Math.sqrt(g.rodLength ** 2 - u ** 2)) as Length;
}

/**
 * Piston acceleration, positive away from the cylinder head, at constant crank speed: a = −ω²·d²h/dθ², exact.
 *
 *   a = ω²·(r·cos θ + ((r·cos θ)² − u·r·sin θ)/q + (u·r·cos θ)²/q³)
 *
 * Symbols as in `pistonSpeed`. Refuses with `rod-too-short`. At the dead centres with e = 0 it is r·ω²·(1 ± r/l).
 * Example: stroke 3.480 in, rod 5.700 in, 6500 r/min: 26 728 m/s² at top dead centre.
 * Source: second time derivative of `pinHeight`.
 */
export function pistonAcceleration(
  g: SliderCrank,
  crankAngle: Angle,
  crankSpeed: AngularSpeed,
): Outcome<Acceleration, RodTooShort> {
  const fit = turns(g);
  return fit.ok ? done((crankSpeed ** 2 * bendAt(g, crankAngle)) as Acceleration) : fit;
}

/** −d²h/dθ² of a crank that is known to turn: the acceleration over ω². */
export function bendAt(g: SliderCrank, crankAngle: Angle): Length {
  const across = g.crankRadius * Math.sin(crankAngle);
  const along = g.crankRadius * Math.cos(crankAngle);
  const u = across - g.pinOffset;
  const q = Math.sqrt(g.rodLength ** 2 - u ** 2);
  return (along + (along ** 2 - u * across) / q + (u * along) ** 2 / q ** 3) as Length;
}
