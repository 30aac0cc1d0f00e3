import { apart, done, type Outcome, refused } from '../../quantity/index.js';
import { CYCLE_DEGREES, snap, wrap } from '../crank/index.js';
import { mateOf, runningMates } from './running-mates.js';
import type { ValveGroup, ValveSide, ValveTiming } from './types.js';

/** A rule "with valve n at full lift set valve (sum - n)", proved for one head. */
export interface MirrorRule {
  /** 9 for four cylinders, 13 for six: one more than the number of valves. */
  readonly sum: number;
  /** Valve at full lift -> valve to set, both numbered from 1 at the front of the head. */
  readonly pairs: readonly (readonly [number, number])[];
}
export type MirrorFault =
  | { readonly code: 'valves-do-not-fit'; readonly cylinder: number }
  | {
      readonly code: 'not-a-mirror';
      readonly open: ValveGroup & { readonly number: number };
      readonly set: ValveGroup & { readonly number: number };
      /** Crank degrees between the valve to set and its own full lift; 360 would be safe. */
      readonly fromFullLift: number;
      readonly reason: 'other-kind' | 'not-mates';
    };

function fullLift(timing: ValveTiming, valve: ValveGroup): number {
  const { opens, closes } = timing.open[valve.valve];
  const place = timing.cylinders.find((one) => one.cylinder === valve.cylinder)!;
  return wrap(place.firesAt + (opens + closes) / 2);
}

/** Crank degrees between the full lifts of two valves, the shorter way round. */
function between(timing: ValveTiming, a: ValveGroup, b: ValveGroup): number {
  return snap(apart(fullLift(timing, a), fullLift(timing, b), CYCLE_DEGREES));
}

/** A cylinder of the engine that has not exactly one intake and one exhaust valve in the row, or a stranger to the engine. */
function misfit(timing: ValveTiming, row: readonly ValveGroup[]): number | undefined {
  const engine = timing.cylinders.map(({ cylinder }) => cylinder);
  const stranger = row.find(({ cylinder }) => !engine.includes(cylinder));
  if (stranger) return stranger.cylinder;
  const counts = (cylinder: number, side: ValveSide) =>
    row.filter((valve) => valve.cylinder === cylinder && valve.valve === side).length;
  return engine.find((cylinder) => counts(cylinder, 'intake') !== 1 || counts(cylinder, 'exhaust') !== 1);
}

/**
 * Checks whether the rule of nine (four cylinders) or of thirteen (six) holds for a row of valves along the head.
 *
 *   with valve n at full lift set valve (2N + 1) - n
 *
 * `row` lists the valves from the front, one intake and one exhaust for each cylinder. The rule holds only if each valve
 * and its mirror image are of the same kind and their cylinders are running mates: then the valve to set is exactly 360
 * crank degrees from its own full lift. Otherwise the first pair that breaks it is named with its distance.
 * Example: row E I E I E I E I, order 1-3-4-2, events 10/50/50/10: refused; valve 8 is 140 degrees from full lift.
 * Source: reference mechanism-open.md section 8.2.
 */
export function mirrorRule(timing: ValveTiming, row: readonly ValveGroup[]): Outcome<MirrorRule, MirrorFault> {
  const cylinder = misfit(timing, row);
  if (cylinder !== undefined) return refused({ code: 'valves-do-not-fit', cylinder });
  const mates = runningMates(timing);
  const sum = row.length + 1;
  for (const [i, open] of row.entries()) {
    const set = row[row.length - 1 - i]!;
    const sameKind = open.valve === set.valve;
    if (sameKind && mateOf(mates, open.cylinder) === set.cylinder) continue;
    return refused({
      code: 'not-a-mirror',
      open: { ...open, number: i + 1 },
      set: { ...set, number: sum - i - 1 },
      fromFullLift: between(timing, open, set),
      reason: sameKind ? 'not-mates' : 'other-kind',
    });
  }
  return done({ sum, pairs: row.map((_, i) => [i + 1, sum - i - 1] as const) });
}
