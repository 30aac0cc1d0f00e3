import { type Angle, done, type Length, type Outcome } from '../../quantity/index.js';
import { lobeLift, type PolynomialLobe } from '../cam/index.js';
import { type DeadCentres, deadCentres, heightAt, type RodTooShort, type SliderCrank } from '../crank/index.js';
import { type Crown, roomPerTravel } from './piston-gap.js';

/** One valve over its piston, with the lobe as the valve feels it: rocker ratio in, lash out. */
export interface ValveOverPiston {
  readonly lobe: PolynomialLobe;
  /** Crank angle of the lobe's nose after the top dead centre of overlap; before it negative. */
  readonly nose: Angle;
  readonly crown: Crown;
  readonly valveAngle: Angle;
  /** Room along the stem with the piston at top and the valve on its seat. */
  readonly gapAtTop: Length;
}
/** Crank angles `from`, `from` + `step`, and so on. */
export interface AngleRow {
  readonly from: Angle;
  readonly step: Angle;
  readonly count: number;
}
export interface CycleGaps {
  /** Piston below its highest place, at each angle [m]. */
  readonly drops: Float64Array;
  /** For each valve in turn, at each angle [m]. */
  readonly lifts: readonly Float64Array[];
  readonly gaps: readonly Float64Array[];
}

/**
 * Piston, lift and room between valve and piston at many crank angles at once.
 *
 *   drop = ht − h(θ);  gap = gap₀ + drop·c − lift;  c from `roomPerTravel`
 *
 * | symbol | argument       | unit  | meaning                                                           |
 * |--------|----------------|-------|-------------------------------------------------------------------|
 * | h      | `crank`        | [m]   | pin height, exact slider-crank; ht its highest                    |
 * | lift   | `valves` lobe  | [m]   | `lobeLift` at θ less the angle of its nose                         |
 * | θ      | `angles`       | [rad] | after the highest place of the piston at overlap, within a turn either way |
 *
 * The same figures as `gapCurve` angle by angle. Refuses with `rod-too-short`. Rigid parts. Source: derived.
 */
export function cycleGaps(
  crank: SliderCrank,
  valves: readonly ValveOverPiston[],
  angles: AngleRow,
): Outcome<CycleGaps, RodTooShort> {
  const centres = deadCentres(crank);
  if (!centres.ok) return centres;
  const drops = dropsOf(crank, centres.value, angles);
  const lifts = valves.map((valve) => liftsOf(valve, angles));
  return done({ drops, lifts, gaps: valves.map((valve, at) => gapsOf(valve, drops, lifts[at]!)) });
}

// One plain loop a row: a call for each angle through a shared helper would cost more than the arithmetic.

function dropsOf(
  crank: SliderCrank,
  { topAngle, topHeight }: DeadCentres,
  { from, step, count }: AngleRow,
): Float64Array {
  const drops = new Float64Array(count);
  const start = topAngle + from;
  for (let at = 0; at < count; at += 1) drops[at] = topHeight - heightAt(crank, (start + at * step) as Angle);
  return drops;
}

function liftsOf({ lobe, nose }: ValveOverPiston, { from, step, count }: AngleRow): Float64Array {
  const lifts = new Float64Array(count);
  const lift = lobeLift(lobe);
  for (let at = 0; at < count; at += 1) lifts[at] = lift(from + at * step - nose);
  return lifts;
}

function gapsOf(
  { crown, valveAngle, gapAtTop }: ValveOverPiston,
  drops: Float64Array,
  lifts: Float64Array,
): Float64Array {
  const gaps = new Float64Array(drops.length);
  const per = roomPerTravel(crown, valveAngle);
  for (let at = 0; at < gaps.length; at += 1) gaps[at] = gapAtTop + drops[at]! * per - lifts[at]!;
  return gaps;
}
