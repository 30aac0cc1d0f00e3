/** The bridge from an engine sheet to the valve-setting calculations. */
import {
  describeAssumption,
  describePlanFault,
  describeTimingFault,
  planValveStops,
  type ValvePlan,
  type ValveTiming,
  type ValveTimingInput,
  valveTiming,
} from '../calc/valve-setting/index.js';
import type { CamEvents, Engine } from '../engine/index.js';
import { type Angle, degrees, type Outcome, refused } from '../quantity/index.js';

/** Settings of the person for this engine's valve plan. */
export interface ValveChoices {
  readonly margin?: Angle;
  /** Crank stops that the person wants, degrees from the first cylinder's firing dead centre. */
  readonly stops?: readonly number[];
}

/** Where each cylinder fires and when its valves are open; refused with one clear line for each thing that is missing. */
export function timingOf(engine: Engine, choices: ValveChoices): Outcome<ValveTiming, readonly string[]> {
  const { firingOrder, firingIntervals } = engine.layout;
  if (firingOrder.length === 0)
    return refused([
      'The sheet gives no firing order: no crank position can be told from it. Use the per-cylinder method by eye.',
    ]);
  const input: ValveTimingInput = {
    firingOrder,
    ...(firingIntervals !== undefined && { firingIntervals }),
    ...(engine.cam !== undefined && { cam: engine.cam }),
    ...(choices.margin !== undefined && { margin: choices.margin }),
  };
  const timing = valveTiming(input);
  return timing.ok ? timing : refused(timing.fault.map(describeTimingFault));
}

/** The plan of crank stops; refused with one clear line for each thing that is missing. */
export function planOf(timing: ValveTiming, choices: ValveChoices): Outcome<ValvePlan, readonly string[]> {
  const plan = planValveStops(timing, choices.stops === undefined ? {} : { stops: choices.stops });
  return plan.ok ? plan : refused([describePlanFault(plan.fault)]);
}

export const assumptionsOf = (timing: ValveTiming): readonly string[] => timing.assumed.map(describeAssumption);

/** Seat events of the windows that the plan uses, for drawings of cam and dial. */
export function eventsOf(timing: ValveTiming): CamEvents {
  const { intake, exhaust } = timing.open;
  return {
    intakeOpens: degrees(360 - intake.opens),
    intakeCloses: degrees(intake.closes - 540),
    exhaustOpens: degrees(180 - exhaust.opens),
    exhaustCloses: degrees(exhaust.closes - 360),
  };
}

/**
 * Crank angle as drawings count it, from firing dead centre of cylinder 1, for a plan's angle, which counts from the first
 * cylinder of the firing order.
 */
export function drawingAngle(timing: ValveTiming, crankDegrees: number): Angle {
  const first = timing.cylinders.find((one) => one.cylinder === 1)?.firesAt ?? 0;
  return degrees(crankDegrees - first);
}
export const planDegrees = (timing: ValveTiming, angle: Angle): number => {
  const first = timing.cylinders.find((one) => one.cylinder === 1)?.firesAt ?? 0;
  return angle / degrees(1) + first;
};
