/** How the figures of the combination are shown: the device's unit, and as many places as such a figure deserves. */
import {
  type DisplaySystem,
  displayUnit,
  formatNumber,
  formatQuantity,
  type QuantityKind,
  toUnit,
} from '../../quantity/index.js';
import type { ShownIn } from '../measure-views.js';

/** Plots and figures take the system as a word of their own. */
export const systemOf = ({ length }: ShownIn): DisplaySystem => (length === 'in' ? 'inch' : 'metric');

/** In the metric system: cylinders are checked for pressure in kilopascals. */
const METRIC: Partial<Readonly<Record<QuantityKind, string>>> = { pressure: 'kPa' };
/** Burettes read cubic centimetres and scales grams in every shop; engines turn in revolutions per minute. */
const UNITS: Partial<Readonly<Record<QuantityKind, string>>> = { volume: 'cm3', mass: 'g', 'angular-speed': 'rpm' };
const PLACES: Readonly<Record<DisplaySystem, Partial<Readonly<Record<QuantityKind, number>>>>> = {
  metric: { length: 3, area: 0, volume: 2, stiffness: 2, torque: 1, pressure: 0 },
  inch: { length: 4, area: 3, volume: 2, stiffness: 0, torque: 1, pressure: 0 },
};
const ALIKE: Partial<Readonly<Record<QuantityKind, number>>> = {
  angle: 1,
  ratio: 2,
  force: 0,
  mass: 1,
  'angular-speed': 0,
  frequency: 0,
  acceleration: 0,
};
const USUAL = 3;

export interface ShownWay {
  readonly unit: string;
  readonly places: number;
}
export function shownWay(quantity: QuantityKind, shownIn: ShownIn): ShownWay {
  const system = systemOf(shownIn);
  return {
    unit: UNITS[quantity] ?? (system === 'metric' ? METRIC[quantity] : undefined) ?? displayUnit(quantity, system),
    places: ALIKE[quantity] ?? PLACES[system][quantity] ?? USUAL,
  };
}

/** Most places beside the usual ones, for a figure that would print as nothing. */
const FINER = 3;
function placesFor(quantity: QuantityKind, value: number, { unit, places }: ShownWay): number {
  const number = Math.abs(toUnit(quantity, value, unit) - toUnit(quantity, 0, unit));
  for (let more = 0; more < FINER; more += 1)
    if (number === 0 || number >= 0.5 * 10 ** -(places + more)) return places + more;
  return places + FINER;
}

/** A figure with its unit. One that is not nothing never prints as nothing. */
export function shownQuantity(quantity: QuantityKind, value: number, shownIn: ShownIn): string {
  const way = shownWay(quantity, shownIn);
  return formatQuantity(quantity, value, way.unit, placesFor(quantity, value, way));
}
/** Its number alone, at the usual places. */
export function shownNumber(quantity: QuantityKind, value: number, shownIn: ShownIn): string {
  const { unit, places } = shownWay(quantity, shownIn);
  return formatNumber(toUnit(quantity, value, unit), places);
}

/** "9.00 to 9.50", "at least 0.90 mm". */
export function shownEnds(
  quantity: QuantityKind,
  { low, high }: { readonly low?: number; readonly high?: number },
  shownIn: ShownIn,
): string {
  const way = shownWay(quantity, shownIn);
  const ends = [low, high].flatMap((end) => end ?? []);
  const places = Math.max(way.places, ...ends.map((end) => placesFor(quantity, end, way)));
  const full = (end: number) => formatQuantity(quantity, end, way.unit, places);
  if (low === undefined) return high === undefined ? '' : `at most ${full(high)}`;
  if (high === undefined) return `at least ${full(low)}`;
  return low === high ? full(low) : `${formatNumber(toUnit(quantity, low, way.unit), places)} to ${full(high)}`;
}
