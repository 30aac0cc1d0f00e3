/** Room between a valve and its piston around top dead centre. */
import { type Angle, done, type Length, type Outcome } from '../../quantity/index.js';
import { deadCentres, heightAt, type RodTooShort, type SliderCrank } from '../crank/index.js';

/**
 * What the valve head meets.
 * - `parallel-pocket`: the floor of a pocket that lies parallel to the valve head.
 * - `flat-crown`: a crown square to the bore, met by the edge of the valve.
 */
export const CROWNS = ['parallel-pocket', 'flat-crown'] as const;
export type Crown = (typeof CROWNS)[number];

/**
 * Room along the valve stem for each unit that the piston (or the head) moves along the bore.
 *
 *   parallel pocket: cos γ;  flat crown: 1/cos γ
 *
 * γ `valveAngle` [rad] between valve stem and bore, below 90°. Source: derived (projection of the travel on the normal of the
 * surface that is met, seen along the stem).
 */
export function roomPerTravel(crown: Crown, valveAngle: Angle): number {
  return crown === 'parallel-pocket' ? Math.cos(valveAngle) : 1 / Math.cos(valveAngle);
}

export interface GapPlace {
  readonly crank: SliderCrank;
  readonly valveAngle: Angle;
  readonly crown: Crown;
  /** Room along the stem with the piston at top and the valve on its seat. */
  readonly gapAtTop: Length;
}

/** Room along the stem [m] by crank angle after the top dead centre of overlap [rad]. */
export type GapCurve = (angle: number) => number;

/**
 * Room between valve and piston along the stem over crank angle.
 *
 *   gap(θ) = gap₀ + (drop(θ) − drop(0))·c − lift(θ),  c from `roomPerTravel`
 *
 * | symbol | argument         | unit       | meaning                                                   |
 * |--------|------------------|------------|-----------------------------------------------------------|
 * | gap₀   | `place.gapAtTop` | [m]        | valve closed, piston at its highest                       |
 * | drop   | `place.crank`    | [m]        | piston below its highest, exact slider-crank              |
 * | lift   | `liftAt`         | [m]        | net lift of the valve by crank angle [rad], 0 when closed |
 *
 * Angles count from the highest place of the piston, as a positive stop finds it. Refuses with `rod-too-short`. Rigid parts.
 * Example: stroke 3.480, rod 5.700 in, 23°, gap₀ 0.180 in, lift 0.095 in at 5°: 0.0930 in in a parallel pocket.
 * Source: derived.
 */
export function gapCurve(place: GapPlace, liftAt: (angle: number) => number): Outcome<GapCurve, RodTooShort> {
  const centres = deadCentres(place.crank);
  if (!centres.ok) return centres;
  const { topHeight, topAngle } = centres.value;
  const per = roomPerTravel(place.crown, place.valveAngle);
  return done((angle) => {
    const drop = topHeight - heightAt(place.crank, (topAngle + angle) as Angle);
    return place.gapAtTop + drop * per - liftAt(angle);
  });
}
