/** How a measured figure is shown: the device's unit, and as many places as such a figure deserves. */
import type { Measured } from '../assess/index.js';
import type { Window } from '../engine/index.js';
import { formatNumber, formatQuantity, toUnit } from '../quantity/index.js';
import type { ShownIn } from './measure-views.js';

interface Way {
  readonly unit: string;
  readonly places: number;
}
/** Burettes read cubic centimetres and scales grams in every shop; only lengths and forces follow the device. */
const WAYS: Readonly<Record<ShownIn['length'], Readonly<Record<Measured, Way>>>> = {
  mm: {
    length: { unit: 'mm', places: 3 },
    volume: { unit: 'cm3', places: 1 },
    mass: { unit: 'g', places: 1 },
    force: { unit: 'N', places: 0 },
    angle: { unit: 'deg', places: 1 },
    torque: { unit: 'N·m', places: 1 },
  },
  in: {
    length: { unit: 'in', places: 4 },
    volume: { unit: 'cm3', places: 1 },
    mass: { unit: 'g', places: 1 },
    force: { unit: 'lbf', places: 1 },
    angle: { unit: 'deg', places: 1 },
    torque: { unit: 'lbf·ft', places: 1 },
  },
};
export const shownUnit = (measured: Measured, shownIn: ShownIn): string => WAYS[shownIn.length][measured].unit;

/** Most places beside the usual ones, for a figure that would print as nothing. */
const FINER = 3;
function placesFor(measured: Measured, value: number, { unit, places }: Way): number {
  const number = Math.abs(toUnit(measured, value, unit) - toUnit(measured, 0, unit));
  for (let more = 0; more < FINER; more += 1) {
    if (number === 0 || number >= 0.5 * 10 ** -(places + more)) return places + more;
  }
  return places + FINER;
}

/** A figure in the device's unit. One that is not nothing never prints as nothing. */
export function shownFigure(measured: Measured, value: number, shownIn: ShownIn): string {
  const way = WAYS[shownIn.length][measured];
  return formatQuantity(measured, value, way.unit, placesFor(measured, value, way));
}

/** A limit is put into words once for each unit: it stands in every row that it judges, at each reading. */
const worded = new WeakMap<Window<number>, Map<string, string>>();

/** "0.0010 to 0.0025 in", "at most 0.050 mm"; ends beyond the usual places keep the places that they need. */
export function shownWindow(measured: Measured, window: Window<number>, shownIn: ShownIn): string {
  const key = `${measured} ${shownIn.length}`;
  const known = worded.get(window) ?? new Map<string, string>();
  worded.set(window, known);
  const words = known.get(key) ?? windowWords(measured, window, shownIn);
  known.set(key, words);
  return words;
}

function windowWords(measured: Measured, { low, high }: Window<number>, shownIn: ShownIn): string {
  const way = WAYS[shownIn.length][measured];
  const ends = [low, high].flatMap((end) => end ?? []);
  const places = Math.max(way.places, ...ends.map((end) => placesFor(measured, end, way)));
  const full = (end: number) => formatQuantity(measured, end, way.unit, places);
  if (low === undefined) return high === undefined ? '' : `at most ${full(high)}`;
  if (high === undefined) return `at least ${full(low)}`;
  if (low === high) return full(low);
  return `${formatNumber(toUnit(measured, low, way.unit), places)} to ${full(high)}`;
}
