/** Inputs that several entries of this subject share. */
import { degrees, mm, rpm } from '../../../quantity/index.js';
import { MOST_CYLINDERS } from '../firing.js';

export const stroke = {
  kind: 'length',
  symbol: 'S',
  meaning: 'printed stroke: twice the crank throw',
  unit: 'mm',
  range: { above: mm(0), to: mm(3000) },
} as const;

export const rodLength = {
  kind: 'length',
  symbol: 'l',
  meaning: 'connecting rod, centre to centre',
  unit: 'mm',
  range: { above: mm(0), to: mm(10_000) },
} as const;

export const pinOffset = {
  kind: 'length',
  symbol: 'e',
  meaning: 'piston pin to cylinder axis, positive toward the side the crankpin moves to after top dead centre',
  unit: 'mm',
  range: { from: mm(-500), to: mm(500) },
  default: 0,
} as const;

export const crankSpeed = {
  kind: 'angular-speed',
  symbol: 'n',
  meaning: 'crank speed, constant',
  unit: 'rpm',
  range: { from: 0, to: rpm(30_000) },
} as const;

export const firingOrder = {
  kind: 'count',
  symbol: 'order',
  meaning: 'firing order: each cylinder number once',
  range: { from: 1, to: MOST_CYLINDERS },
  list: true,
} as const;

export const intervals = {
  kind: 'angle',
  symbol: 'intervals',
  meaning: 'crank angle from each firing to the next, in firing order, the last back to the first; left out means even',
  unit: 'deg',
  range: { from: 0, to: degrees(720) },
  list: true,
  optional: true,
} as const;
