/** Turns of the adjuster <-> plunger travel of a hydraulic lifter, for the thread and ratio of one engine. */
import { plungerTravel, turnsForTravel } from '../calc/valvetrain/index.js';
import type { Engine } from '../engine/index.js';
import { type Angle, formatQuantity, type Length, parseQuantity, turns } from '../quantity/index.js';
import type { Reading } from '../record/index.js';
import { adjusterOf, bothLengths } from './setting-rule.js';
import type { PreloadTravel } from './views.js';

const NOT_KNOWN = 'The sheet gives no pitch, ratio or screw place: turns cannot be turned into plunger travel here.';

const travelOf = (engine: Engine, angle: Angle): Length | undefined => {
  const adjuster = engine.valveGear && adjusterOf(engine.valveGear);
  return adjuster && plungerTravel(adjuster, angle);
};

/** Whether that travel lies where the sheet asks for it; empty where the sheet gives no window. */
function windowWords(engine: Engine, travel: Length): string {
  const asked = engine.valveGear?.preload?.plungerTravel;
  if (asked === undefined) return '';
  const { low, high } = asked.window;
  const inside = travel >= (low ?? 0) - 1e-9 && travel <= (high ?? Number.POSITIVE_INFINITY) + 1e-9;
  return ` The sheet asks for ${asked.text} (${asked.from.text}): ${inside ? 'inside' : 'outside'}.`;
}

/**
 * Plunger travel for turns past zero lash.
 *
 * `count` turns of the adjuster, 0 to 20. The travel is left out where the sheet lacks pitch, ratio or screw place, and the
 * words say so. Source: see `calc/valvetrain`, plungerTravel.
 */
export function preloadTravel(engine: Engine, count: number): PreloadTravel {
  const travel = travelOf(engine, turns(count));
  if (travel === undefined) return { words: NOT_KNOWN };
  const text = formatQuantity('length', travel, 'mm', 2);
  const reading: Reading = { text, value: travel, unit: 'm' };
  return { words: `Plunger travel ${bothLengths(travel)}.${windowWords(engine, travel)}`, reading };
}

/** Turns past zero lash for a travel keyed with its unit, in words; what is missing, where it cannot be computed. */
export function turnsForTypedTravel(engine: Engine, text: string): string {
  const typed = parseQuantity('length', text);
  if (!typed.ok || typed.value.value < 0) return `${text} cannot be read as a travel.`;
  const adjuster = engine.valveGear && adjusterOf(engine.valveGear);
  if (adjuster === undefined) return NOT_KNOWN;
  const angle = turnsForTravel(adjuster, typed.value.value as Length);
  const count = Math.round((angle / turns(1)) * 100) / 100;
  return `${text} of travel is ${count} turn past zero lash.${windowWords(engine, typed.value.value as Length)}`;
}
