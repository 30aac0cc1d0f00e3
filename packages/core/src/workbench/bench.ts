/** Engine and log together: what every view is computed from. */
import type { Engine } from '../engine/index.js';
import type { Fact } from '../plan/index.js';
import { foldEntries, type LogEntry, type RecordState, refold } from '../record/index.js';
import type { Given } from './views.js';

export interface Bench {
  readonly engine: Engine;
  readonly state: RecordState;
  readonly facts: readonly Fact[];
  readonly entries: ReadonlyMap<string, LogEntry>;
}

/**
 * Folds the log once; every view of one moment shares the result. With the bench of a moment ago only what is new is read, and where
 * nothing is, as when a server has confirmed what was written, that bench is the answer.
 */
export function openBench(engine: Engine, entries: readonly LogEntry[], before?: Bench): Bench {
  const state = before ? refold(before.state, entries, engine) : foldEntries(entries, engine);
  if (before !== undefined && before.engine === engine && saysTheSame(before.state, state)) return before;
  let entriesById: Bench['entries'] | undefined;
  return {
    engine,
    state,
    facts: state.facts,
    // Made when somebody looks an old entry up: a reading more must not cost all those before it.
    get entries() {
      entriesById ??= new Map(state.entries.map(({ entry }) => [entry.id, entry]));
      return entriesById;
    },
  };
}

/** Whether nothing has come and everything that was read before still stands as it stood. */
const saysTheSame = ({ entries }: RecordState, after: RecordState): boolean =>
  entries.length === after.entries.length &&
  entries.every((one, at) => {
    const other = after.entries[at]!;
    return one === other || (one.reading === other.reading && one.struck === other.struck);
  });

/** "2026-11-25 10:04": the local time of the device that wrote the entry, without its offset. */
export const shownTime = (at: string): string => at.slice(0, 16).replace('T', ' ');

/** How many of the newest entries are looked through before all are sorted by their names. */
const NEWEST = 16;
function amongNewest({ state }: Bench, id: string): LogEntry | undefined {
  for (let back = 1; back <= NEWEST; back += 1) {
    const entry = state.entries.at(-back)?.entry;
    if (entry?.id === id) return entry;
  }
  return undefined;
}

/** Who and when of an entry; undefined for a fact without one. */
export function givenBy(bench: Bench, entry: string | undefined): Given | undefined {
  const envelope = entry === undefined ? undefined : (amongNewest(bench, entry) ?? bench.entries.get(entry));
  return envelope && { by: envelope.person, at: shownTime(envelope.at), entry: envelope.id };
}
