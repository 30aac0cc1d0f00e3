/** What is due by running hours or by date, from the sheet and from what the person planned. */
import type { Engine, ServiceDue } from '../../engine/model.js';
import { factsOf, type RunningFact, type RunningFactOf } from './facts.js';

/** So near that it is called due: the last tenth of the hours, or two weeks. Common practice, no source. */
const SOON = { share: 0.1, days: 14 };

export interface Reminder {
  readonly what: string;
  readonly state: 'overdue' | 'due' | 'coming' | 'done' | 'no data';
  readonly dueHours?: number;
  readonly leftHours?: number;
  /** 2027-03-01 */
  readonly dueDate?: string;
  readonly leftDays?: number;
  /** As printed, where the sheet counts distance. */
  readonly distance?: string;
  readonly planned: boolean;
  readonly origin: string;
  readonly done?: RunningFactOf<'service-done'>;
  /** Why it cannot be said when it is due. */
  readonly missing: readonly string[];
}
export interface Reminders {
  readonly hours?: RunningFactOf<'hours-noted'>;
  readonly items: readonly Reminder[];
}

/**
 * Service due at `today` (2027-03-01). Hours of the sheet count from the first start (a counter
 * that did not stand at zero then was noted before it), months from the sign-off, else from the first start. What was
 * planned under the same name takes the place of the sheet's line; what was done after it was planned is done. An interval by hours is unknown
 * until somebody notes the hours: it is then neither due nor coming. Sorted by how urgent it is.
 */
export function reminders(engine: Engine, facts: readonly RunningFact[], today: string, signedOff?: string): Reminders {
  const hours = factsOf(facts, 'hours-noted').at(-1);
  const now = { hours: hours?.data.hours, today };
  const planned = new Map(factsOf(facts, 'service-planned').map((one) => [one.data.what, one]));
  const sheet = (engine.running?.service ?? []).filter(({ what }) => !planned.has(what));
  const items = [
    ...sheet.map((line) => ofSheet(line, facts, now, signedOff)),
    ...[...planned.values()].map((fact) => ofPlan(fact, facts, now)),
  ];
  return {
    ...(hours && { hours }),
    items: [...items].sort((a, b) => URGENT.indexOf(a.state) - URGENT.indexOf(b.state)),
  };
}
interface Now {
  readonly hours: number | undefined;
  readonly today: string;
}
/** What the counter showed last before this fact; 0 where nobody noted it. */
const hoursBefore = (facts: readonly RunningFact[], fact: RunningFact | undefined): number =>
  factsOf(facts.slice(0, Math.max(0, fact === undefined ? 0 : facts.indexOf(fact))), 'hours-noted').at(-1)?.data
    .hours ?? 0;

function ofSheet(line: ServiceDue, facts: readonly RunningFact[], now: Now, signedOff: string | undefined): Reminder {
  const started = factsOf(facts, 'start-tried').find(({ data }) => data.outcome === 'runs');
  const from = signedOff ?? started?.at;
  const interval = line.hours === undefined ? undefined : line.hours.value / 3600;
  const dueDate =
    line.months === undefined || from === undefined ? undefined : addMonths(from.slice(0, 10), line.months);
  const row = {
    what: line.what,
    ...(interval !== undefined && { dueHours: hoursBefore(facts, started) + interval }),
    ...(dueDate !== undefined && { dueDate }),
    ...(line.distance !== undefined && { distance: line.distance }),
    planned: false,
    origin: line.from.text,
  };
  const noDay = line.months !== undefined && from === undefined;
  return {
    ...standing(row, interval, now, noDay ? ['the day of the sign-off or of the first start'] : []),
    ...ifDone(doneOf(facts, line.what, 0)),
  };
}

function ofPlan(fact: RunningFactOf<'service-planned'>, facts: readonly RunningFact[], now: Now): Reminder {
  const { what, dueHours, dueDate, from: origin } = fact.data;
  const row = {
    what,
    ...(dueHours !== undefined && { dueHours }),
    ...(dueDate !== undefined && { dueDate }),
    planned: true,
    origin,
  };
  const interval = dueHours === undefined ? undefined : dueHours - hoursBefore(facts, fact);
  return { ...standing(row, interval, now, []), ...ifDone(doneOf(facts, what, facts.indexOf(fact))) };
}
const URGENT = ['overdue', 'due', 'no data', 'coming', 'done'] as const satisfies readonly Reminder['state'][];

const doneOf = (
  facts: readonly RunningFact[],
  what: string,
  since: number,
): RunningFactOf<'service-done'> | undefined =>
  factsOf(facts.slice(since), 'service-done').findLast(({ data }) => data.what === what);

const ifDone = (done: RunningFactOf<'service-done'> | undefined): Partial<Reminder> =>
  done === undefined ? {} : { state: 'done', done, missing: [] };

/** Where it stands by hours and days; `interval` are the hours between planning and due. */
function standing(
  row: Omit<Reminder, 'state' | 'leftHours' | 'leftDays' | 'done' | 'missing'>,
  interval: number | undefined,
  now: Now,
  without: readonly string[],
): Reminder {
  const { dueHours, dueDate } = row;
  const leftHours = dueHours === undefined || now.hours === undefined ? undefined : dueHours - now.hours;
  const leftDays = dueDate === undefined ? undefined : daysBetween(now.today, dueDate);
  const missing = [...without, ...(dueHours !== undefined && now.hours === undefined ? ['the running hours'] : [])];
  const overdue = (leftHours ?? 0) < 0 || (leftDays ?? 0) < 0;
  const soon =
    (leftHours !== undefined && leftHours <= SOON.share * (interval ?? 0)) ||
    (leftDays !== undefined && leftDays <= SOON.days);
  const known = leftHours !== undefined || leftDays !== undefined;
  return {
    ...row,
    ...(leftHours !== undefined && { leftHours }),
    ...(leftDays !== undefined && { leftDays }),
    state: overdue ? 'overdue' : soon ? 'due' : known && missing.length === 0 ? 'coming' : 'no data',
    missing,
  };
}

const DAY = 86_400_000;
const dayOf = (date: string): number => Date.parse(`${date.slice(0, 10)}T00:00:00Z`);
/** Whole days from one date to another. */
export const daysBetween = (from: string, to: string): number => Math.round((dayOf(to) - dayOf(from)) / DAY);

/** The same day of a later month; the last day of that month where it has no such day. */
export function addMonths(date: string, months: number): string {
  const [year, month, day] = date.split('-').map(Number) as [number, number, number];
  const count = year * 12 + (month - 1) + months;
  const [y, m] = [Math.floor(count / 12), count % 12];
  const last = new Date(Date.UTC(y, m + 1, 0)).getUTCDate();
  const two = (n: number) => String(n).padStart(2, '0');
  return `${y}-${two(m + 1)}-${two(Math.min(day, last))}`;
}
