import Papa from 'papaparse';
import type { Plot } from './plot.js';
import { axisText } from './plot-words.js';
import { placesAlong, valueAt } from './values.js';

/** Significant digits of a saved value: more than any instrument, fewer than the noise of the arithmetic. */
const DIGITS = 10;
const cell = (value: number | undefined): string =>
  value === undefined ? '' : String(Number.parseFloat(value.toPrecision(DIGITS)));

/** Columns and rows of a plot: x first, then each curve; empty where a curve does not reach. */
export function plotTable(plot: Plot): {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
} {
  const unitOf = (axis: 'left' | 'right') => ((axis === 'right' && plot.right) || plot.left).unit;
  return {
    columns: [
      axisText(plot.x),
      ...plot.curves.map(({ name, axis }) => axisText({ ...plot.left, name, unit: unitOf(axis) })),
    ],
    rows: placesAlong(plot).map((x) => [cell(x), ...plot.curves.map((curve) => cell(valueAt(curve, x)))]),
  };
}

/** The values of a plot as CSV (RFC 4180). Names are words and cannot run as a formula in a spreadsheet. */
export function plotCsv(plot: Plot): string {
  const { columns, rows } = plotTable(plot);
  return `${Papa.unparse({ fields: [...columns], data: rows.map((row) => [...row]) }, { escapeFormulae: /^[=@+\t\r]|^-(?![\d.])/ })}\r\n`;
}
