/** The whole verdict on one size: readings that agree, rule, guard band, zone and distance. Any unit. */
import {
  accepts,
  atMost,
  type Distance,
  type Limits,
  nearestLimit,
  type Rule,
  type Verdict,
  verdictOf,
  type Zone,
  zoneOf,
} from './decision.js';
import { mean, spread } from './repeats.js';

export interface Question extends Limits {
  readonly rule: Rule;
  /** Readings of one size; undefined: not measured. */
  readonly readings?: readonly number[] | undefined;
  /** Expanded uncertainty; undefined: not known. */
  readonly expanded?: number | undefined;
  readonly guardFactor: number;
  readonly nearBand?: number | undefined;
  readonly agreement?: number | undefined;
}

export interface Judgement {
  readonly verdict: Verdict;
  readonly accepted: 'accepted' | 'not accepted' | 'not known';
  readonly zone: Zone | 'not known';
  readonly value: number | undefined;
  readonly nearest: Distance | undefined;
}

/** Width of the guard band: none by the simple rule, unknown where U is. */
export const guardOf = ({ rule, expanded, guardFactor }: Question): number | undefined =>
  rule === 'simple' || expanded === undefined ? undefined : guardFactor * expanded;

export interface Acceptance {
  readonly from: number | undefined;
  readonly to: number | undefined;
}

/** What the rule accepts; unknown where a guard band is asked for and U is not known. */
export function acceptanceOf(question: Question): Acceptance {
  const guard = question.rule === 'simple' ? 0 : guardOf(question);
  if (guard === undefined) return { from: undefined, to: undefined };
  const inward = question.rule === 'guarded' ? guard : -guard;
  const { low, high } = question;
  return { from: low === undefined ? undefined : low + inward, to: high === undefined ? undefined : high - inward };
}

/** Whether readings of one size differ by more than may be; without a figure nothing can be said, and they do not. */
function disagree({ readings = [], agreement, expanded }: Question): boolean {
  if (readings.length < 2) return false;
  const allowed = agreement ?? (expanded === undefined ? undefined : Math.SQRT2 * expanded);
  return allowed !== undefined && !atMost(spread(readings), allowed);
}

/**
 * Verdict on the mean of the readings. No reading and no limit both are "no data"; readings that disagree are "check again"
 * before anything else is said. Undefined for a rule with a guard band where U is not known and there is something to judge.
 * Source: ISO 14253-1, JCGM 106 (recalled).
 */
export function judge(question: Question): Judgement | undefined {
  const value = question.readings && mean(question.readings);
  const nearest = value === undefined ? undefined : nearestLimit(value, question);
  if (!nearest) return { verdict: 'no data', accepted: 'not known', zone: 'not known', value, nearest };
  const { rule, expanded, nearBand } = question;
  if (rule !== 'simple' && expanded === undefined) return undefined;
  const near = nearBand ?? (rule === 'simple' ? (expanded ?? 0) : 0);
  const by = { rule, guard: guardOf(question) ?? 0, near };
  const zone = expanded === undefined ? 'not known' : zoneOf(nearest.distance, expanded);
  if (disagree(question)) return { verdict: 'check again', accepted: 'not known', zone, value, nearest };
  const accepted = accepts(nearest.distance, by) ? 'accepted' : 'not accepted';
  return { verdict: verdictOf(nearest.distance, by), accepted, zone, value, nearest };
}
