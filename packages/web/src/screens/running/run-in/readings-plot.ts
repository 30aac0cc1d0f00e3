import type { Curve, Plot } from '@gudgeon/core/drawing/plots';
import { parseQuantity, toUnit } from '@gudgeon/core/quantity';
import type { RunInView } from '@gudgeon/core/workbench';

type Reading = RunInView['readings'][number];
const CURVES = [
  { id: 'oil-temperature', kind: 'temperature', unit: '°C', axis: 'left', line: 'solid', symbol: 'circle' },
  { id: 'coolant-temperature', kind: 'temperature', unit: '°C', axis: 'left', line: 'dashed', symbol: 'square' },
  { id: 'oil-pressure', kind: 'pressure', unit: 'bar', axis: 'right', line: 'chain', symbol: 'triangle' },
] as const;
/** Lowest top of each axis [minutes, °C, bar]. */
const LEAST = { minutes: 10, temperature: 100, pressure: 5 };

/** Oil and coolant over the minutes run; nothing while there is no gauge with two looks at it. */
export function readingsPlot(readings: readonly Reading[]): Plot | undefined {
  const curves = CURVES.flatMap(({ id, kind, unit, axis, line, symbol }): readonly Curve[] => {
    const own = readings.filter(({ what, minute }) => what === id && minute !== undefined);
    const points = own
      .flatMap(({ text, minute }): readonly (readonly [number, number])[] => {
        const read = parseQuantity(kind, text);
        return read.ok ? [[minute!, toUnit(kind, read.value.value, unit)]] : [];
      })
      .sort(([a], [b]) => a - b);
    const name = `${own[0]?.title ?? id}, ${unit}`;
    return points.length === 0 ? [] : [{ id, name, axis, line, symbol, points }];
  });
  if (!curves.some(({ points }) => points.length > 1)) return undefined;
  const most = (axis: Curve['axis'] | 'x', least: number, step: number) => {
    const values = curves.flatMap((curve) =>
      axis === 'x' ? curve.points.map(([x]) => x) : curve.axis === axis ? curve.points.map(([, y]) => y) : [],
    );
    return Math.ceil(Math.max(least, ...values) / step) * step;
  };
  return {
    id: 'run-in-readings',
    title: 'Readings of the run-in',
    description: `Read over the minutes run: ${curves.map(({ name, points }) => `${name} ${points.length} times`).join('; ')}.`,
    x: { name: 'run', unit: 'min', from: 0, to: most('x', LEAST.minutes, 5), places: 0 },
    left: { name: 'temperature', unit: '°C', from: 0, to: most('left', LEAST.temperature, 20), places: 0 },
    right: { name: 'pressure', unit: 'bar', from: 0, to: most('right', LEAST.pressure, 1), places: 1 },
    curves,
    limits: [],
    marks: [],
  };
}
