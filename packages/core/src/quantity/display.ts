/** What a person sees in the system of units that he or she chose. Stored values never change. */
import { formatQuantity, formatWindow } from './format.js';
import type { QuantityKind } from './kinds.js';
import type { Typed, TypedWindow } from './typed.js';
import { type Unit, unitOrThrow, unitsOf } from './units.js';

/** The display systems that a person chooses from. */
export type DisplaySystem = 'inch' | 'metric';

const suits = (unit: Unit, system: DisplaySystem): boolean => unit.system === 'both' || unit.system === system;

/** Name of the unit in which a kind is usually shown: mm or in, N·m or lbf·ft, cm3 or in3, deg in both. */
export const displayUnit = (kind: QuantityKind, system: DisplaySystem): string =>
  unitsOf(kind).find((unit) => suits(unit, system))!.name;

/** A converted figure is rounded to at most this share of the step it was typed in. */
const FINER = 3;

/**
 * Places in the unit `to` that keep the resolution of a figure typed with `places` in the unit `from`: the fewest whose step is
 * at most a third of the typed step, so that 0.001 in shows as 0.025 mm and 0.01 mm as 0.0004 in, and nobody reads more into a
 * figure than was measured. Where the units differ by a power of ten the point only moves. Never below 0.
 * Throws RangeError when the kind has no such unit.
 */
export function matchingPlaces(kind: QuantityKind, places: number, from: string, to: string): number {
  const [typed, shown] = [unitOrThrow(kind, from), unitOrThrow(kind, to)];
  const power = places - Math.log10((typed.times * shown.per) / typed.per / shown.times);
  const whole = Math.round(power);
  const exact = Math.abs(power - whole) < 1e-9;
  return Math.max(0, exact ? whole : Math.ceil(power + Math.log10(FINER)));
}

const FRACTION = /\d\s*[/\u2044]\s*\d|[\u00bc-\u00be\u2150-\u215e]/;

/** Text of a typed value in a unit, with the places that its resolution deserves. */
export const inUnit = (kind: QuantityKind, typed: Omit<Typed, 'text'>, unit: string): string =>
  formatQuantity(kind, typed.value, unit, matchingPlaces(kind, typed.places, typed.unit, unit));

/** Text of a typed window in a unit, with the places that its resolution deserves. */
export const windowInUnit = (kind: QuantityKind, window: Omit<TypedWindow, 'text'>, unit: string): string =>
  formatWindow(kind, window, unit, matchingPlaces(kind, window.places, window.unit, unit));

const target = (kind: QuantityKind, unit: string, system: DisplaySystem): string =>
  suits(unitOrThrow(kind, unit), system) ? unitOrThrow(kind, unit).name : displayUnit(kind, system);

/**
 * Text of a typed value for a person who chose a system: in its own unit where that belongs to the system (thou stay thou), else in
 * the system's usual unit. A fraction that needs no conversion stays a fraction: `1/2 turn`.
 */
export function inSystem(kind: QuantityKind, typed: Typed, system: DisplaySystem): string {
  const unit = target(kind, typed.unit, system);
  return unit === typed.unit && FRACTION.test(typed.text) ? typed.text.trim() : inUnit(kind, typed, unit);
}

/** The same for a window. */
export function windowInSystem(kind: QuantityKind, window: TypedWindow, system: DisplaySystem): string {
  const unit = target(kind, window.unit, system);
  return unit === window.unit && FRACTION.test(window.text) ? window.text.trim() : windowInUnit(kind, window, unit);
}
