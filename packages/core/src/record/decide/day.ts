import type { Refusal } from './refusal.js';

const DAY = /^\d{4}-\d\d-\d\d$/;
/** Nothing where the text is a day of the calendar, or absent: 2027-02-30 is none. */
export function dayFault(day: string | undefined): Extract<Refusal, { code: 'not-a-day' }> | undefined {
  if (day === undefined) return undefined;
  const at = DAY.test(day) ? Date.parse(`${day}T00:00:00Z`) : Number.NaN;
  const same = Number.isFinite(at) && new Date(at).toISOString().startsWith(day);
  return same ? undefined : { code: 'not-a-day', given: day };
}
