/** Who did what, and when: the record page as data. */
import { describeEntry } from './describe.js';
import type { RecordState, Strike } from './state.js';

export interface TimelineRow {
  readonly entry: string;
  readonly who: string;
  readonly when: string;
  readonly device: string;
  readonly counter: number;
  /** Absent while no server has accepted the entry. */
  readonly sequence?: number;
  readonly kind: string;
  readonly what: string;
  readonly instrument?: string;
  readonly understood: boolean;
  readonly struck?: Strike & { readonly who: string };
}

/** Every entry in the record's order, struck-out ones among them with the reason. */
export function timeline(state: RecordState): readonly TimelineRow[] {
  const persons = new Map(state.entries.map(({ entry }) => [entry.id, entry.person]));
  return state.entries.map(({ entry, reading, struck }) => ({
    entry: entry.id,
    who: entry.person,
    when: entry.at,
    device: entry.device,
    counter: entry.counter,
    ...(entry.sequence !== undefined && { sequence: entry.sequence }),
    kind: entry.kind,
    what: describeEntry(entry),
    ...(entry.instrument !== undefined && { instrument: entry.instrument }),
    understood: reading.understood,
    ...(struck && { struck: { ...struck, who: persons.get(struck.by) ?? '' } }),
  }));
}
