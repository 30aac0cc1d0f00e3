/** In which SI unit the figures of each kind of quantity are recorded. */
import type { QuantityKind } from '../quantity/index.js';
import type { FigureUnit } from './combination-data.js';

export const FIGURE_UNITS: Partial<Readonly<Record<QuantityKind, FigureUnit>>> = {
  length: 'm',
  area: 'm2',
  volume: 'm3',
  angle: 'rad',
  'angular-speed': 'rad/s',
  force: 'N',
  stiffness: 'N/m',
  mass: 'kg',
  density: 'kg/m3',
  pressure: 'Pa',
  'temperature-difference': 'K',
  'thermal-expansion': '1/K',
  ratio: '1',
};
