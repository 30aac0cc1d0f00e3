/** Checks of a gauge against standards, cut into the sessions between two settings. */
import { deviation, gaugeError, mean } from '../../calc/metrology/index.js';
import type { Length } from '../../quantity/index.js';
import type { InstrumentCheck } from '../model.js';

/** One averaged reading of a standard. */
interface Point {
  readonly time: number;
  readonly error: number;
}
/** Checks between two settings of the gauge: one `start`, what was between, one `end`. */
export interface Session {
  readonly standard: number;
  readonly from: number;
  readonly points: readonly Point[];
  /** Largest deviation of checks repeated at one moment, where there are such. */
  readonly scatter: number | undefined;
  readonly readings: number;
}

/** Checks of one gauge against one standard, in time order, cut where the gauge was set anew. */
function sessionsOf(checks: readonly InstrumentCheck[]): readonly Session[] {
  const sorted = checks
    .map((check) => ({ ...check, time: Date.parse(check.at) }))
    .sort((a, b) => a.time - b.time || (a.entry < b.entry ? -1 : 1));
  const groups: (typeof sorted)[] = [];
  let before: (typeof sorted)[number] | undefined;
  for (const check of sorted) {
    const opens = before === undefined || (check.moment === 'start' && before.moment !== 'start');
    if (opens) groups.push([check]);
    else groups[groups.length - 1]!.push(check);
    before = check;
  }
  return groups.map(sessionOf);
}

function sessionOf(checks: readonly (InstrumentCheck & { readonly time: number })[]): Session {
  const moments = new Map<string, { times: number[]; errors: number[] }>();
  checks.forEach((check, index) => {
    // Checks in between are each a moment of their own; several at the start or at the end are repeats.
    const key = check.moment === 'between' ? `between ${index}` : check.moment;
    const moment = moments.get(key) ?? { times: [], errors: [] };
    moment.times.push(check.time);
    moment.errors.push(check.read - check.standard);
    moments.set(key, moment);
  });
  const all = [...moments.values()];
  const scatters = all.filter(({ errors }) => errors.length > 1).map(({ errors }) => deviation(errors));
  return {
    standard: checks[0]!.standard,
    from: checks[0]!.time,
    points: all.map(({ times, errors }) => ({ time: mean(times), error: mean(errors) })),
    scatter: scatters.length === 0 ? undefined : Math.max(...scatters),
    readings: checks.length,
  };
}

/** Error at a time: on the straight line between the two checks around it, else that of the nearest check. */
export function errorIn({ points }: Session, time: number): number {
  const after = points.findIndex((point) => point.time > time);
  if (after <= 0) return points[after === 0 ? 0 : points.length - 1]!.error;
  const [one, next] = [points[after - 1]!, points[after]!];
  return gaugeError({
    standard: 0 as Length,
    atStart: one.error as Length,
    atEnd: next.error as Length,
    share: (time - one.time) / (next.time - one.time),
  });
}
/** Error at the last check less that at the first. */
export const driftOf = ({ points }: Session): number => points[points.length - 1]!.error - points[0]!.error;

/** Sessions of one gauge, a list for each standard. */
export function sessionsByStandard(checks: readonly InstrumentCheck[]): readonly (readonly Session[])[] {
  const byStandard = new Map<number, InstrumentCheck[]>();
  for (const check of checks) {
    const own = byStandard.get(check.standard);
    if (own === undefined) byStandard.set(check.standard, [check]);
    else own.push(check);
  }
  return [...byStandard.values()].map(sessionsOf);
}
