/** Service by hours and date. */
import { type Reminder, reminders } from '../../plan/index.js';
import type { Bench } from '../bench.js';
import type { RemindersView, ReminderView } from '../running-views.js';
import { workAt } from '../work/work-facts.js';
import { factsAt, givenOf } from './facts-at.js';

/** What is due at `now` (RFC 3339 with offset; its day counts). Months run from the newest sign-off. */
export function remindersView(bench: Bench, now: string): RemindersView {
  const signed = workAt(bench).facts.findLast(({ kind }) => kind === 'work-signed-off')?.at;
  const { hours, items } = reminders(bench.engine, factsAt(bench), now.slice(0, 10), signed);
  const count = (state: Reminder['state']) => items.filter((one) => one.state === state).length;
  const counts = [
    ...(count('overdue') > 0 ? [`${count('overdue')} overdue`] : []),
    ...(count('due') > 0 ? [`${count('due')} due`] : []),
    ...(count('no data') > 0 ? [`${count('no data')} not known`] : []),
  ];
  return {
    title: 'Service',
    ...(hours && { hours: { ...givenOf(hours), text: `${hours.data.hours} h` } }),
    words: counts.join(', ') || (items.length === 0 ? 'nothing planned' : 'nothing due'),
    items: items.map(reminderView),
    cautions: [],
  };
}

function reminderView({ what, state, origin, planned, done, missing, ...due }: Reminder): ReminderView {
  const { dueHours, leftHours, dueDate, leftDays, distance } = due;
  const parts = [
    ...(dueHours === undefined ? [] : [`at ${tenth(dueHours)} h${state === 'done' ? '' : leftWords(leftHours, 'h')}`]),
    ...(dueDate === undefined ? [] : [`by ${dueDate}${state === 'done' ? '' : leftWords(leftDays, 'days')}`]),
    ...(distance === undefined ? [] : [`at ${distance}`]),
    ...(missing.length === 0 ? [] : [`not known: ${missing.join(', ')}`]),
  ];
  return { what, state, words: parts.join('; '), origin, planned, ...(done && { done: givenOf(done) }) };
}
const tenth = (count: number): string => `${Math.round(count * 10) / 10}`;
function leftWords(left: number | undefined, unit: string): string {
  if (left === undefined) return '';
  return left < 0 ? `, ${tenth(-left)} ${unit} over` : `, ${tenth(left)} ${unit} left`;
}
