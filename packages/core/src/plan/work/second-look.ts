import { done, type Outcome, refused } from '../../quantity/outcome.js';
import type { WorkFact } from './facts.js';

type Of<K extends WorkFact['kind']> = Extract<WorkFact, { readonly kind: K }>;
export type Look = Of<'second-look'>;
export type Done = Of<'work-act-done'>;

/** Minutes before a person may look again at own work: a rule of this project, after the practice of inspection alone in aviation (read). */
export const ALONE_AFTER_MINUTES = 10;

export type LookRefusal =
  | { readonly code: 'nobody-looked' }
  | { readonly code: 'no-method' }
  | { readonly code: 'nothing-seen' }
  | { readonly code: 'same-method'; readonly method: string }
  | { readonly code: 'too-soon'; readonly minutes: number; readonly least: number }
  | { readonly code: 'no-time'; readonly given: string };
/** `independent`: another person looked. `alone`: the same person, later and by another method; never shown as independent. */
export type LookKind = 'independent' | 'alone';

/**
 * Whether a second look counts, and as what. Another person may look at once and by any method. The person who did the act looks at least
 * ten minutes later by a different method, and it is kept as a look alone. Who did it is who recorded it.
 * Refuses a look without a name, a method or a finding, and a look alone that is too soon, by the same method, or whose times cannot be read.
 */
export function lookKind(act: Done, look: Look): Outcome<LookKind, LookRefusal> {
  const { looker, method, seen } = look.data;
  if (plain(looker) === '') return refused({ code: 'nobody-looked' });
  if (plain(method) === '') return refused({ code: 'no-method' });
  if (plain(seen) === '') return refused({ code: 'nothing-seen' });
  if (plain(looker) !== plain(act.by)) return done('independent');
  if (plain(method) === plain(act.data.method)) return refused({ code: 'same-method', method });
  const minutes = minutesBetween(act.at, look.at);
  if (Number.isNaN(minutes)) return refused({ code: 'no-time', given: `${act.at} to ${look.at}` });
  if (minutes < ALONE_AFTER_MINUTES) return refused({ code: 'too-soon', minutes, least: ALONE_AFTER_MINUTES });
  return done('alone');
}

const plain = (text: string) => text.trim().replace(/\s+/g, ' ').toLowerCase();
const minutesBetween = (from: string, to: string) => (Date.parse(to) - Date.parse(from)) / 60_000;
