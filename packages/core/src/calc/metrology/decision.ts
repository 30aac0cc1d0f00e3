/** A measured value against limits, with its uncertainty: one honest word and the distance. Any unit. */
import { normalBelow } from './distributions.js';

export type Verdict = 'in' | 'near' | 'out' | 'no data' | 'check again';
export type Zone = 'conformity proven' | 'not proven' | 'nonconformity proven';
export const RULES = ['simple', 'guarded', 'guarded-rejection'] as const;
export type Rule = (typeof RULES)[number];

/** Limits are inclusive; either end may be open. */
export interface Limits {
  readonly low?: number | undefined;
  readonly high?: number | undefined;
}

const RELATIVE_ROUNDING = 1e-9;
const ABSOLUTE_ROUNDING = 1e-12;

/** Room for rounding: 0.059999999999997 is 0.060, and a difference of two readings of 70 mm is exact to a picometre. */
const rounding = (value: number, limit: number): number =>
  Math.max(ABSOLUTE_ROUNDING, RELATIVE_ROUNDING * Math.max(Math.abs(value), Math.abs(limit)));

/** Distance to a limit, positive inside; a difference that is only rounding is 0. */
function room(inside: number, value: number, limit: number): number {
  return Math.abs(inside) <= rounding(value, limit) ? 0 : inside;
}

export interface Distance {
  /** Signed distance to the nearer limit: positive inside, negative outside. */
  readonly distance: number;
  readonly limit: number;
  readonly side: 'low' | 'high';
}

/** The limit that decides: the one nearest from inside or farthest exceeded. Undefined without limits. */
export function nearestLimit(value: number, { low, high }: Limits): Distance | undefined {
  const above = low === undefined ? Number.POSITIVE_INFINITY : room(value - low, value, low);
  const below = high === undefined ? Number.POSITIVE_INFINITY : room(high - value, value, high);
  if (low !== undefined && above <= below) return { distance: above, limit: low, side: 'low' };
  return high === undefined ? undefined : { distance: below, limit: high, side: 'high' };
}

/** Whether one number is not above another but for rounding. */
export const atMost = (one: number, other: number): boolean => one <= other + rounding(one, other);

/**
 * Zone of a value with its expanded uncertainty U: conformity proven when it keeps U from every limit (inclusive), nonconformity
 * proven when it is beyond a limit by more than U. Source: ISO 14253-1 (recalled).
 */
export function zoneOf(distance: number, expanded: number): Zone {
  if (atMost(expanded, distance)) return 'conformity proven';
  return atMost(-expanded, distance) ? 'not proven' : 'nonconformity proven';
}

export interface DecisionRule {
  readonly rule: Rule;
  /** Width of the guard band, at least 0; not used by the simple rule. */
  readonly guard: number;
  /** An accepted value nearer to a limit than this is called near; at least 0. */
  readonly near: number;
}

/**
 * Verdict of a value by its distance to the deciding limit.
 *
 * `simple`: in to the limit itself. `guarded`: in only where the guard band is kept, near inside the band, out beyond
 * the limit. `guarded-rejection`: out only beyond the limit by more than the band, near within the band on either side.
 * A guard band of 0 makes all three the same. Source: ISO 14253-1 and JCGM 106, 8 (recalled).
 */
export function verdictOf(distance: number, { rule, guard, near }: DecisionRule): Verdict {
  const beyond = rule === 'guarded-rejection' ? -guard : 0;
  if (!atMost(beyond, distance)) return 'out';
  const band = rule === 'simple' ? near : Math.max(guard, near);
  return atMost(band, distance) ? 'in' : 'near';
}

/** Whether the rule accepts: by the guarded rule a value inside its band is not accepted. */
export function accepts(distance: number, { rule, guard }: DecisionRule): boolean {
  if (rule === 'simple') return atMost(0, distance);
  return atMost(rule === 'guarded' ? guard : -guard, distance);
}

export interface Conformance {
  readonly inside: number;
  readonly below: number;
  readonly above: number;
}

/**
 * Probability that the true value lies inside, below and above the limits, for a normal distribution about the measured value.
 *
 *   p = Φ((high − y)/u) − Φ((low − y)/u)
 *
 * y and limits in one unit, u standard uncertainty at least 0; u = 0 gives a sharp answer, limits inclusive.
 * Example: y 13.6, u 1.8, 12.5 to 16.3: 0.6626. Source: JCGM 106, 7.4 (recalled).
 */
export function conformance(value: number, standard: number, { low, high }: Limits): Conformance {
  const share = (far: number) => (standard === 0 ? Number(far > rounding(value, value)) : normalBelow(far / standard));
  const below = low === undefined ? 0 : share(low - value);
  const above = high === undefined ? 0 : share(value - high);
  return { inside: Math.max(0, 1 - below - above), below, above };
}

/**
 * What is known of a size after measuring it, where something was known before: from like parts, mean m₀ and deviation s₀.
 *
 *   mean = (y·s₀² + m₀·u²)/(s₀² + u²), deviation = s₀·u/√(s₀² + u²)
 *
 * s₀ above 0, u at least 0, one unit. Source: JCGM 106, 6.2 and A.4 (recalled): normal prior, normal measurement.
 */
export function knowingBefore(
  value: number,
  standard: number,
  before: { readonly mean: number; readonly deviation: number },
): { readonly mean: number; readonly deviation: number } {
  const [s2, u2] = [before.deviation ** 2, standard ** 2];
  return {
    mean: (value * s2 + before.mean * u2) / (s2 + u2),
    deviation: (before.deviation * standard) / Math.sqrt(s2 + u2),
  };
}
