import { formatNumber } from '../../quantity/index.js';
import type { Axis, Curve, Plot } from './plot.js';
import { extremesOf } from './values.js';

/** "lift (mm)" */
export const axisText = ({ name, unit }: Axis): string => (unit === '' ? name : `${name} (${unit})`);

/** A figure of an axis with its unit, one place finer than the axis is numbered. */
export const valueText = (axis: Axis, value: number): string => {
  const number = formatNumber(value, axis.places + 1);
  return axis.unit === '°' || axis.unit === '' ? `${number}${axis.unit}` : `${number} ${axis.unit}`;
};

const axisOf = (plot: Plot, { axis }: Pick<Curve, 'axis'>): Axis => (axis === 'right' && plot.right) || plot.left;

function curveWords(plot: Plot, curve: Curve): string {
  const ends = extremesOf(curve);
  if (ends === undefined) return `${curve.name}: no values.`;
  const y = axisOf(plot, curve);
  const told = ([x, value]: readonly [number, number]) => `${valueText(y, value)} at ${valueText(plot.x, x)}`;
  return `${curve.name}: from ${told(ends.lowest)} to ${told(ends.highest)}.`;
}

/** What the curves, limits and marks of a plot say, in sentences. */
export function plotWords(plot: Plot): string {
  const limits = plot.limits.map(
    (limit) =>
      `${limit.name}: ${valueText(axisOf(plot, limit), limit.at)}, allowed ${limit.allowed} it, from ${limit.from}.`,
  );
  const marks = plot.marks.map(({ name, x }) => `${name} at ${valueText(plot.x, x)}.`);
  return [...plot.curves.map((curve) => curveWords(plot, curve)), ...limits, ...marks].join(' ');
}
