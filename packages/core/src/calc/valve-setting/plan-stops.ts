import { done, type Outcome, refused } from '../../quantity/index.js';
import { CYCLE_DEGREES, SAME, snap } from '../crank/index.js';
import { type Arc, fewest, firstSet } from './fewest-stops.js';
import { maySet, permittedAt, positionOf, refusal, valvesOf } from './position.js';
import { distinct, markOf, type StopTier, usualTiers } from './stop-candidates.js';
import type {
  PlanFault,
  PlannedStop,
  PlanOptions,
  RefusedValve,
  ValvePlan,
  ValvePosition,
  ValveTiming,
} from './types.js';

type Valves = ReturnType<typeof valvesOf>;
/** Positions of every valve (outer) at every place (inner). */
type Table = readonly (readonly ValvePosition[])[];

function tableOf(timing: ValveTiming, valves: Valves, places: readonly number[]): Table {
  return valves.map((valve) => places.map((place) => positionOf(timing, valve, place)));
}

/** The run of places around the circle at which a valve is at least `least` degrees from its window, if there is one. */
function arcAt(row: readonly ValvePosition[], least: number): Arc | undefined {
  const fits = row.map((position) => position.degrees >= least);
  const length = fits.filter(Boolean).length;
  if (length === 0) return undefined;
  // Distance falls off on both sides of the farthest place, so the places that fit are neighbours around the circle.
  const from = length === row.length ? 0 : fits.findIndex((fit, i) => fit && !fits[(i - 1 + row.length) % row.length]);
  return { from, length };
}

/** Fewest stops when every valve must be `least` degrees away; infinite when some valve nowhere is. */
function stopsNeeded(table: Table, least: number): number {
  const arcs = table.map((row) => arcAt(row, least));
  if (arcs.some((arc) => arc === undefined)) return Number.POSITIVE_INFINITY;
  return fewest(arcs as Arc[], table[0]!.length);
}

/** The greatest smallest margin that `stops` stops can give: bisection over the distances that occur. */
function widestMargin(table: Table, stops: number, least: number): number {
  const distances = [...new Set(table.flatMap((row) => row.map((position) => position.degrees)))];
  const usable = distances.filter((degrees) => degrees >= least).sort((a, b) => a - b);
  let low = 0;
  let high = usable.length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (stopsNeeded(table, usable[middle]!) <= stops) low = middle;
    else high = middle - 1;
  }
  return usable[low]!;
}

/** The coarsest tier that needs no more stops than the finest one. */
function coarsest(
  timing: ValveTiming,
  valves: Valves,
  tiers: readonly StopTier[],
): { places: readonly number[]; stops: number } {
  const least = timing.marginDegrees - SAME;
  const needs = tiers.map(({ places }) => ({ places, stops: stopsNeeded(tableOf(timing, valves, places), least) }));
  const stops = needs.at(-1)!.stops;
  return needs.find((tier) => tier.stops === stops)!;
}

/** The stops of the plan for valves that can be set somewhere in the finest tier. */
function chooseStops(timing: ValveTiming, valves: Valves, tiers: readonly StopTier[]): readonly number[] {
  if (valves.length === 0) return [];
  const { places, stops } = coarsest(timing, valves, tiers);
  const table = tableOf(timing, valves, places);
  const margin = widestMargin(table, stops, timing.marginDegrees - SAME);
  const arcs = table.map((row) => arcAt(row, margin)!);
  return firstSet(arcs, places.length, stops).map((i) => places[i]!);
}

/** The position at which a valve is farthest from its window; the earliest of equals. */
function farthest(timing: ValveTiming, valve: Valves[number], places: readonly number[]) {
  return places
    .map((place) => ({ place, position: positionOf(timing, valve, place) }))
    .reduce((best, next) => (next.position.degrees > best.position.degrees ? next : best));
}

function settable(timing: ValveTiming, valves: Valves, places: readonly number[]) {
  const best = valves.map((valve) => ({ valve, ...farthest(timing, valve, places) }));
  return {
    fits: best.filter(({ position }) => maySet(timing, position)).map(({ valve }) => valve),
    refusedValves: best
      .filter(({ position }) => !maySet(timing, position))
      .map(({ position, place }) => refusal(timing, position, place)),
  };
}

/** Gives each valve to the stop where it is farthest from its own window. */
function layOut(
  timing: ValveTiming,
  valves: Valves,
  places: readonly number[],
  tiers: readonly StopTier[],
): PlannedStop[] {
  const given = valves.map((valve) => farthest(timing, valve, places));
  return places.map((place, i) => ({
    crankDegrees: place,
    turnDegrees: snap(place - (places[i - 1] ?? 0)),
    mark: markOf(tiers, place),
    set: given.filter((one) => one.place === place).map((one) => one.position),
    permitted: permittedAt(timing, place).permitted,
  }));
}

function planOver(
  timing: ValveTiming,
  places: readonly number[],
  tiers: readonly StopTier[],
  refusedValves: readonly RefusedValve[],
  fits: Valves,
): ValvePlan {
  const stops = layOut(timing, fits, places, tiers);
  const margins = stops.flatMap((stop) => stop.set.map((position) => position.degrees));
  return {
    stops,
    refused: refusedValves,
    ...(margins.length > 0 ? { smallestDegrees: Math.min(...margins) } : {}),
    marginDegrees: timing.marginDegrees,
    assumed: timing.assumed,
  };
}

function placesFault(places: readonly number[] | undefined): PlanFault | undefined {
  if (places === undefined) return undefined;
  if (places.length === 0) return { code: 'no-stops' };
  const bad = places.find((place) => !(place >= 0 && place < CYCLE_DEGREES));
  return bad === undefined ? undefined : { code: 'stop-out-of-range', given: bad };
}

/**
 * Where to stop the crank, and which valves to set at each stop, turning only forward.
 *
 * Order of wishes: every valve that can be set anywhere; the fewest stops (counted over all candidates); the coarsest
 * marks that reach that number; the greatest smallest margin; the set that comes first turning forward from 0. Each
 * valve goes to the stop where it is farthest from its own open window, to the earlier stop of equals. The search is
 * exact (`fewest-stops.ts`); there is no better plan over the same candidates.
 *
 * `options.stops` fixes the stops: the plan is laid over exactly these. `options.candidates` replaces the usual marks.
 * A valve that may be set at none of the places offered is in `refused`, with its best place among them.
 * Refuses stops or candidates outside 0 to below 720 degrees, and an empty list.
 * Example: order 1-8-4-3-6-5-7-2, no card: stops 0 (intake 1 2 5 7, exhaust 1 3 4 8) and 360 (the others).
 * Source: partition rule checked against printed lists, reference mechanism-open.md sections 8.0 and 8.1.
 */
export function planValveStops(timing: ValveTiming, options: PlanOptions = {}): Outcome<ValvePlan, PlanFault> {
  const fault = placesFault(options.stops) ?? placesFault(options.candidates);
  if (fault) return refused(fault);
  const usual = usualTiers(timing);
  const valves = valvesOf(timing);
  if (options.stops) {
    const places = distinct(options.stops);
    const { fits, refusedValves } = settable(timing, valves, places);
    return done(planOver(timing, places, usual, refusedValves, fits));
  }
  const tiers: readonly StopTier[] = options.candidates
    ? [{ mark: 'given', places: distinct(options.candidates) }]
    : usual;
  const { fits, refusedValves } = settable(timing, valves, tiers.at(-1)!.places);
  return done(planOver(timing, chooseStops(timing, fits, tiers), usual, refusedValves, fits));
}
