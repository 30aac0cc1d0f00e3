/** What of the valve setting comes next: which phase, at which crank stops, which valves there. */
import { CYCLE_DEGREES } from '../calc/crank/index.js';
import { wrapped } from '../quantity/index.js';
import type { CrankStopView, ValveSettingView, ValvesView, ValveTask } from './views.js';

/** Crank degrees to turn forward from one place to another, 0 to below 720. */
export const forwardTurn = (from: number, to: number): number => wrapped(to - from, CYCLE_DEGREES);

function phaseOf(view: ValvesView): ValveTask['phase'] {
  if (view.finished) return 'finished';
  const { shims } = view;
  if (shims !== undefined && shims.progress.done < shims.progress.of) return 'measure';
  return view.recheck.due ? 'look-again' : 'set';
}

function leftAt(view: ValvesView, phase: ValveTask['phase'], stop: CrankStopView): readonly ValveSettingView[] {
  switch (phase) {
    case 'measure': {
      const measured = new Set(view.shims?.measured.filter((one) => one.gap !== undefined).map((one) => one.key));
      return stop.valves.filter((valve) => !measured.has(valve.key));
    }
    case 'set':
      return stop.valves.filter((valve) => valve.state === 'open' || valve.state === 'bad');
    case 'look-again':
      return stop.valves.filter((valve) => valve.state === 'set');
    case 'finished':
      return [];
  }
}

/**
 * The stops that still hold work of the present phase, in the order in which the crank reaches them when turned forward from
 * `crankNow` (degrees from the first cylinder's firing dead centre); without it, in the order of the plan.
 * The phases: measure every gap and shim (shim engines only), set every valve, look at every valve again after two turns.
 */
export function valveTask(view: ValvesView, crankNow?: number): ValveTask {
  const phase = phaseOf(view);
  const stops = view.stops.map((stop, place) => ({ stop, place, left: leftAt(view, phase, stop) }));
  const distance = (stop: CrankStopView) => (crankNow === undefined ? 0 : forwardTurn(crankNow, stop.crankDegrees));
  return {
    phase,
    stops: stops.filter((one) => one.left.length > 0).sort((a, b) => distance(a.stop) - distance(b.stop)),
  };
}
