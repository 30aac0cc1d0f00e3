/** What is due by running hours or by date, from the sheet and from what the person planned. */
import type { Engine } from '../../engine/model.js';
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
 * Service due at `today` (2027-03-01). Hours of the sheet count from the first start, months from the sign-off, else from the first start. What was
 * planned under the same name takes the place of the sheet's line; what was done after it was planned is done. An interval by hours is unknown
 * until somebody notes the hours: it is then neither due nor coming. Sorted by how urgent it is.
 */
export function reminders(engine: Engine, facts: readonly RunningFact[], today: string, signedOff?: string): Reminders {
  const hours = factsOf(facts, 'hours-noted').at(-1);
  const started = factsOf(facts, 'start-tried').find(({ data }) => data.outcome === 'runs');
  const from = signedOff ?? started?.at;
  const planned = new Map(factsOf(facts, 'service-planned').map((one) => [one.data.what, one]));
  const sheet = (engine.running?.service ?? []).filter(({ what }) => !planned.has(what));
  const now = { hours: hours?.data.hours, today };
  const items = [
    ...sheet.map((line) => {
      const due =
        line.months === undefined || from === undefined ? undefined : addMonths(from.slice(0, 10), line.months);
      return reminder(
        {
          what: line.what,
          ...(line.hours && { dueHours: line.hours.value / 3600 }),
          ...(due !== undefined && { dueDate: due }),
          ...(line.distance !== undefined && { distance: line.distance }),
          planned: false,
          origin: line.from.text,
        },
        now,
        doneOf(facts, line.what, 0),
        line.months !== undefined && from === undefined ? ['the day of the sign-off or of the first start'] : [],
      );
    }),
    ...[...planned.values()].map((fact) => {
      const { what, dueHours, dueDate, from: origin } = fact.data;
      const row = {
        what,
        ...(dueHours !== undefined && { dueHours }),
        ...(dueDate !== undefined && { dueDate }),
        planned: true,
        origin,
      };
      return reminder(row, now, doneOf(facts, what, facts.indexOf(fact)), []);
    }),
  ];
  return {
    ...(hours && { hours }),
    items: [...items].sort((a, b) => URGENT.indexOf(a.state) - URGENT.indexOf(b.state)),
  };
}
const URGENT = ['overdue', 'due', 'no data', 'coming', 'done'] as const satisfies readonly Reminder['state'][];

const doneOf = (
  facts: readonly RunningFact[],
  what: string,
  since: number,
): RunningFactOf<'service-done'> | undefined =>
  factsOf(facts.slice(since), 'service-done').findLast(({ data }) => data.what === what);

function reminder(
  row: Omit<Reminder, 'state' | 'leftHours' | 'leftDays' | 'done' | 'missing'>,
  now: { readonly hours: number | undefined; readonly today: string },
  done: RunningFactOf<'service-done'> | undefined,
  without: readonly string[],
): Reminder {
  const { dueHours, dueDate } = row;
  const leftHours = dueHours === undefined || now.hours === undefined ? undefined : dueHours - now.hours;
  const leftDays = dueDate === undefined ? undefined : daysBetween(now.today, dueDate);
  const missing = [...without, ...(dueHours !== undefined && now.hours === undefined ? ['the running hours'] : [])];
  const left = { ...(leftHours !== undefined && { leftHours }), ...(leftDays !== undefined && { leftDays }) };
  if (done !== undefined) return { ...row, ...left, state: 'done', done, missing: [] };
  const overdue = (leftHours ?? 0) < 0 || (leftDays ?? 0) < 0;
  const soon =
    (leftHours !== undefined && leftHours <= SOON.share * dueHours!) ||
    (leftDays !== undefined && leftDays <= SOON.days);
  const known = leftHours !== undefined || leftDays !== undefined;
  const state = overdue ? 'overdue' : soon ? 'due' : known && missing.length === 0 ? 'coming' : 'no data';
  return { ...row, ...left, state, missing };
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
