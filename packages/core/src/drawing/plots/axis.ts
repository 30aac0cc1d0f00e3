import { scaleLinear } from 'd3-scale';
import type { Axis } from './plot.js';

/** About how many steps an axis is divided into; few enough that the numbers are read from afar. */
const STEPS = 5;
/** Values nearer than this share of themselves, or below this size, are one value. */
const ALIKE = 1e-9;
const NOTHING = 1e-12;

/**
 * An axis over all the values, with ends and steps on round numbers. `reach` are values that it must hold besides (a limit, zero).
 * Places are those of its steps. Without a finite value it runs from 0 to 1.
 */
export function axisOver(name: string, unit: string, values: readonly number[], reach: readonly number[] = []): Axis {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const list of [values, reach])
    for (const value of list) {
      if (!Number.isFinite(value)) continue;
      if (value < least) least = value;
      if (value > most) most = value;
    }
  if (least > most) [least, most] = [0, 1];
  const size = Math.max(Math.abs(least), Math.abs(most));
  if (most - least <= ALIKE * size || size < NOTHING) {
    const aside = size < NOTHING ? 1 : size / 10;
    [least, most] = [least - aside, most + aside];
  }
  const [from, to] = scaleLinear().domain([least, most]).nice(STEPS).domain() as [number, number];
  return { name, unit, from, to, places: placesOfSteps(from, to) };
}

/** Angles of the crank: steps of quarter turns, so that dead centres stand on a line. */
export const crankAxis = (name: string, from: number, to: number): Axis => ({ name, unit: '°', from, to, places: 0 });

function placesOfSteps(from: number, to: number): number {
  const [first, second] = scaleLinear().domain([from, to]).ticks(STEPS);
  const step = Math.abs((second ?? to) - (first ?? from));
  return Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
}

/** Where numbers stand on an axis. Degrees of the crank come in parts of a turn. */
export function stepsOf(axis: Axis): readonly number[] {
  const step = axis.unit === '°' ? crankStep(axis.to - axis.from) : undefined;
  if (step === undefined) return scaleLinear().domain([axis.from, axis.to]).ticks(STEPS);
  const first = Math.ceil(axis.from / step - 1e-9);
  const last = Math.floor(axis.to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, at) => (first + at) * step);
}

const crankStep = (span: number): number =>
  [5, 10, 15, 30, 45, 90, 180, 360].find((step) => span / step <= 8.01) ?? 360;

/** Millimetres on the drawing for a value of the axis. */
export const placeOn = (axis: Axis, start: number, end: number) => {
  const each = (end - start) / (axis.to - axis.from);
  return (value: number): number => start + (value - axis.from) * each;
};
