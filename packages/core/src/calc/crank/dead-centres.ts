import { type Angle, done, type Length, type Outcome } from '../../quantity/index.js';
import { heightAt, type RodTooShort, type SliderCrank, turns } from './slider-crank.js';

export interface DeadCentres {
  /** Crank angle at which the piston is highest; 0 without pin offset. */
  readonly topAngle: Angle;
  /** Crank angle at which the piston is lowest; π without pin offset. */
  readonly bottomAngle: Angle;
  /** Pin height above the crankshaft centre at the top and at the bottom. */
  readonly topHeight: Length;
  readonly bottomHeight: Length;
  /** True stroke of the piston. */
  readonly stroke: Length;
}

/**
 * Where an offset slider-crank has its dead centres, and its true stroke.
 *
 *   sin θt = e/(l + r),  sin(θb − 180°) = e/(l − r),  S = √((l + r)² − e²) − √((l − r)² − e²)
 *
 * Symbols and units as in `pinHeight`. Crank and rod lie in one line at both dead centres. A top dead centre found
 * with a positive stop is this one, not the angle at which the crank throw points up. Refuses with `rod-too-short`.
 * Example: throw 1.740 in, rod 5.700 in, offset 0.060 in: stroke 3.48021 in, top 0.462° late, bottom 0.868° late.
 * Source: derived (both bodies in line); standard result for the offset slider-crank.
 */
export function deadCentres(g: SliderCrank): Outcome<DeadCentres, RodTooShort> {
  const fit = turns(g);
  if (!fit.ok) return fit;
  const { crankRadius: r, rodLength: l, pinOffset: e } = g;
  const topHeight = Math.sqrt((l + r) ** 2 - e ** 2) as Length;
  const bottomHeight = Math.sqrt((l - r) ** 2 - e ** 2) as Length;
  return done({
    topAngle: Math.asin(e / (l + r)) as Angle,
    bottomAngle: (Math.PI + Math.asin(e / (l - r))) as Angle,
    topHeight,
    bottomHeight,
    stroke: (topHeight - bottomHeight) as Length,
  });
}

/**
 * How far the piston has come down from its own highest point at a crank angle: drop = ht − h(θ) [m].
 *
 * Symbols and units as in `pinHeight`. Refuses with `rod-too-short`.
 * Example: stroke 3.480 in, rod 5.700 in, 90°: 2.0121 in, past half of the stroke because of the rod.
 * Source: derived.
 */
export function pistonDrop(g: SliderCrank, crankAngle: Angle): Outcome<Length, RodTooShort> {
  const centres = deadCentres(g);
  return centres.ok ? done((centres.value.topHeight - heightAt(g, crankAngle)) as Length) : centres;
}
