import { distanceFromWindow } from '../cam/index.js';
import { CYCLE_DEGREES, SAME, snap, wrap } from '../crank/index.js';
import type { CrankVerdict, OpenWindow, RefusedValve, ValveGroup, ValvePosition, ValveTiming } from './types.js';

/** Every valve of the engine in cylinder order, intake before exhaust. */
export function valvesOf(timing: ValveTiming): readonly (ValveGroup & { readonly firesAt: number })[] {
  return [...timing.cylinders]
    .sort((a, b) => a.cylinder - b.cylinder)
    .flatMap((at) => [
      { ...at, valve: 'intake' as const },
      { ...at, valve: 'exhaust' as const },
    ]);
}

/**
 * Crank degrees from a phase to the nearer end of an open window: positive on the base circle, negative inside the window.
 *
 * `distanceFromWindow` of calc/cam, counted in degrees and exact to 1e-9 deg.
 * Example: a window from 330 to 610 seen from phase 0 gives 110, nearer to its closing.
 */
export function distanceFromOpen(window: OpenWindow, phase: number): Pick<ValvePosition, 'degrees' | 'nearest'> {
  const { distance, nearest } = distanceFromWindow(window, phase, CYCLE_DEGREES);
  return { degrees: snap(distance), nearest };
}

/** Where one valve stands at one crank angle. */
export function positionOf(
  timing: ValveTiming,
  valve: ValveGroup & { readonly firesAt: number },
  crank: number,
): ValvePosition {
  const phase = wrap(crank - valve.firesAt);
  return { cylinder: valve.cylinder, valve: valve.valve, phase, ...distanceFromOpen(timing.open[valve.valve], phase) };
}

/** At least the margin away from opening and closing, inclusive. */
export function maySet(timing: ValveTiming, position: ValvePosition): boolean {
  return position.degrees >= timing.marginDegrees - SAME;
}

/** Why a valve may not be set at a crank angle. */
export function refusal(timing: ValveTiming, position: ValvePosition, crank: number): RefusedValve {
  const code = position.degrees < -SAME ? 'open' : 'too-near';
  return { ...position, code, crankDegrees: crank, marginDegrees: timing.marginDegrees };
}

/**
 * "The crank is here: which valves may I set?"
 *
 * `crank` is in degrees after the first cylinder of the order fires; any finite number, whole cycles are taken off.
 * A valve is permitted when it is at least the margin away from its opening and from its closing, inclusive. The others
 * are listed with the reason: off the base circle, or an end of the window nearer than the margin.
 * Source: reference mechanism-open.md section 8.0.
 */
export function permittedAt(timing: ValveTiming, crank: number): CrankVerdict {
  const at = wrap(crank);
  const positions = valvesOf(timing).map((valve) => positionOf(timing, valve, at));
  return {
    crankDegrees: at,
    permitted: positions.filter((position) => maySet(timing, position)),
    refused: positions.filter((position) => !maySet(timing, position)).map((p) => refusal(timing, p, at)),
  };
}
