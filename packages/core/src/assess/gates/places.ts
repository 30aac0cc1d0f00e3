/** How many places a figure of this gauge has; a place too few or too many is the commonest trace of a slip. */
import { findUnit, parseQuantity, type Typed, toUnit } from '../../quantity/index.js';
import type { GateQuestion } from './model.js';

const MOST = 6;
/** Places in which a step can be written: 4 for 0.0001 as for 0.0005. */
export function placesOfStep(step: number): number {
  let places = 0;
  const left = () => Math.abs(step * 10 ** places - Math.round(step * 10 ** places));
  while (places < MOST && left() > 1e-6 * step * 10 ** places) places += 1;
  return places;
}

/** Places that the gauge gives in the unit typed, else those of a like reading in that unit; undefined where neither knows. */
export function placesFor({ gauge, measured, written }: GateQuestion, typed: Typed): number | undefined {
  if (gauge !== undefined) {
    return findUnit(measured, gauge.unit)?.name === typed.unit
      ? placesOfStep(toUnit(measured, gauge.resolution, gauge.unit) - toUnit(measured, 0, gauge.unit))
      : undefined;
  }
  if (written === undefined) return undefined;
  // What stands in the record was read once: the mark in it is its decimal mark.
  const like = parseQuantity(measured, written, { decimalMark: written.includes(',') ? ',' : '.' });
  return like.ok && like.value.unit === typed.unit ? like.value.places : undefined;
}
